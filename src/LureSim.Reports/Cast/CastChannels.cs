using LureSim.Model;
using LureSim.Model.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The recorded series of a cast as tables.</summary>
public static class CastChannels
{
    private const double Degree = Math.PI / 180.0, PerMinute = 30.0 / Math.PI;

    /// <summary>Everything over time, from the start of the swing to the splash.</summary>
    /// <param name="result">Cast.</param>
    public static Series OverTime(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CastSeries s = result.Series;
        return new(
        [
            new("time_s", "s", "time from the start of the swing", s.TimeS),
            new("butt_angle_deg", "deg", "butt from the vertical, forward positive", Scaled(s.ButtRad, 1.0 / Degree)),
            new("hand_torque_Nm", "N m", "torque of the hands", s.HandTorqueNm),
            new("tip_speed_m_s", "m/s", "speed of the rod tip", s.TipSpeedMS),
            new("lure_x_m", "m", "lure forward of the hand's place at the start", s.LureXM),
            new("lure_z_m", "m", "lure over the water", s.LureZM),
            new("lure_speed_m_s", "m/s", "speed of the lure", s.LureSpeedMS),
            new("line_speed_m_s", "m/s", "rate at which the distance from tip to lure grows", s.LineSpeedMS),
            new("spool_speed_m_s", "m/s", "speed at which the reel gives line", s.SpoolSpeedMS),
            new("spool_rpm", "rev/min", "turning speed of the spool, 0 for a fixed one", Scaled(s.SpinRadS, PerMinute)),
            new("tip_tension_N", "N", "tension at the rod tip", s.TensionN),
            new("loose_line_m", "m", "line that lies loose", s.LooseM),
            new("loops", "-", "loose line in loops on the spool", [.. s.LooseM.Zip(s.LoopM, (loose, loop) => loose / loop)]),
        ]);
    }

    /// <summary>Distance against the moment of release.</summary>
    /// <param name="result">Cast.</param>
    public static Series OverRelease(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        ValueList<double> delay = [.. result.ReleaseCurve.Select(p => p.DelayS)], change = [.. result.ReleaseCurve.Select(p => p.ChangeM)];
        return new(
        [
            new("release_time_s", "s", "release from the start of the swing", [.. delay.Select(d => result.ReleaseTimeS + d)]),
            new("later_ms", "ms", "later than the release of this cast", Scaled(delay, 1e3)),
            new("distance_m", "m", "distance", [.. change.Select(c => result.DistanceM + c)]),
            new("loops", "-", "most loose line, in loops on the spool", [.. result.ReleaseCurve.Select(p => p.Loops)]),
        ]);
    }

    private static ValueList<double> Scaled(ValueList<double> values, double by) => [.. values.Select(v => v * by)];
}
