using LureSim.Cli.Commands;
using LureSim.Reports.Doubt;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Sweeps;

/// <summary>The summary of <c>cadence</c>. A figure that does not exist (nothing walks) is NaN: an empty cell.</summary>
/// <param name="plan">Search; each runs on one thread, since the runs around it use the others.</param>
public sealed class CadenceFigures(CadencePlan plan) : IFigureSource
{
    private static readonly (string Key, Func<CadenceResult, double?> Value)[] Figures =
    [
        ("window_from_per_s", r => Window(r)?.FromPerS),
        ("window_to_per_s", r => Window(r)?.ToPerS),
        ("windows", r => r.Windows.Count),
        ("best_per_s", r => r.BestPoint?.PerS),
        ("best_glide_m", r => r.BestPoint?.Median(o => o.GlideM)),
        ("best_swing_deg", r => r.BestPoint?.Median(o => o.SwingDeg)),
        ("best_regularity", r => r.BestPoint?.Median(o => o.Regularity)),
        ("best_pull_reach", r => r.BestPoint?.Median(o => o.PullReach)),
        ("best_wrist_torque_rms_Nm", r => r.BestPoint?.Median(o => o.WristRmsNm)),
        ("widest_glide_m", r => r.Widest?.Median(o => o.GlideM)),
        ("widest_per_s", r => r.Widest?.PerS),
        ("most_regular_per_s", r => r.MostRegular?.PerS),
        ("sustainable_to_per_s", r => r.Wrist.Likely.ToPerS),
        ("lock_share", r => r.LockShare),
        ("tip_frequency_Hz", r => r.TipFrequencyHz),
    ];

    /// <inheritdoc/>
    public string Name => "cadence";

    /// <inheritdoc/>
    public Activities Asks => Activities.Retrieve;

    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } = ["walks"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Numbers { get; } = [.. Figures.Select(f => f.Key)];

    /// <inheritdoc/>
    public IReadOnlyList<HeadlineFigure> Headlines { get; } =
    [
        new("widest_glide_m", "widest glide", "cm", 100.0),
        new("best_per_s", "best rhythm", "/s", 1.0),
        new("window_to_per_s", "fastest rhythm that walks", "/s", 1.0),
    ];

    /// <inheritdoc/>
    public bool Reads(KeySpec key, ScenarioResult scenario) => !key.IsCastOnly;

    /// <inheritdoc/>
    public FigureRow Run(ScenarioResult scenario, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        CadenceResult result = CadenceStudy.Run(scenario.Setup!, scenario.Retrieve!, plan with { Threads = 1 }, CadenceCommand.Torque(scenario), null, null, stop);
        return new(null, [result.Windows.Count > 0 ? "walks" : "never walks"], [.. Figures.Select(f => f.Value(result) ?? double.NaN)]);
    }

    // The window of the best rhythm.
    private static CadenceWindow? Window(CadenceResult result) => result.Best is BestRhythm best ? result.Windows.FirstOrDefault(w => w.Contains(best.PerS)) : null;
}
