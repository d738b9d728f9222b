using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Kit.Charts;

/// <summary>A panel with one named row per thing that is compared: boxes, dots, and words beside the plot. Row 0 lies at the bottom; the first thing
/// stands on top.</summary>
internal static class SetUpRows
{
    /// <summary>Widest name, px.</summary>
    public const double NameWidth = 400;

    private const double Rest = 300, RowHeight = 64, Margins = 70, Indent = 24;

    /// <summary>Height of the picture, px: 16 to 10 up to eleven rows.</summary>
    /// <param name="rows">Number of rows.</param>
    public static int Height(int rows) => (int)Math.Max(ChartStyle.Height, Rest + (RowHeight * rows));

    /// <summary>The axis with the names, broken into two lines where they are long.</summary>
    /// <param name="labels">Names, the first on top.</param>
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
        axis.Labels.AddRange(labels.Reverse().Select(l => TextFit.Wrap(l, ChartStyle.TextSize, FontWeights.Normal, NameWidth, 2)));
        return axis;
    }

    /// <summary>Share of the width that the plot takes beside words.</summary>
    /// <param name="axis">Axis with the names.</param>
    /// <param name="words">Width of the words, px.</param>
    public static double PlotShare(CategoryAxis axis, double words)
    {
        double names = axis.Labels.Select(l => TextLayout.Measure(l, ChartStyle.TextSize, FontWeights.Normal).Width).DefaultIfEmpty(0).Max();
        return 1 - ((words + Indent) / (ChartStyle.Width - Margins - names));
    }

    /// <summary>A box; none where an end is not a number.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="from">Left end.</param>
    /// <param name="to">Right end.</param>
    /// <param name="row">Row.</param>
    /// <param name="half">Half of its height, in rows.</param>
    /// <param name="fill">Colour.</param>
    /// <param name="name">Written into it where there is room; none = nothing.</param>
    /// <param name="avoid">Place that the name keeps clear of; NaN = none.</param>
    public static void Box(Panels panels, double from, double to, double row, double half, OxyColor fill, string? name = null, double avoid = double.NaN)
    {
        if (double.IsFinite(from) && double.IsFinite(to))
        {
            panels.Model.Annotations.Add(new NamedBox(name, avoid)
            {
                YAxisKey = Panels.Key(0),
                MinimumX = Math.Min(from, to),
                MaximumX = Math.Max(from, to),
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
    public static void Dot(Panels panels, double x, double row, OxyColor fill) =>
        panels.Dots(0, [x], [row], new Look(fill), 10);

    /// <summary>Words beside the plot, on the right; the place of a table, not of the axis.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="xEnd">Right end of the x axis.</param>
    /// <param name="row">Row.</param>
    /// <param name="text">Words.</param>
    /// <param name="line">-1 upper of two lines, 1 lower, 0 in the middle.</param>
    /// <param name="bold">Bold.</param>
    public static void Beside(Panels panels, double xEnd, double row, string text, int line = 0, bool bold = false) =>
        panels.Model.Annotations.Add(Words(xEnd, row, text, new ScreenVector(Indent, line * 0.62 * ChartStyle.TextSize), bold, clip: false));

    /// <summary>Words inside the plot, from a place to the right.</summary>
    /// <param name="panels">Picture.</param>
    /// <param name="x">Left end.</param>
    /// <param name="row">Row.</param>
    /// <param name="text">Words.</param>
    public static void Write(Panels panels, double x, double row, string text) =>
        panels.Model.Annotations.Add(Words(x, row, text, new ScreenVector(0, 0), bold: false, clip: true));

    private static TextAnnotation Words(double x, double row, string text, ScreenVector offset, bool bold, bool clip) => new()
    {
        YAxisKey = Panels.Key(0),
        Text = text,
        TextPosition = new DataPoint(x, row),
        Offset = offset,
        ClipByXAxis = clip,
        ClipByYAxis = clip,
        Stroke = OxyColors.Undefined,
        FontSize = ChartStyle.TextSize,
        FontWeight = bold ? FontWeights.Bold : FontWeights.Normal,
        TextColor = ChartStyle.Ink,
        TextHorizontalAlignment = HorizontalAlignment.Left,
        TextVerticalAlignment = VerticalAlignment.Middle,
    };
}
