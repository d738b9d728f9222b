using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cadence;

/// <summary>Small multiples: glide over rhythm, one panel per value of the first key on a common scale; the pattern behind
/// it, or, where a second key varies, one line per value of that, drawn only where it walks.</summary>
public static class AcrossGlide
{
    private const double PanelHeight = 110, Rest = 260;

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(AcrossResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        AcrossCase[][] groups = [.. result.Cases.GroupBy(c => c.Values[0]).Select(g => g.ToArray())];
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        ShownUnit unit = CadenceChart.GlideUnit(known.SelectMany(r => r.Points), shown);
        double top = 1.25 * unit.Of(known.SelectMany(r => r.Points).Select(Glide).Where(double.IsFinite).DefaultIfEmpty(0.01).Max());
        int height = (int)Math.Max(ChartStyle.Height, Rest + ((PanelHeight + PanelHeader.Height) * groups.Length));
        PlotModel model = ChartStyle.NewModel(AcrossWords.Glides(result, shown), $"{result.Title}: glide across per twitch, by {AcrossWords.Keys(result)}");
        var panels = new Panels(model, height, [.. groups.Select(_ => ChartStyle.NewAxis(AxisPosition.Left, unit.Name, 0, top))]);
        double from = known.Min(r => r.Points[0].PerS), to = known.Max(r => r.Points[^1].PerS), margin = 0.02 * (to - from);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, CadenceChart.RhythmTitle, from - margin, to + margin));
        bool lines = result.Keys.Count > 1;
        for (int i = 0; i < groups.Length; i++)
        {
            Add(panels, i, groups[i], lines, unit);
            panels.Header(i, groups[i][0].Values[0].Label, Legend(i, groups[i], known, lines));
        }

        return new Chart("across_glide", model, Height: height);
    }

    private static HeaderEntry[] Legend(int panel, AcrossCase[] group, CadenceResult[] known, bool lines) =>
        panel > 0 ? []
        : lines ? [.. group.Select((c, k) => new HeaderEntry(c.Values[1].Label, Looks.Series(k), marked: true))]
        : [.. PatternClasses.Of(known.SelectMany(r => r.Points).Select(p => p.Pattern)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box))];

    private static void Add(Panels panels, int panel, AcrossCase[] group, bool lines, ShownUnit unit)
    {
        for (int k = 0; k < group.Length; k++)
        {
            if (group[k].Result is not CadenceResult result)
            {
                continue;
            }

            if (!lines)
            {
                AddBands(panels, panel, result);
            }

            double[] at = [.. result.Points.Select(p => p.PerS)];
            double[] glide = [.. result.Points.Select(p => lines && !p.Walks ? double.NaN : unit.Of(Glide(p)))];
            Look look = lines ? Looks.Series(k) : Looks.Lure;
            panels.Line(panel, at, glide, look);
            panels.Dots(panel, at, glide, look, 6);
        }
    }

    private static void AddBands(Panels panels, int panel, CadenceResult result)
    {
        foreach ((Model.Retrieve.WalkPattern? pattern, double from, double to) in result.Bands())
        {
            OxyColor color = PatternClasses.Color(pattern);
            panels.Shade(panel, from, to, ChartStyle.Faint(color, 0.18));
            panels.Strip(panel, from, to, color);
        }
    }

    private static double Glide(RhythmPoint point) => point.Median(o => o.GlideWidthM);
}
