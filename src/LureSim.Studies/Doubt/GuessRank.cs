using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Doubt;

/// <summary>What one guess does to one figure over the draws at a point of a sweep, where runs made for the question would cost too much: it stands
/// on the draws alone, and with few of them most of it is chance.</summary>
/// <param name="Rho">Spearman's rank correlation, -1 to 1; 0 when either side never changed.</param>
/// <param name="Weight">Its magnitude; of several points the mean magnitude, which no change of sign can hide.</param>
/// <param name="LowShift">Mean of the figure over the runs with the guess in its lower third, minus the mean over all.</param>
/// <param name="HighShift">The same for the upper third.</param>
public sealed record GuessRank(double Rho, double Weight, double LowShift, double HighShift)
{
    /// <summary>Magnitude of a rank correlation that pure chance passes once in twenty: 1.96 / sqrt(n - 1)
    /// (Kendall and Stuart, large n; from memory).</summary>
    /// <param name="runs">n.</param>
    public static double ByChance(int runs) => runs < 2 ? 1.0 : Math.Min(1.0, 1.96 / Math.Sqrt(runs - 1.0));

    /// <summary>Ranks every guess for every figure, [guess][figure].</summary>
    /// <param name="guesses">Number of guesses.</param>
    /// <param name="figures">Number of figures.</param>
    /// <param name="samples">Runs.</param>
    public static GuessRank[][] Of(int guesses, int figures, IReadOnlyList<DoubtSample> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        DoubtSample[] good = [.. samples.Where(s => s.Figures is not null)];
        GuessRank One(int g, int f)
        {
            DoubtSample[] with = [.. good.Where(s => !double.IsNaN(s.Guesses[g]) && !double.IsNaN(s.Figures![f]))];
            return Of([.. with.Select(s => s.Guesses[g])], [.. with.Select(s => s.Figures![f])]);
        }

        return [.. Enumerable.Range(0, guesses).Select(g => Enumerable.Range(0, figures).Select(f => One(g, f)).ToArray())];
    }

    private static GuessRank Of(double[] x, double[] y)
    {
        int third = x.Length / 3;
        if (third == 0 || x.Min() == x.Max())
        {
            return new(0.0, 0.0, 0.0, 0.0);
        }

        // A figure that never changed has no ranks.
        double rho = y.Min() == y.Max() ? 0.0 : Correlation.Spearman(x, y);
        double mean = y.Average();
        double[] sorted = [.. y];
        Array.Sort([.. x], sorted);
        return new(rho, Math.Abs(rho), sorted[..third].Average() - mean, sorted[^third..].Average() - mean);
    }
}
