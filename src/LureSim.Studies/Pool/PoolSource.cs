using LureSim.Model;
using LureSim.Model.Media;
using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Pool;

/// <summary>The figures of <c>pool</c>. One that does not exist (it never turns, it does not swing) is NaN: an empty cell.</summary>
public sealed class PoolSource() : FigureSource<PoolResult>("pool", Activities.Pool, ["course"], PoolFigures.All)
{
    // What the film of the water does to a line, and a lure in the air, are nothing to a hull in the water.
    private static readonly KeySpec[] Unread = [WaterKeys.ContactHeight, .. FlightKeys.All];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Table is "lure" or "water" or "pool" && !Unread.Contains(key);
    }

    /// <summary>Takes the lure of a scenario to its pool.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="stop">Stops it.</param>
    public static Outcome<PoolResult> InPool(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return PoolRun.Run(scenario.Setup!.Lure, WaterModel.Evaluate(scenario.Setup.Water), scenario.Pool!, stop);
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        Outcome<PoolResult> outcome = InPool(scenario, stop);
        return outcome.IsWhole ? Row([PoolFigures.Name(outcome.Result.Course)], outcome.Result) : FigureRow.Failed(outcome.Failure.Reason);
    }
}
