using LureSim.Model.Cast;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The pictures of a cast; how to read them: <c>docs/pictures.md</c>.</summary>
public static class CastCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="report">Cast.</param>
    public static IReadOnlyList<Chart> All(CastReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        CastResult result = report.Cast;
        return
        [
            SwingStrobe.Build(result), FlightPath.Build(result), CastSpeeds.Build(result), ReleaseChart.Build(result), EnergyBars.Build(result),
            .. report.Brakes.Count > 1 ? [BrakeChart.Build(report)] : (IEnumerable<Chart>)[],
        ];
    }
}
