using LureSim.Model.Cast;

namespace LureSim.Reports.Cast;

/// <summary>One number of a cast under its name in files.</summary>
/// <param name="Key">Snake case, unit at the end.</param>
/// <param name="Value">Reads it.</param>
public sealed record CastOutput(string Key, Func<CastResult, double> Value);

/// <summary>Names of all numbers of a cast, in the order of the files.</summary>
public static class CastOutputs
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Every number.</summary>
    public static IReadOnlyList<CastOutput> All { get; } =
    [
        new("distance_m", c => c.DistanceM),
        new("distance_mean_m", c => c.DistanceMeanM),
        new("distance_p10_m", c => c.DistanceP10M),
        new("distance_p90_m", c => c.DistanceP90M),
        new("line_out_m", c => c.LineOutM),
        new("launch_speed_m_s", c => c.LaunchSpeedMS),
        new("launch_angle_deg", c => c.LaunchAngleRad / Degree),
        new("flight_time_s", c => c.FlightTimeS),
        new("apex_m", c => c.ApexM),
        new("release_time_s", c => c.ReleaseTimeS),
        new("release_angle_deg", c => c.ReleaseAngleRad / Degree),
        new("release_turn_rad_s", c => c.ReleaseTurnRadS),
        new("start_angle_deg", c => c.StartAngleRad / Degree),
        new("early_10ms_m", c => c.DistanceChangeM(-0.010)),
        new("late_10ms_m", c => c.DistanceChangeM(0.010)),
        new("rod_bend_share", c => c.PeakBendShare),
        new("rod_energy_J", c => c.PeakBendEnergyJ),
        new("hand_torque_peak_Nm", c => c.PeakHandTorqueNm),
        new("tension_peak_N", c => c.PeakTensionN),
        new("loops_thrown", c => c.LoopsThrown),
        new("spool_peak_rpm", c => c.SpoolPeakRpm),
        new("energy_hands_J", c => c.Energy.HandsJ),
        new("energy_rod_J", c => c.Energy.RodJ),
        new("energy_rod_damping_J", c => c.Energy.RodLossJ),
        new("energy_rod_air_J", c => c.Energy.RodAirJ),
        new("energy_lure_J", c => c.Energy.LureJ),
        new("energy_lure_air_J", c => c.Energy.LureAirJ),
        new("energy_line_J", c => c.Energy.LineJ),
        new("energy_line_air_J", c => c.Energy.LineAirJ),
        new("energy_spool_J", c => c.Energy.SpoolJ),
        new("energy_brakes_J", c => c.Energy.BrakesJ),
        new("energy_pick_up_J", c => c.Energy.PickUpJ),
        new("energy_residual", c => c.Energy.Residual),
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
    ];
}
