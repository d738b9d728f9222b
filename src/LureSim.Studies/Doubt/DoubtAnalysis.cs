using System.Text.RegularExpressions;
using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Doubt;

/// <summary>Reads bands out of the runs of a study of doubt.</summary>
public static partial class DoubtAnalysis
{
    /// <summary>Fewer runs than this say nothing about a tenth of them.</summary>
    public const int FewestRuns = 10;

    /// <summary>Reads out runs of one set-up.</summary>
    /// <param name="figures">Names of the figures.</param>
    /// <param name="samples">Runs.</param>
    /// <param name="given">Figures of the set-up as it stands, NaN where it has none; null where it was not run.</param>
    public static DoubtReport Analyse(IReadOnlyList<string> figures, IReadOnlyList<DoubtSample> samples, IReadOnlyList<double>? given = null)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(samples);
        DoubtSample[] good = [.. samples.Where(s => s.Figures is not null)];
        Band[] bands = good.Length == 0
            ? []
            : [.. figures.Select((name, f) => BandOf(name, [.. good.Select(s => s.Figures![f]).Where(v => !double.IsNaN(v))], given?[f] ?? double.NaN))];
        return new(samples.Count, samples.Count - good.Length, Commonest([.. samples.Where(s => s.Figures is null).Select(s => s.Reason)]), SharesOf(good), bands);
    }

    // Reasons that differ in their numbers alone are one reason; its first wording stands for it.
    private static string Commonest(string[] reasons) => reasons.Length == 0
        ? ""
        : reasons.GroupBy(r => Number().Replace(r, "#"), StringComparer.Ordinal).MaxBy(g => g.Count())!.First();

    [GeneratedRegex(@"-?\d+(\.\d+)?([eE][-+]?\d+)?")]
    private static partial Regex Number();

    private static Band BandOf(string name, double[] values, double given)
    {
        if (values.Length == 0)
        {
            return new(name, double.NaN, double.NaN, double.NaN, 0, given);
        }

        Array.Sort(values);
        double Quantile(double share) => SortedArrayStatistics.QuantileCustom(values, share, QuantileDefinition.R7);
        return new(name, Quantile(0.1), Quantile(0.5), Quantile(0.9), values.Length, given);
    }

    private static KeyValuePair<string, double>[] SharesOf(DoubtSample[] good) =>
    [
        .. good.Where(s => s.Class.Length > 0).GroupBy(s => s.Class, StringComparer.Ordinal)
            .Select(g => KeyValuePair.Create(g.Key, g.Count() / (double)good.Length))
            .OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal),
    ];
}
