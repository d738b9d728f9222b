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
        DesignReport report = WithChanges(Afloat(scenario, task, stop), scenario, threads, stop);
        report = report with { Hooks = HookCarry.Run(report.Own.Lure, HookSizes.Of(scenario), report.Water, threads, stop) };
        if (wish is null)
        {
            return report;
        }

        BallastAnswer answer = BallastSolver.Run(report.Own, report.Water, wish, stop);
        return Built(report with { Answer = answer }, answer.Chosen?.Point.Lure, stop);
    }

    /// <summary>How the lure floats and its margin, without hooks, errors and changes: a fortieth of the work.</summary>
    /// <param name="scenario">Scenario with a lure and water.</param>
    /// <param name="task">Tow and pull.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">The lure does not float; the message says why.</exception>
    /// <exception cref="Model.ModelException">No stable attitude was found.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignReport Afloat(ScenarioResult scenario, MarginTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        WaterState water = WaterModel.Evaluate(scenario.Setup!.Water);
        LureSpec lure = scenario.Setup.Lure;
        return new(scenario.Setup.Title, water, task, DesignPoint.Whole(lure, water, task, stop), Trimming.Run(lure, water, stop), [], null, []);
    }

    /// <summary>The report with what errors of building and changes do.</summary>
    /// <param name="report">Report.</param>
    /// <param name="scenario">Its scenario.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DesignReport WithChanges(DesignReport report, ScenarioResult scenario, int threads, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(report);
        var sizes = HookSizes.Of(scenario);
        return report with
        {
            Tolerance = Tolerance.Run(report.Own, sizes, report.Water, report.Task, threads, stop),
            Changes = BuilderChanges.Run(report.Own, sizes, report.Water, report.Task, threads, stop),
        };
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
