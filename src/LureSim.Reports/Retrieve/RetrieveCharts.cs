using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Retrieve;

/// <summary>The pictures of a retrieve; how to read them: <c>docs/pictures.md</c>.</summary>
public static class RetrieveCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="result">Retrieve, complete or stopped.</param>
    public static IReadOnlyList<Chart> All(RetrieveResult result)
    {
        var charts = new List<Chart> { TopView.Build(result) };
        if (!result.Task.IsTow)
        {
            charts.Add(PullSlackTurn.Build(result));
        }

        if (result.Snapshots.Count > 0)
        {
            charts.Add(SideView.Build(result));
        }

        if (result.Task.Hull != HullFreedom.Planar)
        {
            charts.Add(AttitudeSide.Build(result));
        }

        charts.Add(AttitudeTime.Build(result));
        charts.Add(Loads.Build(result));
        return charts;
    }
}
