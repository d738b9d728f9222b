using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>retrieve</c>.</summary>
public sealed class RetrieveSource() : FigureSource<RetrieveSummary>("retrieve", "pattern", RetrieveFigures.All)
{
    // Of the rod's air drag and butt only a cast takes notice, of the strength of a line only its breaking; a clutch does nothing yet.
    private static readonly KeySpec[] Unread =
        [RodKeys.AirDrag, RodKeys.ButtDiameter, ReelKeys.Kind, ReelKeys.Drag, LineKeys.Set.Strength, LeaderKeys.Set.Strength];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario) => Enters(key, scenario);

    /// <summary>Whether a key enters a retrieve.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public static bool Enters(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(scenario);
        RetrieveSpec retrieve = scenario.Spec!.Retrieve;
        TakeUpMode mode = retrieve.IsTow ? TakeUpMode.Steady : retrieve.TakeUp;
        return !key.IsCastOnly && !Unread.Contains(key)
            && (key != RetrieveKeys.TakeUpSpeed || mode == TakeUpMode.Steady)
            && (key != RetrieveKeys.TakeUpPerTwitch || mode == TakeUpMode.PerTwitch);
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        RetrieveResult result = RetrieveRun.Execute(scenario.Spec!, null, stop);
        return result.Failure is string failure ? FigureRow.Failed(failure) : Row(RetrieveFigures.Name(result.Summary.Pattern), result.Summary);
    }
}
