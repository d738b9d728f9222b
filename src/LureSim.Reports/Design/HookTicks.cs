using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Design;

/// <summary>Ticks of an axis of hook sizes: each has its size, every second or third where they would run into each other; the sizes of the lure as it is are always told.</summary>
internal static class HookTicks
{
    // Width of the plot beside its axes and the bar of shades, px, and room between two labels.
    private const double PlotWidth = 1200.0, Apart = 24.0;

    /// <summary>Labels an axis; nothing where it is not counted.</summary>
    /// <param name="model">Picture.</param>
    /// <param name="position">Which axis.</param>
    /// <param name="words">Words of the axis.</param>
    public static void Set(PlotModel model, AxisPosition position, MapAxisWords words)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(words);
        if (!words.Axis.IsCounted)
        {
            return;
        }

        Axis axis = model.Axes.First(a => a.Position == position);
        double[] values = words.Axis.Values();
        double widest = values.Max(v => TextLayout.Measure(words.Tick(v), ChartStyle.TextSize, FontWeights.Normal).Width) + Apart;
        axis.MajorStep = position == AxisPosition.Bottom ? Math.Max(1.0, Math.Ceiling(widest * values.Length / PlotWidth)) : 1.0;
        axis.MinorStep = 1.0;
        axis.LabelFormatter = words.Tick;
    }
}
