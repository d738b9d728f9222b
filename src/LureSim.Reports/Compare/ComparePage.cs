using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>stub</summary>
public static class ComparePage
{
    /// <summary>stub</summary>
    public static Chart Build(CompareResult result) => new("compare_page", ChartStyle.NewModel("x", "y"), 1600, 900);
}
