using LureSim.Model;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>cadence</c>. A figure that does not exist (nothing walks) is NaN: an empty cell.</summary>
/// <param name="plan">Search; each runs on one thread, since the runs around it use the others.</param>
public sealed class CadenceSource(CadencePlan plan) : FigureSource<CadenceResult>("cadence", Activities.Retrieve, ["walks"], CadenceFigures.All)
{
    // The search sets mesh, length and starts of its runs itself, holds the distance and counts no turns of the handle.
    private static readonly KeySpec[] Unread =
    [
        ReelKeys.Ratio, ReelKeys.SpoolDiameter, ReelKeys.TakeUp, RetrieveKeys.Duration, RetrieveKeys.HoldDistance, RetrieveKeys.StartHeading,
        RetrieveKeys.StartSideways, RetrieveKeys.WarmUp, SolverKeys.Nodes, SolverKeys.Step,
    ];

    /// <inheritdoc/>
    public override bool IsStudy => true;

    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario) => !Unread.Contains(key) && RetrieveSource.Enters(key, scenario);

    /// <inheritdoc/>
    public override bool Draws(KeySpec key, ScenarioResult scenario) => Reads(key, scenario) && RetrieveSource.Moves(key, scenario);

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (scenario.Retrieve!.IsTow)
        {
            return FigureRow.Failed("a steady pull has no rhythm");
        }

        Outcome<CadenceResult> outcome =
            CadenceStudy.Run(scenario.Setup!, scenario.Retrieve, plan with { Threads = 1 }, SustainedTorque.Of(scenario), null, null, stop);
        return outcome.IsWhole ? Row([outcome.Result.Windows.Count > 0 ? "walks" : "never walks"], outcome.Result) : FigureRow.Failed(outcome.Failure.Reason);
    }
}
