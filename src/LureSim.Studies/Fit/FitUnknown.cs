using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;

namespace LureSim.Studies.Fit;

/// <summary>A number that measurements may tell, and what is known of it before: in z = (number - middle)/sigma, of the number or of its logarithm, it is
/// normal about 0 with a standard deviation of 1.</summary>
/// <param name="Name">Its key, or a name of its own.</param>
/// <param name="Words">What it is in a few words.</param>
/// <param name="Kind">Kind of quantity.</param>
/// <param name="Unit">Unit for people.</param>
/// <param name="IsLog">True where the logarithm is normal: numbers known to a factor.</param>
/// <param name="Middle">Middle before, of the number or of its logarithm.</param>
/// <param name="Sigma">Standard deviation of the same.</param>
/// <param name="Least">Least value that is allowed.</param>
/// <param name="Most">Largest.</param>
/// <param name="Key">The guess that it is; null for a number that is no key.</param>
public sealed record FitUnknown(
    string Name, string Words, QuantityKind Kind, string Unit, bool IsLog, double Middle, double Sigma, double Least, double Most, GuessedKey? Key = null)
{
    /// <summary>Standard deviations from the middle to the ends of a band from 10 to 90 %.</summary>
    public const double Band = 1.2815515655446004;

    /// <summary>Reach of an even range with the same standard deviation, in standard deviations.</summary>
    public static readonly double Even = Math.Sqrt(3.0);

    // A range whose ends lie further apart than this factor is one of a number known to a factor.
    private const double Factor = 2.4;
    private const int Quantiles = 400;

    /// <summary>A guess of a scenario: middle and standard deviation are those of the law that studies of doubt draw it by.</summary>
    /// <param name="guess">Guess.</param>
    public static FitUnknown Of(GuessedKey guess)
    {
        ArgumentNullException.ThrowIfNull(guess);
        KeySpec key = guess.Key;
        bool log = guess.Low > 0.0 && guess.High > Factor * guess.Low && key != LureKeys.SternShedding && key != LureKeys.AddedMassFactor;
        double[] drawn = [.. Enumerable.Range(0, Quantiles).Select(i => GuessDesign.At(guess, (i + 0.5) / Quantiles)).Select(v => log ? Math.Log(v) : v)];
        double middle = drawn.Average(), sigma = Math.Sqrt(drawn.Average(v => (v - middle) * (v - middle)));
        return new(key.Path, key.Words, key.Kind, key.Unit, log, middle, sigma, key.Low, key.High, guess);
    }

    /// <summary>A number of the hand, which nobody measures: known to a factor about the value of the scenario, or as the range that it gives.</summary>
    /// <param name="key">Key.</param>
    /// <param name="words">What it is in a few words.</param>
    /// <param name="value">Value of the scenario, SI, positive.</param>
    /// <param name="given">The range of the scenario; null where it gives none.</param>
    /// <param name="factor">One standard deviation as a factor.</param>
    /// <param name="least">Least value that is tried.</param>
    public static FitUnknown OfHand(KeySpec key, string words, double value, GuessedKey? given, double factor, double least)
    {
        ArgumentNullException.ThrowIfNull(key);
        double low = Math.Min(least, 0.5 * value);
        var guess = new GuessedKey(key, value, value / factor, value * factor);
        FitUnknown hand = given is null ? new(key.Path, words, key.Kind, key.Unit, true, Math.Log(value), Math.Log(factor), low, key.High, guess) : Of(given);
        return hand with { Words = words, Least = low };
    }

    /// <summary>The number at a z, inside what is allowed.</summary>
    /// <param name="z">z.</param>
    public double At(double z)
    {
        double v = Middle + (Sigma * z);
        return Math.Clamp(IsLog ? Math.Exp(v) : v, Least, Most);
    }

    /// <summary>z of a number.</summary>
    /// <param name="value">Number.</param>
    public double ZOf(double value) => ((IsLog ? Math.Log(value) : value) - Middle) / Sigma;

    /// <summary>Whether it is of the hand, and not of the lure.</summary>
    public bool IsOfHand => Key?.Key.Table == RetrieveKeys.Stroke.Table;

    /// <summary>Least z.</summary>
    public double LeastZ => IsLog && Least <= 0.0 ? double.NegativeInfinity : ZOf(Least);

    /// <summary>Largest z.</summary>
    public double MostZ => ZOf(Most);
}
