using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Cadence;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cadence;

/// <summary>Small multiples: glide over rhythm, one panel per value of the first key on a common scale; the pattern behind
/// it, or, where a second key varies, one line per value of that, drawn only where it walks.</summary>
public static class AcrossGlide
{
    private const double PanelHeight = 190, Rest = 260;

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static Chart Build(AcrossResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        AcrossCase[][] groups = [.. result.Cases.GroupBy(c => c.Values[0]).Select(g => g.ToArray())];
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        double top = 1.25 * known.SelectMany(r => r.Points).Select(Glide).Where(double.IsFinite).DefaultIfEmpty(1.0).Max();
        int height = (int)Math.Max(800, Rest + ((PanelHeight + PanelHeader.Height) * groups.Length));
        PlotModel model = ChartStyle.NewModel(result.Title, "Glide across per twitch, cm, by " + string.Join(" and ", result.Keys.Select(k => k.Title)));
        var panels = new Panels(model, height, [.. groups.Select(_ => ChartStyle.NewAxis(AxisPosition.Left, "cm", 0, top))]);
        double from = known.Min(r => r.Points[0].PerS), to = known.Max(r => r.Points[^1].PerS), margin = 0.02 * (to - from);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, CadenceChart.RhythmTitle, from - margin, to + margin));
        bool lines = result.Keys.Count > 1;
        for (int i = 0; i < groups.Length; i++)
        {
            Add(panels, i, groups[i], lines);
            panels.Header(i, groups[i][0].Values[0].Label, Legend(i, groups[i], known, lines));
        }

        return new Chart("across_glide", model, Height: height);
    }

    private static HeaderEntry[] Legend(int panel, AcrossCase[] group, CadenceResult[] known, bool lines) =>
        panel > 0 ? []
        : lines ? [.. group.Select((c, k) => new HeaderEntry(c.Values[1].Label, Color(k)))]
        : [.. PatternClasses.Of(known.SelectMany(r => r.Points).Select(p => p.Pattern)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box))];

    private static void Add(Panels panels, int panel, AcrossCase[] group, bool lines)
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
            double[] glide = [.. result.Points.Select(p => lines && !p.Walks ? double.NaN : Glide(p))];
            panels.Line(panel, at, glide, Color(k));
            var dots = new ScatterSeries { YAxisKey = Panels.Key(panel), MarkerType = MarkerType.Circle, MarkerSize = 5, MarkerFill = Color(k) };
            dots.Points.AddRange(at.Zip(glide, (x, y) => new ScatterPoint(x, y)));
            panels.Model.Series.Add(dots);
        }
    }

    private static void AddBands(Panels panels, int panel, CadenceResult result)
    {
        foreach ((Model.Retrieve.WalkPattern? pattern, double from, double to) in result.Bands())
        {
            OxyColor color = PatternClasses.Of([pattern])[0].Color;
            panels.Shade(panel, from, to, ChartStyle.Faint(color, 0.18));
            panels.Strip(panel, from, to, color);
        }
    }

    private static double Glide(RhythmPoint point) => 100.0 * point.Median(o => o.GlideWidthM);

    private static OxyColor Color(int line) => ChartStyle.Lines[line % ChartStyle.Lines.Count];
}
