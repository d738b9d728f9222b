using LureSim.Model;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>retrieve</c>.</summary>
public sealed class RetrieveSource() : FigureSource<RetrieveSummary>("retrieve", Activities.Retrieve, "pattern", RetrieveFigures.All)
{
    // Of the rod's air drag and butt only a cast takes notice, of the strength of a line only its breaking; a clutch does nothing yet.
    private static readonly KeySpec[] Unread =
        [RodKeys.AirDrag, RodKeys.ButtDiameter, ReelKeys.Kind, ReelKeys.Drag, LineKeys.Set.Strength, LeaderKeys.Set.Strength];

    private static readonly KeySpec[] OfGathering =
        [RetrieveKeys.GatherLag, RetrieveKeys.GatherGain, RetrieveKeys.GatherReset, RetrieveKeys.GatherFastest];

    private static readonly KeySpec[] OfPlants = [CoverKeys.LineDrag, CoverKeys.LineTurn, CoverKeys.LineFriction, CoverKeys.Height, CoverKeys.Opening];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario) => Enters(key, scenario);

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
            && (key != RetrieveKeys.TakeUpSpeed || mode == TakeUpMode.Steady)
            && (!OfGathering.Contains(key) || mode == TakeUpMode.Gather)
            && (key != RetrieveKeys.TakeUpPerTwitch || mode == TakeUpMode.PerTwitch);
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(scenario.Setup!, scenario.Retrieve!, new(null, stop));
        return outcome.IsWhole
            ? Row(RetrieveFigures.Name(outcome.Result.Summary.Pattern), outcome.Result.Summary)
            : FigureRow.Failed(outcome.Failure.Reason);
    }
}
