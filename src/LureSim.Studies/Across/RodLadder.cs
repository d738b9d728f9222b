using LureSim.Model.Rods;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Across;

/// <summary>
/// Rods of several lengths out of one: mass ~ L^p with p 1.5 (guess, 1 to 2), load that drops the tip by a third ~ L^-n with n 0 (guess, 0 to 2:
/// the same rating; 2 is the same blank stretched). Both are stated, since a comparison of lengths means nothing without them.
/// </summary>
public static class RodLadder
{
    /// <summary>Name on the command line.</summary>
    public const string Name = "rod-length";

    /// <summary>What goes with the length.</summary>
    public const string Law = "rod mass ~ length^1.5 (guess, 1 to 2), the same load rating (guess, load ~ length^-n, n 0 to 2)";

    private const double MassExponent = 1.5, MassLow = 1.0, MassHigh = 2.0, LoadHigh = 2.0;
    private const ulong Stream = 0x20D5;

    /// <summary>Lengths compared.</summary>
    public static IReadOnlyList<string> Lengths { get; } = ["6 ft", "6 ft 6 in", "7 ft", "7 ft 4 in", "8 ft", "9 ft"];

    /// <summary>Keys that follow the length.</summary>
    public static IReadOnlyList<KeySpec> Scaled { get; } = [RodKeys.Length, RodKeys.Mass, RodKeys.BendLoad];

    /// <summary>A length as shown, with its feet.</summary>
    /// <param name="length">Text of the length.</param>
    public static AcrossValue Shown(string length) => new(length, Quantity.Read(length, QuantityKind.Length).Si / 0.3048);

    /// <summary>Overrides for a length.</summary>
    /// <param name="length">Text of the length.</param>
    /// <param name="own">The scenario's own rod.</param>
    public static IReadOnlyList<string> Overrides(string length, EffectiveScenario own) => Overrides(length, own, k => Own(own, k), MassExponent, 0.0);

    /// <summary>Overrides for a length in a draw of the guesses; the guesses that do not follow the length are not among them.</summary>
    /// <param name="length">Text of the length.</param>
    /// <param name="own">The scenario's own rod.</param>
    /// <param name="guesses">Guesses of the scenario.</param>
    /// <param name="design">Draws.</param>
    /// <param name="seed">Seed of the scenario.</param>
    /// <param name="draw">Which draw.</param>
    public static IReadOnlyList<string> Overrides(
        string length, EffectiveScenario own, IReadOnlyList<GuessedKey> guesses, GuessDesign design, ulong seed, int draw)
    {
        var exponents = new LatinHypercube(design.Samples, seed ^ Stream);
        double mass = MassLow + (exponents.Share(draw, 0) * (MassHigh - MassLow)), load = exponents.Share(draw, 1) * LoadHigh;
        double Value(KeySpec key) => guesses.FirstOrDefault(g => g.Key == key) is GuessedKey guess ? design.Value(guess, draw) : Own(own, key);
        return Overrides(length, own, Value, mass, load);
    }

    /// <summary>The rod of another length, by the same law, of the same load.</summary>
    /// <param name="rod">Rod.</param>
    /// <param name="lengthM">Overall length, m.</param>
    public static RodSpec WithLength(RodSpec rod, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(rod);
        return rod with { LengthM = lengthM, MassKg = rod.MassKg * Math.Pow(lengthM / rod.LengthM, MassExponent) };
    }

    private static string[] Overrides(string length, EffectiveScenario own, Func<KeySpec, double> value, double massExponent, double loadExponent)
    {
        double ratio = Quantity.Read(length, QuantityKind.Length).Si / Own(own, RodKeys.Length);
        return
        [
            "rod.length=" + length,
            "rod.mass=" + Quantity.Format(value(RodKeys.Mass) * Math.Pow(ratio, massExponent), QuantityKind.Mass),
            "rod.bend_load=" + Quantity.Format(value(RodKeys.BendLoad) * Math.Pow(ratio, -loadExponent), QuantityKind.Force),
        ];
    }

    private static double Own(EffectiveScenario own, KeySpec key) => own.Values.First(v => v.Key == key).Si;
}
