using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>retrieve</c>.</summary>
public sealed class RetrieveSource() : FigureSource<RetrieveSummary>("retrieve", "pattern", RetrieveFigures.All)
{
    /// <inheritdoc/>
    public override bool Reads(KeySpec key, ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(key);
        return !key.IsCastOnly;
    }

    /// <inheritdoc/>
    public override FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        RetrieveResult result = RetrieveRun.Execute(scenario.Spec!, null, stop);
        return result.Failure is string failure ? FigureRow.Failed(failure) : Row(RetrieveFigures.Name(result.Summary.Pattern), result.Summary);
    }
}
