namespace LureSim.Model.Retrieve;

/// <summary>Every number of a retrieve, in the order of the files.</summary>
public static class RetrieveFigures
{
    /// <summary>All; the pattern comes apart, as text.</summary>
    public static IReadOnlyList<Figure<RetrieveSummary>> All { get; } =
    [
        new("flip_share", "changes of side", "share of twitches that end on the other side of the line than the one before", s => s.FlipShare),
        new("heading_swing_deg", "swing side to side", "median of highest minus lowest heading in a twitch, not wrapped", s => s.HeadingSwingDeg),
        new("glide_width_m", "glide per twitch", "mean travel across from one pull to the next; leaves out the arc between", s => s.GlideWidthM)
        {
            Headline = new("glide per twitch", "cm", 100.0),
        },
        new("width_m", "width of the path", "path of the centre of gravity, peak to peak across within a twitch, mean: what an onlooker sees", s => s.WidthM),
        new("nose_width_m", "width at the nose", "the same of the nose", s => s.NoseWidthM),
        new("sheer_deg", "sheer off the line", "mean size of the angle between nose and rod tip; on a steady pull the sheer angle", s => s.SheerDeg),
        new("away_share", "points away", "share of time with the nose more than 90 deg off the line", s => s.AwayShare),
        new("tow_speed_m_s", "steady pull", "speed of a steady pull; 0 when twitched", s => s.TowSpeedMS),
        new("advance_per_twitch_m", "advance per twitch", "mean travel along, from one pull to the next", s => s.AdvancePerTwitchM)
        {
            Headline = new("advance per twitch", "cm", 100.0),
        },
        new("regularity", "regularity", "1 - spread of the swing over its mean", s => s.Regularity),
        new("slack_share", "line slack at the nose", "share of time under 0.02 N at the nose", s => s.SlackShare),
        new("mean_slack_m", "mean slack", "mean of unstretched line out minus straight distance", s => s.MeanSlackM),
        new("pull_reach", "pull reach", "advance over rigid stroke; 0 on a steady pull", s => s.PullReach),
        new("pull_impulse_Ns", "pull", "integral of the nose's tension per twitch, mean", s => s.PullImpulseNs),
        new("nose_tension_peak_N", "nose pull, peak", "highest 5 ms mean of the tension at the nose", s => s.NoseTensionPeakN),
        new("line_drag_mean_N", "line drag, mean", "resultant of water and air forces on the line, mean over time", s => s.LineDragMeanN),
        new("line_drag_peak_N", "line drag, peak", "its highest 5 ms mean", s => s.LineDragPeakN),
        new("nose_down_load_N", "load down on the nose", "mean downward pull of line and leader on the nose", s => s.NoseDownLoadN),
        new("nose_dip_m", "deepest nose dip", "deepest dip of the line tie below its height at rest", s => s.NoseDipM),
        new("rest_trim_deg", "trim at rest", "axis over the horizontal at rest, nose up positive", s => s.RestTrimDeg),
        new("pitch_mean_deg", "pitch, mean", "axis over the horizontal, nose up positive, mean over time", s => s.PitchMeanDeg),
        new("pitch_low_deg", "pitch, lowest", "its lowest value", s => s.PitchLowDeg),
        new("pitch_high_deg", "pitch, highest", "its highest value", s => s.PitchHighDeg),
        new("roll_typical_deg", "roll, typical", "size of the roll, exceeded half of the time", s => s.RollTypicalDeg),
        new("roll_peak_deg", "roll, largest", "largest size of the roll", s => s.RollPeakDeg),
        new("belly_up_share", "belly up", "share of time with more than 90 deg of roll", s => s.BellyUpShare),
        new("nose_under_share", "nose under water", "share of time with the foremost point of the axis under water", s => s.NoseUnderShare),
        new("under_share", "all under water", "share of time with all of the hull under water", s => s.UnderShare),
        new("dip_m", "deepest dip", "deepest dip of the centre of gravity below its height at rest", s => s.DipM),
        new("hooked_share", "line over a hook", "share of twitches in which the taut line passes within reach of a hook", s => s.HookedShare),
        new("line_sag_m", "line sag", "lowest point of the line under the straight line from tip to tie, mean over time", s => s.LineSagM),
        new("wetted_line_m", "line in the water", "mean length of line in the water; a floating line counts by the share of it that is wet", s => s.WettedLineM),
        new("tip_force_peak_N", "rod tip pull, peak", "highest 5 ms mean of the tension at the rod tip", s => s.TipForcePeakN),
        new("loaded_tip_travel_m", "loaded tip travel", "mean travel of the bent tip in a twitch", s => s.LoadedTipTravelM),
        new("rod_bend_share", "rod bend, largest", "largest bend of the tip from the straight rod over free length", s => s.RodBendShare),
        new("water_stir_W", "water stirred", "mean power the hull puts into the water", s => s.WaterStirW),
        new("handle_turns_per_s", "reel handle", "mean handle turns per second", s => s.HandleTurnsPerS),
        new("drag_slip_m", "drag slipped", "line that slipped through the drag in the whole run", s => s.DragSlipM),
        new("wrist_torque_peak_Nm", "wrist torque, peak", "highest torque of the hand in the stroke plane", s => s.WristTorquePeakNm),
        new("wrist_torque_rms_Nm", "wrist torque, rms", "its root mean square", s => s.WristTorqueRmsNm),
        new("twitches_counted", "twitches counted", "twitches after warm-up", s => s.TwitchesCounted),
        new("end_distance_m", "distance at the end", "straight distance from tip to tie at the end", s => s.EndDistanceM),
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
        WalkPattern.Diving => "diving",
        WalkPattern.RolledOver => "rolled-over",
        WalkPattern.Standing => "standing",
        WalkPattern.Fouling => "fouling",
        _ => "irregular",
    };
}
