using LureSim.Model.Assembly;

namespace LureSim.Model.Strike;

/// <summary>Rod and line at one moment, in the plane of the stroke: x from the hand's place at the start toward the fish, z square to it (up, or sideways for
/// a sweep), m.</summary>
/// <param name="Name">What moment it is.</param>
/// <param name="TimeS">t, s.</param>
/// <param name="HookForceN">Pull on the hook then, N.</param>
/// <param name="RodX">Joints of the rod from the hand to the tip, m.</param>
/// <param name="RodZ">Same, across.</param>
/// <param name="LineX">Nodes of the line from the tip to the hook, m.</param>
/// <param name="LineZ">Same, across.</param>
public sealed record StrikeMoment(
    StrikeMomentName Name, double TimeS, double HookForceN, ValueList<double> RodX, ValueList<double> RodZ, ValueList<double> LineX, ValueList<double> LineZ);

/// <summary>Moments that are kept.</summary>
public enum StrikeMomentName
{
    /// <summary>Before the hands move.</summary>
    Start,

    /// <summary>The line comes tight at the hook.</summary>
    Tight,

    /// <summary>The pull on the hook is largest.</summary>
    Peak,

    /// <summary>The hands only hold.</summary>
    Held,
}

/// <summary>One strike.</summary>
public sealed record StrikeResult
{
    /// <summary>Set-up.</summary>
    public required Setup Setup { get; init; }

    /// <summary>What was done with it.</summary>
    public required StrikeTask Task { get; init; }

    /// <summary>Figures.</summary>
    public required StrikeSummary Summary { get; init; }

    /// <summary>Channels over time; names as in files: time_s, hook_force_N, tip_force_N, reel_force_N, slip_m, slip_speed_m_s, rod_turn_deg, hand_torque_Nm,
    /// tip_travel_m, line_stretch_m, fish_way_m, fish_speed_m_s.</summary>
    public required Series Series { get; init; }

    /// <summary>Start, tight line, peak, held; those that came.</summary>
    public required ValueList<StrikeMoment> Moments { get; init; }

    /// <summary>Work of the numbers.</summary>
    public required SolverCounters Counters { get; init; }
}
