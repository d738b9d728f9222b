using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;

namespace LureSim.Studies.Figures;

/// <summary>The summary of <c>cadence</c>. A figure that does not exist (nothing walks) is NaN: an empty cell.</summary>
/// <param name="plan">Search; each runs on one thread, since the runs around it use the others.</param>
public sealed class CadenceSource(CadencePlan plan) : FigureSource<CadenceResult>("cadence", "walks", CadenceFigures.All)
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
        CadenceResult result = CadenceStudy.Run(scenario.Spec!, plan with { Threads = 1 }, SustainedTorque.Of(scenario), null, null, stop);
        return Row(result.Windows.Count > 0 ? "walks" : "never walks", result);
    }
}
