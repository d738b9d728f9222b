using LureSim.Model.Retrieve;

namespace LureSim.Reports.Retrieve;

/// <summary>One number of the summary under its name in files.</summary>
/// <param name="Key">Snake case, unit at the end.</param>
/// <param name="Value">Reads it.</param>
public sealed record SummaryKey(string Key, Func<RetrieveSummary, double> Value);

/// <summary>Names of all numbers of a retrieve summary, in the order of the files.</summary>
public static class SummaryKeys
{
    /// <summary>Every number; the pattern comes apart, as text.</summary>
    public static IReadOnlyList<SummaryKey> All { get; } =
    [
        new("flip_share", s => s.FlipShare),
        new("heading_swing_deg", s => s.HeadingSwingDeg),
        new("glide_width_m", s => s.GlideWidthM),
        new("width_m", s => s.WidthM),
        new("nose_width_m", s => s.NoseWidthM),
        new("sheer_deg", s => s.SheerDeg),
        new("away_share", s => s.AwayShare),
        new("tow_speed_m_s", s => s.TowSpeedMS),
        new("advance_per_twitch_m", s => s.AdvancePerTwitchM),
        new("regularity", s => s.Regularity),
        new("slack_share", s => s.SlackShare),
        new("mean_slack_m", s => s.MeanSlackM),
        new("pull_reach", s => s.PullReach),
        new("pull_impulse_Ns", s => s.PullImpulseNs),
        new("nose_tension_peak_N", s => s.NoseTensionPeakN),
        new("line_drag_mean_N", s => s.LineDragMeanN),
        new("line_drag_peak_N", s => s.LineDragPeakN),
        new("nose_down_load_N", s => s.NoseDownLoadN),
        new("nose_dip_m", s => s.NoseDipM),
        new("line_sag_m", s => s.LineSagM),
        new("wetted_line_m", s => s.WettedLineM),
        new("tip_force_peak_N", s => s.TipForcePeakN),
        new("loaded_tip_travel_m", s => s.LoadedTipTravelM),
        new("rod_bend_share", s => s.RodBendShare),
        new("water_stir_W", s => s.WaterStirW),
        new("handle_turns_per_s", s => s.HandleTurnsPerS),
        new("wrist_torque_peak_Nm", s => s.WristTorquePeakNm),
        new("wrist_torque_rms_Nm", s => s.WristTorqueRmsNm),
        new("twitches_counted", s => s.TwitchesCounted),
        new("end_distance_m", s => s.EndDistanceM),
    ];

    /// <summary>The pattern's name in files and sentences.</summary>
    /// <param name="pattern">Pattern.</param>
    public static string Name(WalkPattern pattern) => pattern switch
    {
        WalkPattern.Alternating => "alternating",
        WalkPattern.Turning => "on-the-spot",
        WalkPattern.Skipping => "skipping",
        WalkPattern.OneSided => "one-sided",
        WalkPattern.Tracking => "tracking",
        WalkPattern.Spinning => "spinning",
        WalkPattern.Still => "still",
        _ => "irregular",
    };
}
