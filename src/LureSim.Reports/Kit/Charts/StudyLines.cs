using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Kit.Charts;

/// <summary>Lines over one quantity in one or more panels, with bands or error bars and coloured classes behind.</summary>
public static class StudyLines
{
    // Up to four panels keep the picture at 16 to 10; more make it taller.
    private const int FewPanels = 4;
    private const double PanelHeight = 240, Rest = 260;

    /// <summary>Builds the chart.</summary>
    /// <param name="name">File stem.</param>
    /// <param name="title">What the picture says, with its number.</param>
    /// <param name="subtitle">What it is about.</param>
    /// <param name="xTitle">Abscissa and unit.</param>
    /// <param name="panels">Top to bottom.</param>
    /// <param name="spans">Classes along the abscissa; a strip on top of every panel and a faint ground.</param>
    /// <param name="colors">Colour of every class named in <paramref name="spans"/>.</param>
    /// <param name="weights">Relative heights of the panels; none = equal.</param>
    public static Chart Build(
        string name,
        string title,
        string subtitle,
        string xTitle,
        IReadOnlyList<StudyPanel> panels,
        IReadOnlyList<StudySpan>? spans = null,
        IReadOnlyList<StudyClass>? colors = null,
        double[]? weights = null)
    {
        int height = panels.Count <= FewPanels ? ChartStyle.Height : (int)(Rest + (PanelHeight * panels.Count));
        PlotModel model = ChartStyle.NewModel(title, subtitle);
        LinearAxis[] axes = [.. panels.Select(YAxis)];
        var layout = new Panels(model, height, axes, weights);
        (double left, double right) = XRange(panels, spans ?? []);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, xTitle, left, right));
        for (int i = 0; i < panels.Count; i++)
        {
            AddSpans(layout, i, spans ?? [], colors ?? []);
            Add(layout, i, panels[i]);
            layout.Header(i, $"{panels[i].Words} ({panels[i].YTitle})", Legend(panels[i], i == 0 ? colors ?? [] : []));
        }

        return new Chart(name, model, Height: height);
    }

    private static HeaderEntry[] Legend(StudyPanel panel, IReadOnlyList<StudyClass> classes) =>
    [
        .. panel.Lines.Count > 1 ? panel.Lines.Select((l, i) => new HeaderEntry(l.Label, LookOf(l, i), marked: l.Look is null)) : [],
        .. classes.Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
    ];

    private static Look LookOf(StudyLine line, int index) => line.Look ?? Looks.Series(index);

    private static void Add(Panels layout, int panel, StudyPanel data)
    {
        for (int i = 0; i < data.Lines.Count; i++)
        {
            StudyLine line = data.Lines[i];
            Look look = LookOf(line, i);
            if (line is { Low: not null, High: not null })
            {
                layout.Model.Series.Add(data.Doubt == DoubtStyle.Bars ? Bars(panel, line, look.Color) : Band(panel, line, look.Color));
            }

            layout.Line(panel, line.X, line.Y, look);
            if (look.Marker != MarkerType.None)
            {
                layout.Dots(panel, line.X, line.Y, look, 6);
            }
        }
    }

    private static AreaSeries Band(int panel, StudyLine line, OxyColor color)
    {
        var band = new AreaSeries
        {
            YAxisKey = Panels.Key(panel),
            Fill = ChartStyle.Faint(color, 0.22),
            Color = OxyColors.Transparent,
            Color2 = OxyColors.Transparent,
        };
        band.Points.AddRange(line.X.Zip(line.Low!, (x, y) => new DataPoint(x, y)));
        band.Points2.AddRange(line.X.Zip(line.High!, (x, y) => new DataPoint(x, y)));
        return band;
    }

    private static LineSeries Bars(int panel, StudyLine line, OxyColor color)
    {
        var bars = new LineSeries { YAxisKey = Panels.Key(panel), Color = color, StrokeThickness = 3 };
        for (int i = 0; i < line.X.Length; i++)
        {
            if (!double.IsFinite(line.Y[i]))
            {
                continue;
            }

            bars.Points.Add(new DataPoint(line.X[i], line.Low![i]));
            bars.Points.Add(new DataPoint(line.X[i], line.High![i]));
            bars.Points.Add(DataPoint.Undefined);
        }

        return bars;
    }

    private static void AddSpans(
        Panels layout, int panel, IReadOnlyList<StudySpan> spans, IReadOnlyList<StudyClass> colors)
    {
        foreach (StudySpan span in spans)
        {
            OxyColor color = colors.First(c => c.Label == span.Label).Color;
            layout.Shade(panel, span.From, span.To, ChartStyle.Faint(color, 0.18));
            layout.Strip(panel, span.From, span.To, color);
        }
    }

    private static LinearAxis YAxis(StudyPanel panel)
    {
        IEnumerable<double> all = panel.Lines
            .SelectMany(l => l.Y.Concat(l.Low ?? []).Concat(l.High ?? [])).Where(double.IsFinite).DefaultIfEmpty(0);
        double low = all.Min(), high = all.Max();
        low = panel.FromZero ? Math.Min(low, 0) : low;
        double range = Math.Max(high - low, 1e-6);
        double below = 0.08 * range;
        return ChartStyle.NewAxis(AxisPosition.Left, string.Empty, low - below, high + (0.15 * range));
    }

    private static (double Left, double Right) XRange(IReadOnlyList<StudyPanel> panels, IReadOnlyList<StudySpan> spans)
    {
        IEnumerable<double> all = panels.SelectMany(p => p.Lines).SelectMany(l => l.X).Concat(spans.SelectMany(s => new[] { s.From, s.To }));
        double left = all.Min(), right = all.Max();
        double margin = 0.02 * Math.Max(right - left, 1e-6);
        return (left - margin, right + margin);
    }
}
