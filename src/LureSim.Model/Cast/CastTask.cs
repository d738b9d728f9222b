namespace LureSim.Model.Cast;

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
/// <param name="Value">Time, s (0 to 2), or angle, rad (-2.6 to 1.6); not read for the best one.</param>
/// <param name="ErrorS">Added to the moment so found, s: how much too late the thumb is.</param>
public sealed record ReleaseSpec(
    ReleaseMode Mode = ReleaseMode.Best,
    [property: Parameter("release", "s or rad", -2.6, 2.0)] double Value = 0.0,
    [property: Parameter("error", "s", -0.1, 0.1)] double ErrorS = 0.0) : ISpec
{
    /// <summary>Latest release, s from the start of the swing.</summary>
    public const double LatestS = 2.0;

    /// <summary>Range of a release angle, rad.</summary>
    public const double FirstRad = -2.6, LastRad = 1.6;

    /// <summary>Demands a value that fits its mode.</summary>
    internal void Check()
    {
        if (Mode == ReleaseMode.AtTime)
        {
            Require.InRange(Value, 0.0, LatestS);
        }
        else if (Mode == ReleaseMode.AtAngle)
        {
            Require.InRange(Value, FirstRad, LastRad);
        }
    }
}

/// <summary>One cast.</summary>
/// <param name="OverhangM">Line from tip to lure at the start, m.</param>
public sealed record CastTask([property: Parameter("overhang", "m", 0.05, 3.0)] double OverhangM = 0.45) : ISpec
{
    /// <summary>When the thumb or finger lets go.</summary>
    public ReleaseSpec Release { get; init; } = new();

    /// <summary>Numerical settings.</summary>
    public CastSolverSpec Solver { get; init; } = new();

    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        Parameter.Demand(this);
        Release.Check();
    }
}

/// <summary>Numerical settings of a cast.</summary>
/// <param name="SwingStepS">Step while the rod moves, s.</param>
/// <param name="FlightStepS">Step after that, s.</param>
/// <param name="NodeSpacingM">Spacing of line nodes in the air within 3 m of the tip, m; it grows to four times that at 12 m. Infinity keeps the line straight (chord).</param>
/// <param name="RodAfterReleaseS">How long the rod goes on moving in the reported cast, s; by 0.6 s its tip has stopped throwing loops.</param>
/// <param name="OutputStepS">Spacing of the recorded series, s.</param>
public sealed record CastSolverSpec(
    [property: Parameter("h", "s", 1e-5, 1e-3)] double SwingStepS = 5e-4,
    [property: Parameter("h", "s", 1e-5, 2e-3)] double FlightStepS = 1e-3,
    [property: Parameter("spacing", "m", 0.05, double.PositiveInfinity)] double NodeSpacingM = 0.5,
    [property: Parameter("rod after release", "s", 0.02, 2.0)] double RodAfterReleaseS = 0.6,
    [property: Parameter("output step", "s", 1e-4, 1.0)] double OutputStepS = 5e-3) : ISpec;
