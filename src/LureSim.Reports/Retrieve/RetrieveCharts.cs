using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;

namespace LureSim.Reports.Retrieve;

/// <summary>The pictures of a retrieve; how to read them: <c>docs/pictures.md</c>.</summary>
public static class RetrieveCharts
{
    /// <summary>All pictures in the order in which they are shown.</summary>
    /// <param name="result">Retrieve, complete or stopped.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<Chart> All(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        var charts = new List<Chart> { TopView.Build(result, shown) };
        if (!result.Task.IsTow)
        {
            charts.Add(PullSlackTurn.Build(result, shown));
        }

        if (result.Snapshots.Count > 0)
        {
            charts.Add(SideView.Build(result, shown));
        }

        if (result.Task.Hull != HullFreedom.Planar)
        {
            charts.Add(AttitudeSide.Build(result, shown));
        }

        charts.Add(AttitudeTime.Build(result, shown));
        charts.Add(Loads.Build(result, shown));
        return charts;
    }
}
