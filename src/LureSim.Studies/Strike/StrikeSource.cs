using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Strike;

/// <summary>The figures of <c>strike</c>, of one strike alone. One that does not exist (the points are never set) is NaN: an empty cell.</summary>
public sealed class StrikeSource() : FigureSource<StrikeResult>("strike", Activities.Strike, ["limit", "first_to_give"], StrikeFigures.All)
{
    // How the rod is held in a retrieve, what gears win, and how a lure sits in the water: nothing of it enters a strike.
    private static readonly KeySpec[] Unread =
    [
        AnglerKeys.RodElevation, AnglerKeys.RodBearing, AnglerKeys.PullTime, AnglerKeys.ReturnTime, AnglerKeys.ReturnShare, AnglerKeys.SustainedTorque,
        RodKeys.Damping, ReelKeys.Ratio, LeaderKeys.Knot,
    ];

    private static readonly KeySpec[] OfLure = [LureKeys.Mass, LureKeys.MassWithHooks, .. LureBuildKeys.OfMass, LureKeys.Hooks];

    // What moves with a hook that yields.
    private static readonly KeySpec[] OfMoving = [LureKeys.Mass, LureKeys.MassWithHooks, .. LureBuildKeys.OfMass, FishKeys.Mass, FishKeys.DragArea, FishKeys.Depth, CoverKeys.Grip, CoverKeys.Weed];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        FishWay way = scenario.Setup!.Fish.Way;
        return key.ReadBy.HasFlag(Activities.Strike) && !Unread.Contains(key) && (key.Table != LureKeys.Mass.Table || OfLure.Contains(key))
            && (way != FishWay.Fast || !OfMoving.Contains(key))
            && (key != FishKeys.Reaction || way == FishWay.Runs)
            && (key != FishKeys.Pull && key != FishKeys.Speed || way is FishWay.Runs or FishWay.Comes)
            && OverPlants(key, scenario.Setup.Cover);
    }

    // Line that crosses no plants feels none, plants that neither hold it nor turn it do nothing to it.
    private static bool OverPlants(KeySpec key, CoverSpec cover)
    {
        bool lies = cover.LineOverM > cover.OpeningM, holds = cover.DragNM > 0.0 || cover.TurnRadM * cover.LineFriction > 0.0;
        return key == CoverKeys.LineOver ? holds
            : key == CoverKeys.Opening ? holds && cover.LineOverM > 0.0
            : key == CoverKeys.Height ? holds && lies
            : key == CoverKeys.LineDrag ? lies
            : key == CoverKeys.LineTurn ? lies && cover.LineFriction > 0.0
            : key != CoverKeys.LineFriction || (lies && cover.TurnRadM > 0.0);
    }

    /// <summary>Strikes once.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">The rod tip is farther from the water than the strike's distance.</exception>
    public static Outcome<StrikeResult> Once(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return StrikeRun.Run(scenario.Setup!, scenario.Strike!, new(null, stop));
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        Outcome<StrikeResult> outcome = Once(scenario, stop);
        return outcome.IsWhole
            ? Row([StrikeFigures.Name(outcome.Result.Summary.Limit), StrikeFigures.Name(outcome.Result.Summary.FirstToGive.Place)], outcome.Result)
            : FigureRow.Failed(outcome.Failure.Reason);
    }
}
