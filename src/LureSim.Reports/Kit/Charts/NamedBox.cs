using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Kit.Charts;

/// <summary>A box that writes its name into itself where the name fits: what a colour means is then read without a legend.</summary>
/// <param name="name">Name; null = none.</param>
/// <param name="avoid">Abscissa that the name keeps clear of, for a dot; NaN = none.</param>
internal sealed class NamedBox(string? name, double avoid) : RectangleAnnotation
{
    private const double Clear = 22, Edge = 8;

    /// <inheritdoc/>
    public override void Render(IRenderContext rc)
    {
        base.Render(rc);
        if (name is null || XAxis is not { } xAxis || YAxis is not { } yAxis)
        {
            return;
        }

        double left = xAxis.Transform(MinimumX), right = xAxis.Transform(MaximumX), dot = xAxis.Transform(avoid);
        (double from, double to) = !(dot > left && dot < right) ? (left, right) : dot - left > right - dot ? (left, dot - Clear) : (dot + Clear, right);
        OxySize size = rc.MeasureText(name, ActualFont, ChartStyle.TextSize, FontWeights.Normal);
        double bottom = yAxis.Transform(MinimumY), top = yAxis.Transform(MaximumY);
        if (size.Width + (2 * Edge) <= to - from && size.Height <= Math.Abs(bottom - top))
        {
            rc.DrawText(
                new ScreenPoint(0.5 * (from + to), 0.5 * (bottom + top)), name, ChartStyle.TextOn(Fill), ActualFont, ChartStyle.TextSize, FontWeights.Normal,
                0, HorizontalAlignment.Center, VerticalAlignment.Middle);
        }
    }
}
