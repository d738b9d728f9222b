using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Figures;

/// <summary>The summary of a twitched retrieve that holds its distance and ends when its walk has settled, as a search over rhythm counts it: a hand takes ten
/// seconds and more to find its slack, and before that a walk is not yet that of its rhythm (docs/cadence.md).</summary>
public sealed class SettledRetrieveSource() : FigureSource<RetrieveSummary>("settled retrieve", Activities.Retrieve, ["pattern"], RetrieveFigures.All)
{
    private static readonly KeySpec[] OfLength = [RetrieveKeys.HoldDistance, RetrieveKeys.Duration, RetrieveKeys.WarmUp];

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario) => !OfLength.Contains(key) && RetrieveSource.Enters(key, scenario);

    /// <inheritdoc/>
    public override bool Draws(KeySpec key, ScenarioResult scenario) => !OfLength.Contains(key) && RetrieveSource.Moves(key, scenario);

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        StationaryOutcome settled = StationaryOutcome.Of(scenario.Setup!, StationaryRun.Make(scenario.Retrieve!), stop);
        return settled.Summary is RetrieveSummary summary ? Row([RetrieveFigures.Name(summary.Pattern)], summary) : FigureRow.Failed(settled.Failure!);
    }
}
