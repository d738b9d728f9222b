using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Kit.Charts;

/// <summary>A panel with one row per set-up: boxes, dots and words in rows. Row 0 lies at the bottom; the first set-up stands on top.</summary>
internal static class SetUpRows
{
    /// <summary>The axis with the names.</summary>
    /// <param name="labels">Names of the set-ups, the first on top.</param>
    public static CategoryAxis Axis(IReadOnlyList<string> labels)
    {
        LinearAxis look = ChartStyle.NewAxis(AxisPosition.Left, string.Empty);
        var axis = new CategoryAxis
        {
            Position = AxisPosition.Left,
            Minimum = -0.5,
            Maximum = labels.Count - 0.5,
            MinorTickSize = 0,
            MajorTickSize = 0,
            AxislineStyle = LineStyle.Solid,
            AxislineColor = look.AxislineColor,
            AxislineThickness = look.AxislineThickness,
            GapWidth = 0,
        };
        axis.Labels.AddRange(labels.Reverse());
        return axis;
    }

    /// <summary>A box; none where an end is not a number.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="from">Left end.</param>
    /// <param name="to">Right end.</param>
    /// <param name="row">Row.</param>
    /// <param name="half">Half of its height, in rows.</param>
    /// <param name="fill">Colour.</param>
    public static void Box(Panels panels, double from, double to, double row, double half, OxyColor fill)
    {
        if (double.IsFinite(from) && double.IsFinite(to))
        {
            panels.Model.Annotations.Add(new RectangleAnnotation
            {
                YAxisKey = Panels.Key(0),
                MinimumX = from,
                MaximumX = to,
                MinimumY = row - half,
                MaximumY = row + half,
                Fill = fill,
                Layer = AnnotationLayer.BelowSeries,
            });
        }
    }

    /// <summary>A dot with a dark rim.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="x">Place.</param>
    /// <param name="row">Row.</param>
    /// <param name="fill">Colour of its heart.</param>
    public static void Dot(Panels panels, double x, double row, OxyColor fill)
    {
        var dot = new ScatterSeries
        {
            YAxisKey = Panels.Key(0),
            MarkerType = MarkerType.Circle,
            MarkerSize = 9,
            MarkerFill = fill,
            MarkerStroke = ChartStyle.Ink,
            MarkerStrokeThickness = 3,
        };
        dot.Points.Add(new ScatterPoint(x, row));
        panels.Model.Series.Add(dot);
    }

    /// <summary>Words from a place to the right.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="x">Left end.</param>
    /// <param name="row">Row.</param>
    /// <param name="text">Words.</param>
    /// <param name="background">What lies behind them; nothing when they stand on a box.</param>
    public static void Write(Panels panels, double x, double row, string text, OxyColor background) => panels.Model.Annotations.Add(new TextAnnotation
    {
        YAxisKey = Panels.Key(0),
        Text = text,
        TextPosition = new DataPoint(x, row),
        Stroke = OxyColors.Undefined,
        Background = background,
        FontSize = ChartStyle.TextSize,
        TextColor = ChartStyle.Ink,
        TextHorizontalAlignment = HorizontalAlignment.Left,
        TextVerticalAlignment = VerticalAlignment.Middle,
    });
}
