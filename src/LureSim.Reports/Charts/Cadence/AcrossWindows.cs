using LureSim.Reports.Drawing;
using LureSim.Reports.Text;
using LureSim.Studies.Cadence;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Charts.Cadence;

/// <summary>One row per set-up: which rhythm gives which pattern, and where the best lies.</summary>
public static class AcrossWindows
{
    private const double RowHeight = 78, Rest = 300, HalfRow = 0.38;

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static Chart Build(AcrossResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        int rows = result.Cases.Count, height = (int)(Rest + (RowHeight * rows));
        PlotModel model = ChartStyle.NewModel(result.Title, "Rhythms that walk, by " + string.Join(" and ", result.Keys.Select(k => k.Title)));
        var panels = new Panels(model, height, [Rows(result)]);
        model.Axes.Add(Rhythms(known));
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result.Cases[i], known[0].Points[0].PerS);
        }

        panels.Header(0, string.Empty,
        [
            .. PatternClasses.Of(known.SelectMany(r => r.Points).Select(p => p.Pattern)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
            new HeaderEntry("best, with its glide", ChartStyle.Ink, Swatch.Dot),
        ]);
        return new Chart("across_windows", model, Height: height);
    }

    private static CategoryAxis Rows(AcrossResult result)
    {
        LinearAxis look = ChartStyle.NewAxis(AxisPosition.Left, string.Empty);
        var axis = new CategoryAxis
        {
            Position = AxisPosition.Left,
            Minimum = -0.5,
            Maximum = result.Cases.Count - 0.5,
            MinorTickSize = 0,
            MajorTickSize = 0,
            AxislineStyle = LineStyle.Solid,
            AxislineColor = look.AxislineColor,
            AxislineThickness = look.AxislineThickness,
            GapWidth = 0,
        };
        axis.Labels.AddRange(result.Cases.Reverse().Select(c => c.Label));
        return axis;
    }

    private static LinearAxis Rhythms(CadenceResult[] known)
    {
        double from = known.Min(r => r.Points[0].PerS), to = known.Max(r => r.Points[^1].PerS), margin = 0.02 * (to - from);
        return ChartStyle.NewAxis(AxisPosition.Bottom, CadenceChart.RhythmTitle, from - margin, to + margin);
    }

    private static void AddRow(Panels panels, int row, AcrossCase setUp, double left)
    {
        if (setUp.Result is not CadenceResult result)
        {
            Write(panels, left, row, "no run finished");
            return;
        }

        foreach ((Model.Retrieve.WalkPattern? pattern, double from, double to) in result.Bands())
        {
            panels.Model.Annotations.Add(new RectangleAnnotation
            {
                YAxisKey = Panels.Key(0),
                MinimumX = from,
                MaximumX = to,
                MinimumY = row - HalfRow,
                MaximumY = row + HalfRow,
                Fill = PatternClasses.Of([pattern])[0].Color,
                Layer = AnnotationLayer.BelowSeries,
            });
        }

        if (result.BestPoint is RhythmPoint best)
        {
            var dot = new ScatterSeries { YAxisKey = Panels.Key(0), MarkerType = MarkerType.Circle, MarkerSize = 9, MarkerFill = ChartStyle.Ink };
            dot.Points.Add(new ScatterPoint(best.PerS, row));
            panels.Model.Series.Add(dot);
            Write(panels, best.PerS, row, $"  {Trade.Digits(100.0 * best.Median(o => o.GlideM))} cm");
        }
    }

    private static void Write(Panels panels, double x, double y, string text) => panels.Model.Annotations.Add(new TextAnnotation
    {
        YAxisKey = Panels.Key(0),
        Text = text,
        TextPosition = new DataPoint(x, y),
        Stroke = OxyColors.Undefined,
        FontSize = ChartStyle.TextSize,
        TextColor = ChartStyle.Ink,
        TextHorizontalAlignment = HorizontalAlignment.Left,
        TextVerticalAlignment = VerticalAlignment.Middle,
    });
}
