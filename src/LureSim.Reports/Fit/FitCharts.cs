using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;

namespace LureSim.Reports.Fit;

/// <summary>The pictures of a fit: bands always, measured against computed for each kind of test that there is.</summary>
internal static class FitCharts
{
    /// <summary>All.</summary>
    /// <param name="report">Fit.</param>
    /// <param name="shown">How quantities are told.</param>
    public static IReadOnlyList<Chart> All(FitReport report, Shown shown)
    {
        bool Has(params FitKind[] kinds) => report.Rows.Any(r => kinds.Contains(r.Reading.Test));
        return
        [
            FitBandsChart.Build(report, shown),
            .. Has(FitKind.Tow) ? (Chart[])[FitTowChart.Build(report, shown)] : [],
            .. Has(FitKind.Coast, FitKind.Track) ? (Chart[])[FitWayChart.Build(report, shown)] : [],
            .. Has([.. FitMissChart.Kinds]) ? (Chart[])[FitMissChart.Build(report, shown)] : [],
        ];
    }
}
