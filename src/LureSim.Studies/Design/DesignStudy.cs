using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Design;

/// <summary>The account of one lure: float, margin, hooks, tolerance, changes; and where its weight goes for a wish.</summary>
public static class DesignStudy
{
    /// <summary>Makes it.</summary>
    /// <param name="scenario">Scenario with a lure and water.</param>
    /// <param name="wish">How it is to float; null: as it does.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">The lure does not float, so nothing can be told of it; the message says why.</exception>
    /// <exception cref="Model.ModelException">No stable attitude was found.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignReport Run(ScenarioResult scenario, DesignWish? wish, MarginTask task, int threads, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        WaterState water = WaterModel.Evaluate(scenario.Setup!.Water);
        LureSpec lure = scenario.Setup.Lure;
        var sizes = HookSizes.Of(scenario);
        TrimResult afloat = Trimming.Run(lure, water, stop);
        DesignPoint own = DesignPoint.Whole(lure, water, task, stop);
        var report = new DesignReport(
            scenario.Setup.Title, water, task, own, afloat, HookCarry.Run(lure, sizes, water, threads, stop), Tolerance.Run(own, sizes, water, task, threads, stop),
            BuilderChanges.Run(own, sizes, water, task, threads, stop));
        if (wish is null)
        {
            return report;
        }

        BallastAnswer answer = BallastSolver.Run(own, water, wish, stop);
        return Built(report with { Answer = answer }, answer.Chosen?.Point.Lure, stop);
    }

    /// <summary>The report with a lure to build: its margin and float.</summary>
    /// <param name="report">Report.</param>
    /// <param name="lure">Lure to build; null: none.</param>
    /// <param name="stop">Stops it.</param>
    public static DesignReport Built(DesignReport report, LureSpec? lure, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(report);
        return lure is null ? report : report with
        {
            After = DesignPoint.Whole(lure, report.Water, report.Task, stop),
            RestAfter = Trimming.Run(lure, report.Water, stop),
        };
    }
}
