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
        RetrieveResult result = RetrieveRun.Execute(scenario.Spec!, null, stop);
        return result.Failure is string failure
            ? FigureRow.Failed(failure)
            : new(null, [SummaryKeys.Name(result.Summary.Pattern)], [.. SummaryKeys.All.Select(k => k.Value(result.Summary))]);
    }
}
