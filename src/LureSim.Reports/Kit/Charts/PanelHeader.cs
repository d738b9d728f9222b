using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Kit.Charts;

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

    /// <summary>A dot with a white heart.</summary>
    Ring,
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

    /// <summary>Legend, right of the words; both shrink together when they would not fit side by side.</summary>
    public IReadOnlyList<HeaderEntry> Entries { get; }

    /// <summary>The words as drawn; before the first drawing as given.</summary>
    public string Shown => XAxis is { } xAxis && YAxis is { } yAxis ? Words(xAxis, yAxis) : _words;

    /// <summary>Height of the strip, px.</summary>
    public static double Height => 14 + (ChartStyle.HeaderSize * 1.4);

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
        double scale = Math.Min(1, (right - left) / (words + legend));
        double gapTop = GapTop(panelTop);
        rc.DrawRectangle(
            new OxyRect(left - 2, gapTop, right - left + 4, panelTop - gapTop),
            OxyColors.White, OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        double panelBottom = yAxis.Transform(yAxis.ActualMinimum);
        rc.DrawRectangle(
            new OxyRect(left, panelTop, right - left, panelBottom - panelTop),
            OxyColors.Undefined, ChartStyle.Grey, 1.5, EdgeRenderingMode.PreferGeometricAccuracy);

        double y = panelTop - 8 - (ChartStyle.HeaderSize * 0.7);
        rc.DrawText(
            new ScreenPoint(left, y), text, ChartStyle.Ink, ActualFont, ChartStyle.HeaderSize * scale,
            FontWeights.Bold, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
        double x = right - (legend * scale);
        foreach (HeaderEntry entry in Entries)
        {
            DrawEntry(rc, entry, x, y, scale);
            x += EntryWidth(rc, entry) * scale;
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

    private void DrawEntry(IRenderContext rc, HeaderEntry entry, double x, double y, double scale)
    {
        const EdgeRenderingMode mode = EdgeRenderingMode.PreferGeometricAccuracy;
        double wide = SwatchWidth * scale;
        switch (entry.Kind)
        {
            case Swatch.Box:
                rc.DrawRectangle(new OxyRect(x, y - 12, wide, 24), entry.Color, ChartStyle.Grey, 1, mode);
                break;
            case Swatch.Dot:
                rc.DrawEllipse(new OxyRect(x + (wide / 2) - 8, y - 8, 16, 16), entry.Color, entry.Color, 1, mode);
                break;
            case Swatch.Ring:
                rc.DrawEllipse(new OxyRect(x + (wide / 2) - 8, y - 8, 16, 16), OxyColors.White, entry.Color, 3, mode);
                break;
            default:
                double[]? dash = entry.Kind == Swatch.Dash ? [10, 7] : null;
                ScreenPoint[] line = [new(x, y), new(x + wide, y)];
                rc.DrawLine(line, entry.Color, ChartStyle.LineWidth, mode, dash, LineJoin.Miter);
                break;
        }

        rc.DrawText(
            new ScreenPoint(x + wide + Gap, y), entry.Label, ChartStyle.Ink, ActualFont, ChartStyle.TextSize * scale,
            FontWeights.Normal, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;
}
