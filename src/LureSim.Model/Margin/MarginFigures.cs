namespace LureSim.Model.Margin;

/// <summary>Every number of a walk margin, in the order of the files.</summary>
public static class MarginFigures
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>All. What does not exist (no straight tow, no critical value, it never points along the line) is none.</summary>
    public static IReadOnlyList<Figure<MarginResult>> All { get; } =
    [
        new("rest_trim_deg", "trim at rest", "angle of the axis over the water at rest, nose up positive", m => m.RestTrimRad / Degree),
        new("tow_trim_deg", "trim when towed", "angle of the axis over the water in the straight tow, nose up positive", m => m.Tow?.TrimRad / Degree),
        new("tow_pull_N", "pull of the tow", "tension of the line in the straight tow", m => m.Tow?.PullN),
        new("tow_growth_per_s", "straight tow left at", "largest real part of the roots of the straight tow: above 0 an error grows, below 0 it dies", m => m.GrowthPerS)
        {
            Headline = new("growth of an error in the straight tow", "1/s", 1.0),
        },
        new("tow_swing_rad_s", "from side to side at", "imaginary part of that root: 0 leaves to one side", m => m.Tow?.Modes[0].SwingRadS),
        new("critical_shedding", "critical side force", "least share of cross-flow shed at the stern from which the straight tow is kept", m => m.CriticalShedding)
        {
            Headline = new("critical side force, chi", "", 1.0),
        },
        new("shedding_margin", "side force over critical", "chi less its critical value: above 0 it comes straight on a tight line", m => m.SheddingMargin),
        new("pull_turn_deg", "turn at one pull", "how far the heading turns at one pull, toward the line and past it", m => m.Pull.TurnDeg) { Headline = new("turn at one pull", "deg", 1.0) },
        new("pull_past_deg", "past the line", "how far it points past the line to the other side after one pull; negative where it falls short", m => m.Pull.PastDeg),
        new("pull_turn_time_s", "time to point along the line", "time from the start of the pull until it points along the line", m => m.Pull.TurnTimeS),
        new("pull_glide_m", "glide at one pull", "way of the centre of gravity across the line in the time watched", m => m.Pull.GlideM),
        new("pull_advance_m", "advance at one pull", "way of the centre of gravity along the line in the time watched", m => m.Pull.AdvanceM),
        new("pull_roll_deg", "roll at one pull", "largest roll from rest", m => m.Pull.RollDeg),
        new("pull_nose_m", "nose at its lowest", "lowest height of the foremost point of the axis over the water; negative under it", m => m.Pull.LowestNoseM),
    ];
}
