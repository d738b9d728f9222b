using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;
using LureSim.Reports.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Cli.Sweeps;

/// <summary>The summary of <c>retrieve</c>.</summary>
public sealed class RetrieveFigures : IFigureSource
{
    /// <inheritdoc/>
    public string Name => "retrieve";

    /// <inheritdoc/>
    public Activities Asks => Activities.Retrieve;

    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } = ["pattern"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Numbers { get; } = [.. SummaryKeys.All.Select(k => k.Key)];

    /// <inheritdoc/>
    public IReadOnlyList<HeadlineFigure> Headlines { get; } =
        [new("glide_width_m", "glide per twitch", "cm", 100.0), new("advance_per_twitch_m", "advance per twitch", "cm", 100.0)];

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario) => !key.IsCastOnly;

    /// <inheritdoc/>
    public FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(scenario.Setup!, scenario.Retrieve!, new(null, stop));
        return outcome.IsWhole
            ? new(null, [SummaryKeys.Name(outcome.Result.Summary.Pattern)], [.. SummaryKeys.All.Select(k => k.Value(outcome.Result.Summary))])
            : FigureRow.Failed(outcome.Failure.Reason);
    }
}
