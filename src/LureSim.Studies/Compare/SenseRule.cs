using LureSim.Studies.Cast;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Compare;

/// <summary>
/// Whether a difference is noticed. In one draw it is when it exceeds what that draw's person tells apart:
/// sqrt((w b)^2 + s_a^2 + s_b^2), w Weber's share, b what it is felt against, s the scatter in use (independent errors add in squares). Over the draws, as with
/// casts: noticed in one third or less, whichever way, is <see cref="CompareVerdict.WillNot"/>; in two thirds or more on its own side is
/// <see cref="CompareVerdict.Will"/>. Between and beyond them the way must be no chance: a two-sided sign test of the draws at 5 % (Conover 1999, Practical
/// Nonparametric Statistics, chapter 3, from memory), else nothing can be told.
/// </summary>
public static class SenseRule
{
    private const double Chance = 0.05;

    // A third of the draws may have no value, no more: what is left would be a choice.
    private const double MostMissing = 1.0 / 3.0;

    /// <summary>Compares two set-ups.</summary>
    /// <param name="measure">Measure.</param>
    /// <param name="a">Place of the first.</param>
    /// <param name="b">Place of the second.</param>
    /// <param name="first">Its draws.</param>
    /// <param name="second">Draws of the second, the same luck.</param>
    /// <param name="weber">Weber's share of the person of each draw.</param>
    public static Difference Between(
        CompareMeasure measure, int a, int b, IReadOnlyList<MeasureSample> first, IReadOnlyList<MeasureSample> second, Func<int, double> weber)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(weber);
        int[] both = [.. Enumerable.Range(0, first.Count).Where(d => first[d].Exists && second[d].Exists)];
        if (both.Length == 0 || first.Count - both.Length > MostMissing * first.Count)
        {
            return Difference.None(measure, a, b, Mean(first, both), Mean(second, both));
        }

        double[] sensed = [.. both.Select(d => second[d].Sensed - first[d].Sensed)];
        double[] threshold = [.. both.Select(d => Threshold(first[d], second[d], weber(d)))];
        double up = Share(sensed, threshold, v => v), down = Share(sensed, threshold, v => -v), median = sensed.Median();
        double own = median > 0.0 ? up : median < 0.0 ? down : Math.Max(up, down);
        double[] differences = [.. both.Select(d => second[d].Value - first[d].Value)];
        return new(
            measure, a, b, Mean(first, both), Mean(second, both), differences.Average(), Spread.Of(differences), own, Verdict(own, up + down, IsSettled(sensed)), threshold.Average());
    }

    /// <summary>The verdict of the shares.</summary>
    /// <param name="own">Share of the draws noticed on the side of their median.</param>
    /// <param name="either">Share noticed on either side.</param>
    /// <param name="settled">Whether the side is no chance.</param>
    public static CompareVerdict Verdict(double own, double either, bool settled) =>
        either <= 1.0 - NoticeRule.Sure ? CompareVerdict.WillNot
        : !settled ? CompareVerdict.Unknown
        : own >= NoticeRule.Sure ? CompareVerdict.Will
        : CompareVerdict.May;

    /// <summary>Whether the signs of differences are more one-sided than chance makes them once in twenty. Zeros have no side.</summary>
    /// <param name="differences">Differences.</param>
    public static bool IsSettled(IReadOnlyList<double> differences)
    {
        ArgumentNullException.ThrowIfNull(differences);
        int up = differences.Count(d => d > 0.0), down = differences.Count(d => d < 0.0);
        return up + down > 0 && 2.0 * Binomial.CDF(0.5, up + down, Math.Min(up, down)) <= Chance;
    }

    private static double Threshold(MeasureSample a, MeasureSample b, double weber)
    {
        double felt = 0.5 * weber * (a.Base + b.Base);
        return Math.Sqrt((felt * felt) + ((a.Scatter * a.Scatter) + (b.Scatter * b.Scatter)));
    }

    private static double Share(double[] sensed, double[] threshold, Func<double, double> size) =>
        sensed.Where((v, i) => size(v) > threshold[i]).Count() / (double)sensed.Length;

    private static double Mean(IReadOnlyList<MeasureSample> draws, int[] both) => both.Select(d => draws[d].Value).DefaultIfEmpty(double.NaN).Average();
}
