using LureSim.Model.Cast;
using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Cast;

/// <summary>The pictures of a cast; how to read them: <c>docs/pictures.md</c>.</summary>
public static class CastCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="result">Cast.</param>
    public static IReadOnlyList<Chart> All(CastResult result) =>
    [
        SwingStrobe.Build(result), FlightPath.Build(result), CastSpeeds.Build(result), ReleaseChart.Build(result), EnergyBars.Build(result),
    ];
}
