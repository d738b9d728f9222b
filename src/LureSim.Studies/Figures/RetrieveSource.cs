using LureSim.Model;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>retrieve</c>.</summary>
public sealed class RetrieveSource() : FigureSource<RetrieveSummary>("retrieve", Activities.Retrieve, ["pattern"], RetrieveFigures.All)
{
    // Of the rod's air drag and butt only a cast takes notice, of the strength of a line only its breaking.
    private static readonly KeySpec[] Unread = [RodKeys.AirDrag, RodKeys.ButtDiameter, LineKeys.Set.Strength, LeaderKeys.Set.Strength];

    // A spool turns in a retrieve only when the drag slips.
    private static readonly KeySpec[] OfSlip =
        [ReelKeys.Kind, ReelKeys.DragStart, ReelKeys.RingFriction, SpoolKeys.SpoolInertia, SpoolKeys.LineOnSpool, SpoolKeys.SpoolWidth, SpoolKeys.SpoolPacking];

    private static readonly KeySpec[] OfGathering =
        [RetrieveKeys.GatherLag, RetrieveKeys.GatherGain, RetrieveKeys.GatherReset, RetrieveKeys.GatherFastest];

    private static readonly KeySpec[] OfPlants = [CoverKeys.LineDrag, CoverKeys.LineTurn, CoverKeys.LineFriction, CoverKeys.Height, CoverKeys.Opening];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario) => Enters(key, scenario);

    /// <inheritdoc/>
    public override bool Draws(KeySpec key, ScenarioResult scenario) => Moves(key, scenario);

    /// <summary>Whether a key moves the result of a retrieve: a drag that holds does not.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public static bool Moves(KeySpec key, ScenarioResult scenario) => Enters(key, scenario) && IsNoHeldDrag(key, scenario);

    /// <summary>False for a drag that holds.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    internal static bool IsNoHeldDrag(KeySpec key, ScenarioResult scenario) => key != ReelKeys.Drag || MaySlip(scenario);

    /// <summary>Whether a key enters a retrieve.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public static bool Enters(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        RetrieveTask retrieve = scenario.Retrieve!;
        TakeUpMode mode = retrieve.IsTow ? TakeUpMode.Steady : retrieve.TakeUp.Mode;
        return (key.ReadBy & Activities.Retrieve) != 0 && !Unread.Contains(key)
            && (!OfPlants.Contains(key) || scenario.Setup!.Cover.LineOverM > 0.0)
            && WindsWith(key, mode)
            && TurnsWith(key, scenario);
    }

    /// <summary>Whether a key of the hand at the reel enters: each way to work it has keys of its own.</summary>
    /// <param name="key">Key, of any table.</param>
    /// <param name="mode">How the reel is worked.</param>
    internal static bool WindsWith(KeySpec key, TakeUpMode mode) =>
        (key != RetrieveKeys.TakeUpSpeed || mode == TakeUpMode.Steady)
        && (!OfGathering.Contains(key) || mode == TakeUpMode.Gather)
        && (key != RetrieveKeys.TakeUpPerTwitch || mode == TakeUpMode.PerTwitch);

    /// <summary>Whether a key of reel or spool enters where a lure is twitched: those of a turning spool do where the drag may slip.</summary>
    /// <param name="key">Key, of any table.</param>
    /// <param name="scenario">Valid scenario.</param>
    internal static bool TurnsWith(KeySpec key, ScenarioResult scenario) => !OfSlip.Contains(key) || MaySlip(scenario);

    // No retrieve pulls with what people set a drag to at least (docs/reel.md has the highest pulls).
    private static bool MaySlip(ScenarioResult scenario) => scenario.Setup!.Reel.DragN < ReelKeys.Drag.GuessLow;

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(scenario.Setup!, scenario.Retrieve!, new(null, stop));
        return outcome.IsWhole
            ? Row([RetrieveFigures.Name(outcome.Result.Summary.Pattern)], outcome.Result.Summary)
            : FigureRow.Failed(outcome.Failure.Reason);
    }
}
