using LureSim.Reports.Kit.Charts;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Strike;

/// <summary>Moments on a curve over time: a dot each and its number.</summary>
/// <param name="points">Places, in axis values, and words beside their numbers.</param>
/// <param name="curve">The curve, in axis values.</param>
internal sealed class MomentDots(IReadOnlyList<(DataPoint At, string Words)> points, IReadOnlyList<DataPoint> curve) : Annotation
{
    private const double Size = 9;

    /// <summary>Places, in axis values, and words beside their numbers.</summary>
    public IReadOnlyList<(DataPoint At, string Words)> Points => points;

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

        ScreenPoint[] at = [.. points.Select(p => new ScreenPoint(x.Transform(p.At.X), y.Transform(p.At.Y)))];
        foreach (ScreenPoint p in at)
        {
            rc.DrawEllipse(new OxyRect(p.X - Size, p.Y - Size, 2 * Size, 2 * Size), ChartStyle.Ink, OxyColors.White, 2, EdgeRenderingMode.PreferGeometricAccuracy);
        }

        Tags.Draw(
            rc, ActualFont, PanelArea.Of(x, y), [.. at.Select((p, i) => new Tag(i + 1, p, points[i].Words))],
            [.. Tags.Along([.. curve.Select(p => new ScreenPoint(x.Transform(p.X), y.Transform(p.Y)))])]);
    }

    /// <inheritdoc/>
    protected override HitTestResult? HitTestOverride(HitTestArguments args) => null;
}
