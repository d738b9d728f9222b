using LureSim.Studies.Cast;

namespace LureSim.Studies.Compare;

/// <summary>What is said about a difference.</summary>
public enum CompareVerdict
{
    /// <summary>It will not be noticed.</summary>
    WillNot,

    /// <summary>It may be noticed.</summary>
    May,

    /// <summary>It will be noticed.</summary>
    Will,

    /// <summary>It cannot be told: the guesses do not even say which way, or one side has no value.</summary>
    Unknown,
}

/// <summary>Two set-ups in one measure. Nothing else that is listed enters.</summary>
/// <param name="Measure">Measure.</param>
/// <param name="A">Place of the first in the list.</param>
/// <param name="B">Place of the second.</param>
/// <param name="AValue">Mean over the draws that both have.</param>
/// <param name="BValue">The same.</param>
/// <param name="Value">From the first to the second: mean of the draws' differences.</param>
/// <param name="Band">10 % and 90 % of the draws' differences, from the first to the second.</param>
/// <param name="Share">Share of the draws in which a person notices it on its own side, 0 to 1.</param>
/// <param name="Verdict">Verdict.</param>
/// <param name="Threshold">Mean difference that would be noticed, in what is sensed; NaN where another rule decides.</param>
public sealed record Difference(
    CompareMeasure Measure, int A, int B, double AValue, double BValue, double Value, Spread Band, double Share, CompareVerdict Verdict, double Threshold)
{
    /// <summary>The set-up on the wanted side: -1 for neither.</summary>
    public int Winner => Measure.Side == Better.Neither || Value == 0.0 || !double.IsFinite(Value) ? -1 : Value > 0.0 == (Measure.Side == Better.More) ? B : A;

    /// <summary>Where one side has no value.</summary>
    /// <param name="measure">Measure.</param>
    /// <param name="a">Place of the first.</param>
    /// <param name="b">Place of the second.</param>
    /// <param name="aValue">What the first has.</param>
    /// <param name="bValue">What the second has.</param>
    public static Difference None(CompareMeasure measure, int a, int b, double aValue, double bValue) =>
        new(measure, a, b, aValue, bValue, double.NaN, new(double.NaN, double.NaN), double.NaN, CompareVerdict.Unknown, double.NaN);

    /// <summary>Width of the band.</summary>
    public double BandWidth => Band.High - Band.Low;
}
