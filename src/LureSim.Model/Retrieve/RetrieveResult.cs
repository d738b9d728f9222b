using LureSim.Model.Assembly;
using LureSim.Model.Lures;

namespace LureSim.Model.Retrieve;

/// <summary>Rod, line and lure at one instant. World axes: x from the resting rod tip toward the cast, y to the angler's left,
/// z up from the water, m.</summary>
/// <param name="TimeS">t, s.</param>
/// <param name="Label">Why this instant, in words: the hardest pull, the most slack, the end of the twitch.</param>
/// <param name="Line">Nodes tip to tie, [3][N+1].</param>
/// <param name="Rod">Points hand to tip, [3][links+1].</param>
/// <param name="LureXM">Centre of gravity.</param>
/// <param name="LureYM">Centre of gravity.</param>
/// <param name="HeadingRad">psi, nose from +x counter-clockwise.</param>
public sealed record Snapshot(
    double TimeS, string Label, ValueList<ValueList<double>> Line, ValueList<ValueList<double>> Rod, double LureXM, double LureYM, double HeadingRad)
{
    /// <summary>Centre of gravity over the water, m.</summary>
    public double LureZM { get; init; }

    /// <summary>theta, axis over the horizontal, nose up positive, rad.</summary>
    public double PitchRad { get; init; }

    /// <summary>phi, turn about the axis, left side up positive, rad.</summary>
    public double RollRad { get; init; }
}

/// <summary>What one twitch did, sampled just before the next pull.</summary>
/// <param name="StartS">Time of the pull, s.</param>
/// <param name="EndHeadingRad">e_k: heading minus bearing of the rod tip from the hull, wrapped, just before the next pull, rad.</param>
/// <param name="SwingRad">Highest minus lowest unwrapped heading in the twitch, rad.</param>
/// <param name="ImpulseNs">Integral of the tension at the nose, N s.</param>
/// <param name="AdvanceM">Hull travel toward the rod, m.</param>
/// <param name="SidewaysM">Hull travel across the line, signed, m.</param>
/// <param name="BackCrossings">Times the heading passed "pointing away from the rod".</param>
public sealed record TwitchRecord(
    double StartS, double EndHeadingRad, double SwingRad, double ImpulseNs, double AdvanceM, double SidewaysM, int BackCrossings)
{
    /// <summary>Farthest left less farthest right of the centre of gravity within the twitch, m.</summary>
    public double WidthM { get; init; }

    /// <summary>The same of the nose, m.</summary>
    public double NoseWidthM { get; init; }

    /// <summary>Shortest distance of the taut line from the hanger of a hook, m; infinite where no line was taut.</summary>
    public double HookClearanceM { get; init; } = double.PositiveInfinity;
}

/// <summary>How the lure answers the rhythm. Thresholds: the pattern finder.</summary>
public enum WalkPattern
{
    /// <summary>Each twitch turns it to the other side, and it travels sideways far enough to be seen.</summary>
    Alternating,

    /// <summary>Each twitch turns it to the other side, but it turns on the spot.</summary>
    Turning,

    /// <summary>Some twitches are lost in slack.</summary>
    Skipping,

    /// <summary>It keeps to one side of the line.</summary>
    OneSided,

    /// <summary>Towed, no real turn.</summary>
    Tracking,

    /// <summary>Turns over its line.</summary>
    Spinning,

    /// <summary>Pulls do not reach it.</summary>
    Still,

    /// <summary>It stays under water.</summary>
    Diving,

    /// <summary>It lies on its back.</summary>
    RolledOver,

    /// <summary>It stands on its tail.</summary>
    Standing,

    /// <summary>Its line is pulled over a hook.</summary>
    Fouling,

    /// <summary>None of the others.</summary>
    Irregular,
}

/// <summary>A finished (or stopped) retrieve.</summary>
/// <param name="Setup">Set-up.</param>
/// <param name="Task">What was done with it.</param>
/// <param name="Hull">Hull used, for pictures.</param>
/// <param name="Series">Channels.</param>
/// <param name="Twitches">One record per complete twitch.</param>
/// <param name="Snapshots">Three instants of one twitch.</param>
/// <param name="Summary">Figures.</param>
/// <param name="Counters">Solver counters.</param>
/// <param name="Failure">Null when the run reached its end; else the reason of its <see cref="Outcome{T}"/>, for whoever shows the part there is.</param>
/// <param name="WarmUpTwitches">Number of twitches left out at the start as warm-up.</param>
public sealed record RetrieveResult(
    Setup Setup,
    RetrieveTask Task,
    WalkHull Hull,
    Series Series,
    IReadOnlyList<TwitchRecord> Twitches,
    IReadOnlyList<Snapshot> Snapshots,
    RetrieveSummary Summary,
    SolverCounters Counters,
    string? Failure,
    int WarmUpTwitches)
{
    /// <summary>How the lure floats; null in made-up results.</summary>
    public FloatReport? Attitude { get; init; }
}
