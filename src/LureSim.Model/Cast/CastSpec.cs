using LureSim.Model.Hands;

namespace LureSim.Model.Cast;

/// <summary>One cast: a run's rod, reel, line, lure and air, and what the cast adds to them. Immutable.</summary>
/// <param name="Run">Rod, reel, line, lure, air, angler.</param>
/// <param name="Cast">The cast.</param>
public sealed record CastRunSpec(RunSpec Run, CastSpec Cast);

/// <summary>What a cast adds to a run.</summary>
/// <param name="Hands">Hands and their swing.</param>
/// <param name="OverhangM">Line from tip to lure at the start, m, 0.05 to 3.</param>
/// <param name="Release">When the thumb or finger lets go.</param>
/// <param name="Spool">Revolving spool; read when the reel has one.</param>
/// <param name="FixedSpool">Fixed spool; read when the reel has one.</param>
/// <param name="Flight">Drag of lure and line.</param>
/// <param name="RodDampingRatio">zeta of the rod's first mode in a cast, guess 0.03 (0.005 to 0.1).</param>
/// <param name="Solver">Numerical settings.</param>
public sealed record CastSpec(
    HandsSpec Hands,
    double OverhangM,
    ReleaseSpec Release,
    SpoolSpec Spool,
    FixedSpoolSpec FixedSpool,
    FlightSpec Flight,
    double RodDampingRatio = 0.03,
    CastSolverSpec? Solver = null)
{
    /// <summary>Numerical settings, the default ones when none are given.</summary>
    public CastSolverSpec Numerics => Solver ?? CastSolverSpec.Default;
}

/// <summary>How the moment of release is chosen.</summary>
public enum ReleaseMode
{
    /// <summary>The moment that makes the longest cast.</summary>
    Best,

    /// <summary>A time after the start of the swing.</summary>
    AtTime,

    /// <summary>The butt's angle from the vertical.</summary>
    AtAngle,
}

/// <summary>When the line is let go.</summary>
/// <param name="Mode">How it is chosen.</param>
/// <param name="Value">Time, s (0 to 2), or angle, rad; not read for the best one.</param>
/// <param name="ErrorS">Added to the moment so found, s: how much too late the thumb is.</param>
public sealed record ReleaseSpec(ReleaseMode Mode = ReleaseMode.Best, double Value = 0.0, double ErrorS = 0.0);

/// <summary>A revolving spool in the cast.</summary>
/// <param name="InertiaKgM2">I_b, bare spool without line, kg m2, guess 0.8e-6 (0.4e-6 to 1.5e-6): 6 to 16 g at a radius of gyration of 8 to 10 mm.</param>
/// <param name="LineM">Line on the spool at the start, m, 1 to 1000; at its end the cast is held.</param>
/// <param name="WidthM">W, width of the wound line, m, 0.005 to 0.06.</param>
/// <param name="Packing">Share of line in the wound volume, guess 0.75 (0.6 to 0.9).</param>
/// <param name="MagneticNms">c_m, torque c_m w of a magnetic brake, N m s, 0 to 1e-5; of interest 0 to 2e-6.</param>
/// <param name="CentrifugalNms2">c_c, torque c_c w^2 of a centrifugal brake, N m s2, 0 to 1e-7.</param>
/// <param name="FrictionNm">Bearings, cap and line friction, N m, guess 4e-4 (2e-4 to 1e-3).</param>
/// <param name="ThumbNm">Friction of the thumb while line is loose, N m, guess 0.003 (0 to 0.01): it takes a tenth of the speed in a tenth of a second.</param>
/// <param name="ThumbDelayS">Lag of the thumb, s, guess 0.15 (0.1 to 0.2).</param>
public sealed record SpoolSpec(
    double InertiaKgM2 = 8e-7,
    double LineM = 75.0,
    double WidthM = 0.022,
    double Packing = 0.75,
    double MagneticNms = 5e-7,
    double CentrifugalNms2 = 0.0,
    double FrictionNm = 4e-4,
    double ThumbNm = 0.003,
    double ThumbDelayS = 0.15);

/// <summary>A fixed spool: tension at the rod tip T = c_g (T_0 + K mu v^2).</summary>
/// <remarks>mu v^2 is line picked up from rest; the rest of K is the whirl of the coils leaving the spool and the first ring
/// (over-end unwinding scales with mu v^2: Padfield, 1950s, from memory).</remarks>
/// <param name="PickUpFactor">K, guess 1.2 for smooth single strands (1 to 2), 2 for braid (1 to 3).</param>
/// <param name="RestTensionN">T_0, N, guess 0.005 (0 to 0.02).</param>
/// <param name="RingFactor">c_g, friction in the rings, guess 1.1 (1.0 to 1.3).</param>
public sealed record FixedSpoolSpec(double PickUpFactor, double RestTensionN = 0.005, double RingFactor = 1.1);

/// <summary>Drag of lure and line in the air.</summary>
/// <param name="TumblingShare">x, share of the flight in which the lure tumbles, guess 0.1 tail-weighted, 0.5 general, 0.7 soft and bulky (0 to 1).</param>
/// <param name="FrontCd">Cd on the frontal area when it flies straight, guess 0.3 (drop or cigar 0.2 to 0.35, blunt 0.5).</param>
/// <param name="SideFactor">f, finite length of the body across the flow, guess 0.7.</param>
/// <param name="FrictionFactor">Share of the thread-drawing skin friction, guess 0.4 smooth strand (0.27 to 1), 0.8 braid (0.4 to 1.5).</param>
/// <param name="WetFactor">Mass of the wet line over dry, guess 1 single strand, 1.3 braid (1.0 to 1.6).</param>
/// <param name="LureCdAM2">Drag area of the lure, m2, when it is known; else it follows from the shape.</param>
public sealed record FlightSpec(
    double TumblingShare,
    double FrontCd,
    double SideFactor,
    double FrictionFactor,
    double WetFactor,
    double? LureCdAM2 = null);

/// <summary>Numerical settings of a cast.</summary>
/// <param name="SwingStepS">Step while the rod moves, s, 5e-5 to 1e-3.</param>
/// <param name="FlightStepS">Step after that, s, up to 2e-3.</param>
/// <param name="NodeSpacingM">Spacing of line nodes in the air, m, 0.5 to 10; infinity keeps the line straight (chord).</param>
/// <param name="RodAfterReleaseS">How long the rod goes on moving in the reported cast, s; by 0.6 s its tip has stopped throwing loops.</param>
/// <param name="OutputStepS">Spacing of the recorded series, s.</param>
public sealed record CastSolverSpec(
    double SwingStepS = 5e-4,
    double FlightStepS = 1e-3,
    double NodeSpacingM = 2.0,
    double RodAfterReleaseS = 0.6,
    double OutputStepS = 5e-3)
{
    /// <summary>The default settings.</summary>
    public static CastSolverSpec Default { get; } = new();
}
