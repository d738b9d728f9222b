using LureSim.Reports.Kit.Charts;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Strike;

/// <summary>A curve's name beside its right end.</summary>
/// <param name="End">Right end, in axis values.</param>
/// <param name="Name">Name.</param>
/// <param name="Color">Colour of the curve.</param>
/// <param name="IsOwn">True for the thing itself that others are compared with: bold.</param>
internal sealed record EndName(DataPoint End, string Name, OxyColor Color, bool IsOwn);

/// <summary>Names of curves right of the plot, each at the height of its end as far as the others let it, and a stroke from end to name.</summary>
/// <param name="names">Names.</param>
internal sealed class EndNames(IReadOnlyList<EndName> names) : Annotation
{
    private const double Stroke = 34, Gap = 8, Row = 1.25 * ChartStyle.TextSize;

    /// <summary>Names.</summary>
    public IReadOnlyList<EndName> Names => names;

    /// <summary>Width that stroke and gaps take beside the names, px.</summary>
    public static double Beside => Stroke + (3.0 * Gap);

    /// <inheritdoc/>
    public override OxyRect GetClippingRect() => OxyRect.Everything;

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        base.Render(rc);
        if (XAxis is not { } x || YAxis is not { } y)
        {
            return;
        }

        OxyRect area = PanelArea.Of(x, y);
        EndName[] fromTop = [.. names.OrderByDescending(n => n.End.Y)];
        double[] heights = Spread([.. fromTop.Select(n => y.Transform(n.End.Y))], area.Top + (0.5 * Row), area.Bottom - (0.5 * Row));
        for (int i = 0; i < fromTop.Length; i++)
        {
            EndName n = fromTop[i];
            var end = new ScreenPoint(x.Transform(n.End.X), y.Transform(n.End.Y));
            double from = area.Right + Gap, to = from + Stroke;
            rc.DrawLine([end, new(from, end.Y), new(to, heights[i])], n.Color, 1.5, EdgeRenderingMode.PreferGeometricAccuracy, null, LineJoin.Round);
            rc.DrawText(
                new ScreenPoint(to + Gap, heights[i]), n.Name, ChartStyle.Ink, ActualFont, ChartStyle.TextSize, n.IsOwn ? FontWeights.Bold : FontWeights.Normal, 0,
                HorizontalAlignment.Left, VerticalAlignment.Middle);
        }
    }

    /// <summary>Heights a row apart, as near to the wanted ones as that allows.</summary>
    /// <param name="wanted">Wanted heights, falling on the screen, px.</param>
    /// <param name="top">Highest place, px.</param>
    /// <param name="bottom">Lowest place, px.</param>
    public static double[] Spread(double[] wanted, double top, double bottom)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        double[] at = [.. wanted];
        for (int i = 0; i < at.Length; i++)
        {
            at[i] = Math.Max(at[i], i == 0 ? top : at[i - 1] + Row);
        }

        for (int i = at.Length - 1; i >= 0; i--)
        {
            at[i] = Math.Min(at[i], i == at.Length - 1 ? bottom : at[i + 1] - Row);
        }

        return at;
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;
}
