namespace LureSim.Model.Cast;

/// <summary>Every number of a cast, in the order of the files.</summary>
public static class CastFigures
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<CastResult>> All { get; } =
    [
        new("distance_mean_m", "mean of many casts", "mean over the release error and the scatter, from under the hand", c => c.DistanceMeanM) { Headline = new("distance, mean of many casts", "m", 1.0) },
        new("distance_m", "without release error", "distance of the chosen release, from under the hand", c => c.DistanceM),
        new("distance_p10_m", "8 of 10 casts, from", "one cast in ten falls shorter", c => c.DistanceP10M),
        new("distance_p90_m", "8 of 10 casts, to", "one cast in ten flies farther", c => c.DistanceP90M),
        new("line_out_m", "line out", "line given at the splash", c => c.LineOutM),
        new("launch_speed_m_s", "launch speed", "speed of the lure as it is let go", c => c.LaunchSpeedMS) { Headline = new("launch speed", "m/s", 1.0) },
        new("launch_angle_deg", "launch angle", "its direction above the horizontal", c => c.LaunchAngleRad / Degree),
        new("flight_time_s", "flight time", "from the release to the splash", c => c.FlightTimeS),
        new("apex_m", "highest point", "highest point of the flight over the water", c => c.ApexM),
        new("release_time_s", "release", "time of the release from the start of the swing", c => c.ReleaseTimeS),
        new("release_angle_deg", "release, butt", "angle of the butt from the vertical at the release", c => c.ReleaseAngleRad / Degree),
        new("release_turn_rad_s", "release, turning", "turning speed of the butt at the release", c => c.ReleaseTurnRadS),
        new("start_angle_deg", "start, butt", "angle of the butt at the start of the swing", c => c.StartAngleRad / Degree),
        new("early_10ms_m", "10 ms early", "what a release 10 ms earlier adds to the distance", c => c.DistanceChangeM(-0.010)),
        new("late_10ms_m", "10 ms late", "what a release 10 ms later adds", c => c.DistanceChangeM(0.010)),
        new("rod_bend_share", "rod bend, largest", "largest bend of the tip over the length of the rod", c => c.PeakBendShare),
        new("rod_energy_J", "energy in the bend", "most energy stored in the bent rod", c => c.PeakBendEnergyJ),
        new("hand_torque_peak_Nm", "hand torque, peak", "highest torque of the hands", c => c.PeakHandTorqueNm),
        new("tension_peak_N", "tip pull, peak", "highest tension at the rod tip", c => c.PeakTensionN),
        new("loops_thrown", "loops thrown", "most loose line on the spool in loops", c => c.LoopsThrown),
        new("loops_mean", "loops, mean of many casts", "the same, mean over the release error", c => c.LoopsMean),
        new("tangle_share", "casts that tangle", "share of casts in which loose line tangles; the loops that a spool bears are a guess, 0.6 to 5", c => c.TangleShare),
        new("spool_peak_rpm", "spool, peak", "highest speed of the spool; 0 for a fixed one", c => c.SpoolPeakRpm),
        new("energy_hands_J", "work of the hands", "work of the hands until the splash", c => c.Energy.HandsJ),
        new("energy_rod_J", "energy left in the rod", "energy left in the rod", c => c.Energy.RodJ),
        new("energy_rod_damping_J", "rod damping", "energy lost in the rod", c => c.Energy.RodLossJ),
        new("energy_rod_air_J", "air on the rod", "energy lost to the air by the rod", c => c.Energy.RodAirJ),
        new("energy_lure_J", "energy of the lure", "energy of the lure at the splash", c => c.Energy.LureJ),
        new("energy_lure_air_J", "air on the lure", "energy lost to the air by the lure", c => c.Energy.LureAirJ),
        new("energy_line_J", "energy of the line", "energy of the line at the splash", c => c.Energy.LineJ),
        new("energy_line_air_J", "air on the line", "energy lost to the air by the line", c => c.Energy.LineAirJ),
        new("energy_spool_J", "energy of the spool", "energy of the spool at the splash", c => c.Energy.SpoolJ),
        new("energy_brakes_J", "brakes, thumb, friction", "energy lost in the reel", c => c.Energy.BrakesJ),
        new("energy_pick_up_J", "picking line up", "energy lost in bringing line to speed", c => c.Energy.PickUpJ),
        new("energy_residual", "open account", "what the account leaves open, over the work of the hands", c => c.Energy.Residual),
    ];

    /// <summary>What is odd about a cast, one word with hyphens each.</summary>
    /// <param name="remarks">Remarks.</param>
    public static IReadOnlyList<string> Names(CastRemarks remarks) => [.. Words.Where(w => remarks.HasFlag(w.Remark)).Select(w => w.Name)];

    private static readonly (CastRemarks Remark, string Name)[] Words =
    [
        (CastRemarks.LandsBehind, "lands-behind"),
        (CastRemarks.HitsWaterInSwing, "hits-water-in-swing"),
        (CastRemarks.AboveBreakingLoad, "above-breaking-load"),
        (CastRemarks.Backlash, "backlash"),
        (CastRemarks.StartRaised, "start-raised"),
        (CastRemarks.LineRunsOut, "line-runs-out"),
        (CastRemarks.BendBeyondRod, "bend-beyond-rod"),
    ];
}
