using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Kit.Charts;

/// <summary>
/// The strip over a panel: what the panel shows, in plain words, and its legend. It stands in the gap above the y axis it
/// belongs to, so it can never lie on the data.
/// </summary>
public class PanelHeader : Annotation
{
    private const EdgeRenderingMode Mode = EdgeRenderingMode.PreferGeometricAccuracy;
    private const double Marker = 9;
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

    /// <summary>Legend, right of the words or below them.</summary>
    public IReadOnlyList<HeaderEntry> Entries { get; }

    /// <summary>The words as drawn; before the first drawing as given.</summary>
    public string Shown => XAxis is { } xAxis && YAxis is { } yAxis ? Words(xAxis, yAxis) : _words;

    /// <summary>Height of a strip of one line, px.</summary>
    public static double Height => Margin + LineHeight;

    /// <summary>Height of a line, px.</summary>
    public static double LineHeight => ChartStyle.HeaderSize * 1.4;

    /// <summary>Free height above a strip, px.</summary>
    public static double Margin => 14;

    /// <summary>Width that a header counts on when its lines are laid out, px.</summary>
    public double Room { get; set; } = ChartStyle.Width;

    /// <summary>Number of lines.</summary>
    public int Lines => HeaderLayout.Lines(HeaderLayout.Fit(Longest(_words), Room), Entries, Room);

    /// <inheritdoc/>
    public override OxyRect GetClippingRect() => OxyRect.Everything;

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        base.Render(rc);
        if (XAxis is not { } xAxis || YAxis is not { } yAxis)
        {
            return;
        }

        string text = HeaderLayout.Fit(Words(xAxis, yAxis), Room);
        double left = Math.Min(xAxis.ScreenMin.X, xAxis.ScreenMax.X);
        double right = Math.Max(xAxis.ScreenMin.X, xAxis.ScreenMax.X);
        double panelTop = yAxis.Transform(yAxis.ActualMaximum);
        DrawFrame(rc, yAxis, left, right, panelTop);
        IReadOnlyList<IReadOnlyList<HeaderEntry>> rows = HeaderLayout.Rows(text, Entries, Room);
        bool beside = HeaderLayout.IsBeside(text, Entries, Room);
        int lines = Math.Max(1, rows.Count + (text.Length > 0 && rows.Count > 0 && !beside ? 1 : 0));
        // What is wider than the panel begins at the edge of the picture.
        double widest = Math.Max(
            (beside ? HeaderLayout.Width(text) + (2 * HeaderLayout.Gap) : 0) + rows.Select(r => r.Sum(HeaderLayout.Width)).DefaultIfEmpty(0).Max(), HeaderLayout.Width(text));
        double end = Math.Max(right, left + widest) > PlotModel.Width - Margin ? PlotModel.Width - Margin : Math.Max(right, left + widest);
        double start = Math.Max(Margin, Math.Min(left, end - widest));
        double y = panelTop - 8 - (ChartStyle.HeaderSize * 0.7) - ((lines - 1) * LineHeight);
        rc.DrawText(
            new ScreenPoint(start, y), text, ChartStyle.Ink, ActualFont, ChartStyle.HeaderSize, FontWeights.Bold, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
        y += text.Length > 0 && !beside ? LineHeight : 0;
        foreach (IReadOnlyList<HeaderEntry> row in rows)
        {
            double x = beside ? end - row.Sum(HeaderLayout.Width) + (2 * HeaderLayout.Gap) : start;
            foreach (HeaderEntry entry in row)
            {
                DrawEntry(rc, entry, x, y);
                x += HeaderLayout.Width(entry);
            }

            y += LineHeight;
        }
    }

    /// <summary>The longest that the words may become when the axes are known.</summary>
    /// <param name="words">Words as given.</param>
    protected virtual string Longest(string words) => words;

    /// <summary>The words, when the axes are known.</summary>
    /// <param name="xAxis">Axis of the picture.</param>
    /// <param name="yAxis">Axis of the panel.</param>
    protected virtual string Words(Axis xAxis, Axis yAxis) => _words;

    private void DrawFrame(IRenderContext rc, Axis yAxis, double left, double right, double panelTop)
    {
        double gapTop = GapTop(panelTop), panelBottom = yAxis.Transform(yAxis.ActualMinimum);
        rc.DrawRectangle(new OxyRect(left - 2, gapTop, right - left + 4, panelTop - gapTop), OxyColors.White, OxyColors.Undefined, 0, Mode);
        rc.DrawRectangle(new OxyRect(left, panelTop, right - left, panelBottom - panelTop), OxyColors.Undefined, ChartStyle.Grey, 1.5, Mode);
    }

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

    private void DrawEntry(IRenderContext rc, HeaderEntry entry, double x, double y)
    {
        const double wide = HeaderLayout.SwatchWidth;
        ScreenPoint middle = new(x + (wide / 2), y);
        switch (entry.Kind)
        {
            case Swatch.Box:
                rc.DrawRectangle(new OxyRect(x, y - 12, wide, 24), entry.Color, ChartStyle.Grey, 1, Mode);
                break;
            case Swatch.Dot:
                rc.DrawEllipse(new OxyRect(middle.X - 8, y - 8, 16, 16), entry.Color, entry.Color, 1, Mode);
                break;
            case Swatch.Ring:
                rc.DrawEllipse(new OxyRect(middle.X - 8, y - 8, 16, 16), OxyColors.White, entry.Color, 3, Mode);
                break;
            default:
                rc.DrawLine([new(x, y), new(x + wide, y)], entry.Color, ChartStyle.LineWidth, Mode, Look.Of(entry.Style), LineJoin.Miter);
                break;
        }

        if (entry.Kind == Swatch.Marked)
        {
            rc.DrawMarker(middle, entry.Marker, null!, Marker, entry.Color, entry.Color, ChartStyle.LineWidth, Mode);
        }

        rc.DrawText(
            new ScreenPoint(x + wide + HeaderLayout.Gap, y), HeaderLayout.Fit(entry.Label), ChartStyle.Ink, ActualFont, ChartStyle.TextSize,
            FontWeights.Normal, 0, HorizontalAlignment.Left, VerticalAlignment.Middle);
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;
}
