using LureSim.Model.Hands;
using MathNet.Numerics.Distributions;

namespace LureSim.Model.Cast;

/// <summary>Many casts by one person: the line let go a little early or late, and a scatter beyond that.</summary>
/// <param name="MeanM">Mean distance, m.</param>
/// <param name="P10M">One in ten falls shorter, m.</param>
/// <param name="P90M">One in ten flies farther, m.</param>
/// <param name="Loops">Mean loose line, in loops.</param>
/// <param name="TangleShare">Share of casts that tangle.</param>
internal readonly record struct ReleaseLuck(double MeanM, double P10M, double P90M, double Loops, double TangleShare)
{
    private const int Count = 41;

    // Loops that a spool bears: loose line S spread over N turns lifts them by S/(2 pi N), free height 1 to 3 mm, N 10 to 25, so S 0.06 to 0.5 m or 0.6 to 5
    // loops (guess), taken as the 10 and 90 % ends of a log-normal bound: no threshold, no cliff.
    private const double LeastLoops = 0.6, MostLoops = 5.0, TenthSigmas = 1.2815515655446004;

    /// <summary>Chance that loose line tangles.</summary>
    /// <param name="loops">Most loose line of a cast, in loops, 0 or more.</param>
    public static double Tangles(double loops)
    {
        double middle = 0.5 * (Math.Log(LeastLoops) + Math.Log(MostLoops)), sigma = (Math.Log(MostLoops) - Math.Log(LeastLoops)) / (2.0 * TenthSigmas);
        return loops > 0.0 ? Normal.CDF(middle, sigma, Math.Log(loops)) : 0.0;
    }

    /// <summary>Over a grid of equally likely release errors and cast-to-cast factors.</summary>
    /// <param name="hands">Release error and scatter.</param>
    /// <param name="distanceM">Distance of the chosen release, m.</param>
    /// <param name="curve">Other releases against it, sorted by time.</param>
    public static ReleaseLuck Of(HandsSpec hands, double distanceM, IReadOnlyList<ReleasePoint> curve)
    {
        var all = new List<double>(Count * Count);
        double loops = 0.0, tangles = 0.0;
        var between = new ReleaseCurve(curve);
        for (int i = 0; i < Count; i++)
        {
            ReleasePoint at = between.At(hands.ReleaseErrorS * Normal.InvCDF(0.0, 1.0, (i + 0.5) / Count));
            loops += at.Loops / Count;
            tangles += Tangles(at.Loops) / Count;
            for (int j = 0; j < Count; j++)
            {
                all.Add((distanceM + at.ChangeM) * (1.0 + (hands.Scatter * Normal.InvCDF(0.0, 1.0, (j + 0.5) / Count))));
            }
        }

        all.Sort();
        return new(all.Average(), all[all.Count / 10], all[all.Count * 9 / 10], loops, tangles);
    }
}
