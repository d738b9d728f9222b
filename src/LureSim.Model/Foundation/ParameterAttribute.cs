namespace LureSim.Model;

/// <summary>Range of a number in a specification; its default stands beside it, in the record's constructor.</summary>
/// <param name="symbol">Symbol in the equations of the docs, or a word where there is none.</param>
/// <param name="unit">Unit; empty for a plain number.</param>
/// <param name="low">Lowest allowed value.</param>
/// <param name="high">Highest allowed value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ParameterAttribute(string symbol, string unit, double low, double high) : Attribute
{
    /// <summary>Symbol.</summary>
    public string Symbol { get; } = symbol;

    /// <summary>Unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>Lowest allowed value.</summary>
    public double Low { get; } = low;

    /// <summary>Highest allowed value.</summary>
    public double High { get; } = high;

    /// <summary>Lower end of the guess, NaN where the value is none.</summary>
    public double GuessLow { get; init; } = double.NaN;

    /// <summary>Upper end of the guess.</summary>
    public double GuessHigh { get; init; } = double.NaN;

    /// <summary>f, the guess said by its middle: the default is the middle and the ends are those of <see cref="Ranged.About"/>;
    /// NaN where the ends are said themselves or the value is no guess. More than 1.</summary>
    public double Spread { get; init; } = double.NaN;

    /// <summary>The guess around a default: by its spread where one is said, else by its ends, NaN where the value is no guess.</summary>
    /// <param name="value">Default; NaN for a value that follows from others, whose ends must be said.</param>
    /// <exception cref="InvalidOperationException">Both a spread and an end are said.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spread is not more than 1, or there is no default to count it from.</exception>
    public Ranged Guess(double value)
    {
        if (double.IsNaN(Spread))
        {
            return new(value, GuessLow, GuessHigh);
        }

        return double.IsNaN(GuessLow) && double.IsNaN(GuessHigh)
            ? Ranged.About(value, Spread)
            : throw new InvalidOperationException($"{Symbol}: a guess is said by its spread or by its ends, not by both.");
    }
}
