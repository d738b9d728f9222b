using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>Every picture of a design.</summary>
public static class DesignCharts
{
    /// <summary>Pictures of the lure to build: how it floats, what was changed, how it answers a pull, what moves its walk margin.</summary>
    /// <param name="report">Design.</param>
    /// <param name="name">Tells a change.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<Chart> All(DesignReport report, Func<DesignChange, string> name, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        var charts = new List<Chart>();
        if ((report.RestAfter ?? report.Rest) is { } built)
        {
            charts.AddRange([TrimView.Build(report.Title, built, shown), TrimRighting.Build(report.Title, built, shown)]);
        }

        if (report.Rest is { } before && report.RestAfter is { } after)
        {
            charts.Add(BeforeAfterChart.Build(report.Title, before, after, LureChange.Words(before.Lure, after.Lure, shown), shown));
        }

        if ((report.After ?? report.Own).Margin is { } margin)
        {
            charts.Add(PullTurnChart.Build(report.Title, margin, shown));
        }

        if (MarginMovesChart.Build(report.Title, report.Own, report.Changes, name) is { } moves)
        {
            charts.Add(moves);
        }

        return charts;
    }

    /// <summary>Pictures of a map.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="shown">Units.</param>
    public static IReadOnlyList<Chart> Map(string title, DesignMap map, Shown shown) =>
        [DesignMapCharts.Angle(title, map, shown), DesignMapCharts.Tow(title, map, shown)];
}
