using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Cadence;

/// <summary>Every number of a search over rhythm, in the order of the files. One that does not exist (nothing walks) is null.</summary>
public static class CadenceFigures
{
    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<CadenceResult>> All { get; } =
    [
        new("window_from_per_s", "window, slow edge", "slow edge of the window that holds the best rhythm", r => Window(r)?.FromPerS),
        new("window_to_per_s", "window, fast edge", "its fast edge", r => Window(r)?.ToPerS) { Headline = new("fastest rhythm that walks", "/s", 1.0) },
        new("windows", "windows", "number of windows", r => r.Windows.Count),
        new("best_per_s", "best rhythm", "rhythm with the widest glide that keeps room to the edges of its window", r => r.BestPoint?.PerS) { Headline = new("best rhythm", "/s", 1.0) },
        Best("best_glide_m", "glide there", "glide_width_m"),
        Best("best_swing_deg", "swing there", "heading_swing_deg"),
        Best("best_regularity", "regularity there", "regularity"),
        Best("best_pull_reach", "pull reach there", "pull_reach"),
        Best("best_wrist_torque_rms_Nm", "wrist torque there", "wrist_torque_rms_Nm"),
        Best("best_nose_down_load_N", "load on the nose there", "nose_down_load_N"),
        Best("best_nose_dip_m", "dip of the nose there", "nose_dip_m"),
        new("widest_glide_m", "widest glide", "widest glide anywhere in a window", r => r.Widest?.Median(s => s.GlideWidthM)) { Headline = new("widest glide", "cm", 100.0) },
        new("widest_per_s", "at the rhythm", "rhythm of the widest glide", r => r.Widest?.PerS),
        new("narrowest_glide_above_best_m", "narrowest glide above", "narrowest glide in a window above the best rhythm", r => r.NarrowestAboveBest?.Median(s => s.GlideWidthM)),
        new("narrowest_above_best_per_s", "at the rhythm", "its rhythm", r => r.NarrowestAboveBest?.PerS),
        new("most_regular", "most regular", "regularity of the most regular rhythm that walks", r => r.MostRegular?.Median(s => s.Regularity)),
        new("most_regular_per_s", "at the rhythm", "its rhythm", r => r.MostRegular?.PerS),
        new("sustainable_to_per_s", "wrist keeps up to", "fastest rhythm that the wrist keeps up", r => Finite(r.Wrist.Likely.ToPerS)),
        new("sustainable_to_low_per_s", "weak wrist", "the same at the lower end of what a wrist sustains", r => Finite(r.Wrist.Weak.ToPerS)),
        new("sustainable_to_high_per_s", "strong wrist", "the same at its upper end", r => Finite(r.Wrist.Strong.ToPerS)),
        new("lock_share", "starts that lock", "share of starts that alternate at the best rhythm", r => r.LockShare),
        new("tip_frequency_Hz", "free rod tip", "swings a second of the free rod tip", r => r.TipFrequencyHz),
    ];

    private static Figure<CadenceResult> Best(string key, string label, string figure)
    {
        Figure<RetrieveSummary> of = RetrieveFigures.All.First(f => f.Key == figure);
        return new(key, label, $"{of.Meaning}; median over the starts at the best rhythm", r => r.BestPoint?.Median(of.Of));
    }

    // A wrist that cannot keep up even the slowest rhythm has no limit.
    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    // The window of the best rhythm.
    private static CadenceWindow? Window(CadenceResult result) => result.Best is BestRhythm best ? result.Windows.FirstOrDefault(w => w.Contains(best.PerS)) : null;
}
