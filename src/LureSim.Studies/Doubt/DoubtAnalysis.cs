using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Doubt;

/// <summary>Reads bands and ranks out of the runs of a study of doubt.</summary>
public static class DoubtAnalysis
{
    /// <summary>Fewer runs than this say nothing about a tenth of them.</summary>
    public const int FewestRuns = 10;

    /// <summary>Reads out runs of one set-up.</summary>
    /// <param name="guesses">Names of the guesses.</param>
    /// <param name="figures">Names of the figures.</param>
    /// <param name="samples">Runs.</param>
    public static DoubtReport Analyse(IReadOnlyList<string> guesses, IReadOnlyList<string> figures, IReadOnlyList<DoubtSample> samples)
    {
        ArgumentNullException.ThrowIfNull(guesses);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(samples);
        DoubtSample[] good = [.. samples.Where(s => s.Figures is not null)];
        var effects = new GuessEffect[guesses.Count][];
        for (int g = 0; g < guesses.Count; g++)
        {
            effects[g] = new GuessEffect[figures.Count];
            for (int f = 0; f < figures.Count; f++)
            {
                DoubtSample[] with = [.. good.Where(s => !double.IsNaN(s.Guesses[g]) && !double.IsNaN(s.Figures![f]))];
                effects[g][f] = Effect([.. with.Select(s => s.Guesses[g])], [.. with.Select(s => s.Figures![f])]);
            }
        }

        Band[] bands = good.Length == 0 ? [] : [.. figures.Select((name, f) => BandOf(name, [.. good.Select(s => s.Figures![f]).Where(v => !double.IsNaN(v))]))];
        return new(samples.Count, samples.Count - good.Length, SharesOf(good), bands, guesses, effects);
    }

    private static GuessEffect Effect(double[] x, double[] y)
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

    private static Band BandOf(string name, double[] values)
    {
        if (values.Length == 0)
        {
            return new(name, double.NaN, double.NaN, double.NaN, 0);
        }

        Array.Sort(values);
        double Quantile(double share) => SortedArrayStatistics.QuantileCustom(values, share, QuantileDefinition.R7);
        return new(name, Quantile(0.1), Quantile(0.5), Quantile(0.9), values.Length);
    }

    private static KeyValuePair<string, double>[] SharesOf(DoubtSample[] good) =>
    [
        .. good.Where(s => s.Class.Length > 0).GroupBy(s => s.Class, StringComparer.Ordinal)
            .Select(g => KeyValuePair.Create(g.Key, g.Count() / (double)good.Length))
            .OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal),
    ];
}
