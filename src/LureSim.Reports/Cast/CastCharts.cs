using LureSim.Model.Cast;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The pictures of a cast; how to read them: <c>docs/pictures.md</c>.</summary>
public static class CastCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="report">Cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static IReadOnlyList<Chart> All(CastReport report, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        CastResult result = report.Cast;
        return
        [
            SwingStrobe.Build(result, shown), FlightPath.Build(result, shown), CastSpeeds.Build(result, shown), ReleaseChart.Build(result, shown), EnergyBars.Build(result, shown),
            .. report.Brakes.Count > 1 ? [BrakeChart.Build(report, shown)] : (IEnumerable<Chart>)[],
        ];
    }
}
