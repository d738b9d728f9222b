namespace LureSim.Model.Cast;

/// <summary>Finds the effort that explains measured distances.</summary>
public static class CastMatch
{
    private const double LeastEffort = 0.05;
    private const double MostEffort = 3.0;
    private const int Halvings = 12;

    /// <summary>The effort at which the cast, released as its spec says, goes as far as measured; good to 0.1 %.</summary>
    /// <param name="spec">The cast; its own effort is not read.</param>
    /// <param name="distanceM">Measured distance, m, positive.</param>
    /// <exception cref="ArgumentException">The distance is not positive.</exception>
    /// <exception cref="ModelException">No effort in range goes that far, or the least one goes farther.</exception>
    public static double Effort(CastRunSpec spec, double distanceM)
    {
        Require.Positive(distanceM);
        double low = LeastEffort, high = MostEffort;
        if (Distance(spec, high) < distanceM || Distance(spec, low) > distanceM)
        {
            throw new ModelException(
                $"No effort from {LeastEffort} to {MostEffort} makes this set-up cast {distanceM:F1} m.", 0.0);
        }

        for (int i = 0; i < Halvings; i++)
        {
            double mid = Math.Sqrt(low * high);
            (low, high) = Distance(spec, mid) < distanceM ? (mid, high) : (low, mid);
        }

        return Math.Sqrt(low * high);
    }

    /// <summary>One effort for several measured casts: mean and scatter of the single ones.</summary>
    /// <param name="casts">Casts and what they measured.</param>
    /// <exception cref="ArgumentException">There is no cast, or a distance is not positive.</exception>
    /// <exception cref="ModelException">A distance is out of reach.</exception>
    public static EffortFit Fit(IReadOnlyList<(CastRunSpec Spec, double DistanceM)> casts)
    {
        ArgumentNullException.ThrowIfNull(casts);
        if (casts.Count == 0)
        {
            throw new ArgumentException("needs at least one cast", nameof(casts));
        }

        double[] efforts = [.. casts.Select(c => Effort(c.Spec, c.DistanceM))];
        double mean = efforts.Average();
        double spread = efforts.Length > 1 ? Math.Sqrt(efforts.Sum(e => (e - mean) * (e - mean)) / (efforts.Length - 1)) : 0.0;
        return new EffortFit(mean, spread, efforts);
    }

    private static double Distance(CastRunSpec spec, double effort) =>
        CastRunner.Run(spec with { Cast = spec.Cast with { Hands = spec.Cast.Hands with { Effort = effort } } }).DistanceM;
}

/// <summary>Effort fitted to measured casts.</summary>
/// <param name="Effort">Mean.</param>
/// <param name="Scatter">Standard deviation of the single efforts; 0 for one cast.</param>
/// <param name="Each">Effort of each cast, in their order.</param>
public sealed record EffortFit(double Effort, double Scatter, IReadOnlyList<double> Each);
