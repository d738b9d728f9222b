using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>Where a panel lies in a picture that is being drawn.</summary>
internal static class PanelArea
{
    /// <summary>The panel of two axes, px.</summary>
    /// <param name="x">Axis of the picture.</param>
    /// <param name="y">Axis of the panel.</param>
    public static OxyRect Of(Axis x, Axis y)
    {
        double left = x.Transform(x.ActualMinimum), right = x.Transform(x.ActualMaximum), top = y.Transform(y.ActualMaximum), bottom = y.Transform(y.ActualMinimum);
        return new(left, top, right - left, bottom - top);
    }
}
