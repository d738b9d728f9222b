using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>Window, glide and pull over a key of numbers; one line per value of the second key.</summary>
public static class AcrossTrend
{
    /// <summary>Builds the chart; null when the first key has no numbers.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart? Build(AcrossResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        double[] own = [.. known.Select(r => r.Own?.PerS ?? double.NaN).Distinct()];
        if (!result.Keys[0].IsNumeric)
        {
            return null;
        }

        ShownUnit unit = CadenceChart.GlideUnit(known.Select(r => r.BestPoint).OfType<RhythmPoint>(), shown);
        var panels = new List<StudyPanel>(result.Keys.Count == 1
            ? [new("Rhythms that walk: widest window (band) and best (line)", "twitches/s", Lines(result, r => r.Best?.PerS, Window))]
            : [
                new("Slowest rhythm of the widest window", "twitches/s", Lines(result, r => Window(r).Low)),
                new("Best rhythm", "twitches/s", Lines(result, r => r.Best?.PerS)),
            ])
        {
            new("Glide across at the best rhythm", $"{unit.Name} a twitch", Lines(result, r => r.BestPoint?.Median(Glide) / unit.Si, r => Spread(r.BestPoint, Glide, 1.0 / unit.Si))),
        };
        if (own is [double rhythm] && double.IsFinite(rhythm))
        {
            string at = $"at {CadenceStory.Rate(rhythm)} twitches/s";
            ShownUnit pull = shown.Unit(ShownQuantity.Impulse, known.Max(r => r.Own!.Median(o => o.PullImpulseNs)));
            panels.Add(new($"Pull at the nose {at}", $"{pull.Name}, a twitch", Lines(result, r => r.Own?.Median(o => o.PullImpulseNs) / pull.Si, r => Spread(r.Own, o => o.PullImpulseNs, 1.0 / pull.Si))));
            panels.Add(new($"Nose travel over tip stroke {at}", "1: as far as the tip", Lines(result, r => r.Own?.Median(o => o.PullReach), r => Spread(r.Own, o => o.PullReach, 1.0))));
        }

        return StudyLines.Build("across_trend", AcrossWords.Trend(result, shown), $"{result.Title}; bands around lines: spread over the starts", Trade.Capital(result.Keys[0].Title), panels);
    }

    private static double Glide(RetrieveSummary summary) => summary.GlideWidthM;

    private static (double Low, double High) Window(CadenceResult result)
    {
        CadenceWindow? widest = result.Windows.MaxBy(w => w.Ratio);
        return widest is null ? (double.NaN, double.NaN) : (widest.FromPerS, widest.ToPerS);
    }

    private static (double Low, double High) Spread(RhythmPoint? point, Func<RetrieveSummary, double> figure, double scale)
    {
        (double low, double high) = point?.Spread(figure) ?? (double.NaN, double.NaN);
        return (scale * low, scale * high);
    }

    private static StudyLine[] Lines(AcrossResult result, Func<CadenceResult, double?> value, Func<CadenceResult, (double Low, double High)>? spread = null) =>
    [
        .. result.Cases.GroupBy(c => result.Keys.Count > 1 ? c.Values[1].Label : string.Empty).Select(g =>
        {
            AcrossCase[] line = [.. g.OrderBy(c => c.Values[0].Number)];
            return new StudyLine(
                g.Key,
                [.. line.Select(c => c.Values[0].Number)],
                [.. line.Select(c => Of(c, value))],
                spread is null ? null : [.. line.Select(c => c.Result is CadenceResult r ? spread(r).Low : double.NaN)],
                spread is null ? null : [.. line.Select(c => c.Result is CadenceResult r ? spread(r).High : double.NaN)]);
        }),
    ];

    private static double Of(AcrossCase setUp, Func<CadenceResult, double?> value) =>
        setUp.Result is CadenceResult r ? value(r) ?? double.NaN : double.NaN;
}
