using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>The pictures of a strike; how to read them: <c>docs/pictures.md</c>.</summary>
public static class StrikeCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<Chart> All(StrikeReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        return [StrikeForce.Build(report, shown), DragWindowChart.Build(report, shown), StrikeDistance.Build(report, shown), MarginBars.Build(report, shown)];
    }
}
