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
}
