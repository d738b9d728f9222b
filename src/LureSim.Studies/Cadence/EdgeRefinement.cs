namespace LureSim.Studies.Cadence;

/// <summary>Bisection of every place where neighbouring samples differ in what is asked for, many places at a time.</summary>
public static class EdgeRefinement
{
    /// <summary>The places to sample next: the middle of every gap wider than its tolerance. Empty when all edges are
    /// narrow enough.</summary>
    /// <param name="at">Sampled places, rising.</param>
    /// <param name="tolerance">Widest gap allowed between sample i and i + 1; infinity where they agree.</param>
    public static List<double> Next(IReadOnlyList<double> at, Func<int, double> tolerance)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(tolerance);
        var next = new List<double>();
        for (int i = 0; i + 1 < at.Count; i++)
        {
            double middle = 0.5 * (at[i] + at[i + 1]);

            // A gap of a few digits' width has no middle of its own.
            if (at[i + 1] - at[i] > tolerance(i) && middle > at[i] && middle < at[i + 1])
            {
                next.Add(middle);
            }
        }

        return next;
    }
}
