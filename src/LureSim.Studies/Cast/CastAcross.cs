using LureSim.Model.Cast;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Cast;

/// <summary>Band in which eight of ten values lie.</summary>
/// <param name="Low">P10.</param>
/// <param name="High">P90.</param>
public readonly record struct Spread(double Low, double High)
{
    /// <summary>P10 and P90 of values, not-a-numbers left out (linear between ranks: Hyndman and Fan 1996, type 7, from memory).</summary>
    /// <param name="values">Values; NaN for both ends when fewer than two are numbers.</param>
    public static Spread Of(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Where(double.IsFinite).Order()];
        return sorted.Length < 2
            ? new(double.NaN, double.NaN)
            : new(SortedArrayStatistics.QuantileCustom(sorted, 0.1, QuantileDefinition.R7), SortedArrayStatistics.QuantileCustom(sorted, 0.9, QuantileDefinition.R7));
    }
}

/// <summary>One set-up of a comparison of casts.</summary>
/// <param name="Label">Value as people read it.</param>
/// <param name="Number">Value in the key's unit; NaN for words.</param>
/// <param name="Cast">The cast, or null.</param>
/// <param name="Failure">Why there is none, or null.</param>
/// <param name="DrawsM">Mean distance of each draw of the guesses, the same luck in every set-up; NaN where it failed.</param>
public sealed record CastCase(string Label, double Number, CastResult? Cast, string? Failure, IReadOnlyList<double> DrawsM)
{
    // Half width of a normal distribution from P10 to P90, in sigmas.
    private const double TenthSigmas = 1.2815515655446004;

    /// <summary>One sigma of the distance from cast to cast, m: release error and scatter, the guesses taken as true.</summary>
    public double SigmaM => Cast is null ? double.NaN : ScatterM(Cast);

    /// <summary>Scatter of a cast from cast to cast, one sigma, m.</summary>
    /// <param name="cast">Cast.</param>
    public static double ScatterM(CastResult cast)
    {
        ArgumentNullException.ThrowIfNull(cast);
        return (cast.DistanceP90M - cast.DistanceP10M) / (2.0 * TenthSigmas);
    }

    /// <summary>Band of the guesses, m.</summary>
    public Spread GuessesM => Spread.Of(DrawsM);
}

/// <summary>From one set-up to the next.</summary>
/// <param name="GainM">Mean distance gained, m: the median over the draws, or that of the set-ups as they are where there are none. On a revolving spool
/// a single cast jumps by a metre with the loops thrown, the median does not.</param>
/// <param name="GainsM">Band of the gain over the draws, both set-ups with the same luck.</param>
/// <param name="SigmaM">Scatter from cast to cast, mean of both, m.</param>
/// <param name="SameShare">Share of the draws with the same verdict; NaN without draws.</param>
public sealed record CastStep(double GainM, Spread GainsM, double SigmaM, double SameShare)
{
    /// <summary>Casts with each that show it.</summary>
    public double Casts => NoticeRule.Casts(GainM, SigmaM);

    /// <summary>The verdict.</summary>
    public bool Notices => NoticeRule.Notices(GainM, SigmaM);

    /// <summary>Compares two set-ups; null when one has no cast.</summary>
    /// <param name="from">First.</param>
    /// <param name="to">Second.</param>
    public static CastStep? Between(CastCase from, CastCase to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        if (from.Cast is null || to.Cast is null)
        {
            return null;
        }

        double[] gains = [.. from.DrawsM.Zip(to.DrawsM, (a, b) => b - a).Where(double.IsFinite)];
        double gain = gains.Length > 0 ? gains.Median() : to.Cast.DistanceMeanM - from.Cast.DistanceMeanM, sigma = 0.5 * (from.SigmaM + to.SigmaM);
        bool notices = NoticeRule.Notices(gain, sigma);
        double same = gains.Length == 0 ? double.NaN : (double)gains.Count(g => NoticeRule.Notices(g, sigma) == notices) / gains.Length;
        return new(gain, Spread.Of(gains), sigma, same);
    }
}

/// <summary>Casts of several set-ups.</summary>
/// <param name="Title">What they have in common.</param>
/// <param name="KeyTitle">What differs, with its unit.</param>
/// <param name="IsNumeric">Whether the values can be plotted; then each is compared with the one before, else all with the first.</param>
/// <param name="Law">What else goes with the key, or null.</param>
/// <param name="Cases">Set-ups.</param>
public sealed record CastAcross(string Title, string KeyTitle, bool IsNumeric, string? Law, IReadOnlyList<CastCase> Cases)
{
    /// <summary>The set-up that another is compared with; null for the first.</summary>
    /// <param name="index">0 to count - 1.</param>
    public CastCase? Reference(int index) => index == 0 ? null : Cases[IsNumeric ? index - 1 : 0];

    /// <summary>The step to a set-up; null for the first, or without casts.</summary>
    /// <param name="index">0 to count - 1.</param>
    public CastStep? Step(int index) => Reference(index) is CastCase from ? CastStep.Between(from, Cases[index]) : null;
}
