using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Charts;

/// <summary>How a legend entry looks.</summary>
public enum Swatch
{
    /// <summary>A solid line.</summary>
    Line,

    /// <summary>A dashed line.</summary>
    Dash,

    /// <summary>A filled box: a shaded span.</summary>
    Box,

    /// <summary>A dot.</summary>
    Dot,
}

/// <summary>One legend entry.</summary>
/// <param name="Label">Text.</param>
/// <param name="Color">Colour.</param>
/// <param name="Kind">Look.</param>
public sealed record HeaderEntry(string Label, OxyColor Color, Swatch Kind = Swatch.Line);

/// <summary>
/// The strip over a panel: what the panel shows, in plain words, and its legend. It stands in the gap above the y axis it
/// belongs to, so it can never lie on the data.
/// </summary>
public class PanelHeader : Annotation
{
    private const double SwatchWidth = 44;
    private const double Gap = 12;
    private readonly string _words;

    /// <summary>Creates a header over the panel of a y axis.</summary>
    /// <param name="yAxisKey">Key of the axis; null for the only one.</param>
    /// <param name="text">Plain words.</param>
    /// <param name="entries">Legend.</param>
    public PanelHeader(string? yAxisKey, string text, params IReadOnlyList<HeaderEntry> entries)
    {
        YAxisKey = yAxisKey;
        _words = text;
        Entries = entries;
        Layer = AnnotationLayer.AboveSeries;
        ClipByXAxis = false;
        ClipByYAxis = false;
    }

    /// <summary>Legend, right of the words; on a line of its own above the panel if the two do not fit side by side.</summary>
    public IReadOnlyList<HeaderEntry> Entries { get; }

    /// <summary>Height that a header needs, px.</summary>
    /// <param name="rows">Lines of text: 1, or 2 when the legend stands under the words.</param>
    public static double Height(int rows) => 14 + (rows * ChartStyle.HeaderSize * 1.35);

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        base.Render(rc);
        if (XAxis is not { } xAxis || YAxis is not { } yAxis)
        {
            return;
        }

        string text = Words(xAxis, yAxis);
        double left = Math.Min(xAxis.ScreenMin.X, xAxis.ScreenMax.X);
        double right = Math.Max(xAxis.ScreenMin.X, xAxis.ScreenMax.X);
        double panelTop = yAxis.Transform(yAxis.ActualMaximum);
        double words = rc.MeasureText(text, ActualFont, ChartStyle.HeaderSize, FontWeights.Bold).Width;
        double legend = Entries.Sum(e => EntryWidth(rc, e));
        bool oneRow = Entries.Count == 0 || words + legend + (2 * Gap) <= right - left;
        double gapTop = GapTop(panelTop);
        rc.DrawRectangle(
            new OxyRect(left - 2, gapTop, right - left + 4, panelTop - gapTop),
            OxyColors.White, OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        double panelBottom = yAxis.Transform(yAxis.ActualMinimum);
        rc.DrawRectangle(
            new OxyRect(left, panelTop, right - left, panelBottom - panelTop),
            OxyColors.Undefined, ChartStyle.Grey, 1.5, EdgeRenderingMode.PreferGeometricAccuracy);

        double row = ChartStyle.HeaderSize * 1.35;
        double legendY = panelTop - 8 - (row / 2);
        double wordsY = oneRow ? legendY : legendY - row;
        rc.DrawText(
            new ScreenPoint(left, wordsY), text, ChartStyle.Ink, ActualFont, ChartStyle.HeaderSize,
            FontWeights.Bold, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
        double x = oneRow ? right - legend : left;
        foreach (HeaderEntry entry in Entries)
        {
            DrawEntry(rc, entry, x, legendY);
            x += EntryWidth(rc, entry);
        }
    }

    /// <summary>The words, when the axes are known.</summary>
    /// <param name="xAxis">Axis of the picture.</param>
    /// <param name="yAxis">Axis of the panel.</param>
    protected virtual string Words(Axis xAxis, Axis yAxis) => _words;

    // The grid of the shared x axis runs through the gaps too; the strip covers it up to the panel above.
    private double GapTop(double panelTop)
    {
        double top = PlotModel.PlotArea.Top - 2;
        foreach (Axis axis in PlotModel.Axes)
        {
            double bottom = axis.IsVertical() ? axis.Transform(axis.ActualMinimum) : top;
            top = bottom < panelTop && bottom > top ? bottom : top;
        }

        return top;
    }

    private double EntryWidth(IRenderContext rc, HeaderEntry entry) =>
        SwatchWidth + rc.MeasureText(entry.Label, ActualFont, ChartStyle.TextSize, FontWeights.Normal).Width + (3 * Gap);

    private void DrawEntry(IRenderContext rc, HeaderEntry entry, double x, double y)
    {
        const EdgeRenderingMode mode = EdgeRenderingMode.PreferGeometricAccuracy;
        switch (entry.Kind)
        {
            case Swatch.Box:
                rc.DrawRectangle(new OxyRect(x, y - 12, SwatchWidth, 24), entry.Color, ChartStyle.Grey, 1, mode);
                break;
            case Swatch.Dot:
                rc.DrawEllipse(new OxyRect(x + (SwatchWidth / 2) - 7, y - 7, 14, 14), entry.Color, entry.Color, 1, mode);
                break;
            default:
                double[]? dash = entry.Kind == Swatch.Dash ? [10, 7] : null;
                ScreenPoint[] line = [new(x, y), new(x + SwatchWidth, y)];
                rc.DrawLine(line, entry.Color, ChartStyle.LineWidth, mode, dash, LineJoin.Miter);
                break;
        }

        rc.DrawText(
            new ScreenPoint(x + SwatchWidth + Gap, y), entry.Label, ChartStyle.Ink, ActualFont, ChartStyle.TextSize,
            FontWeights.Normal, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;
}
