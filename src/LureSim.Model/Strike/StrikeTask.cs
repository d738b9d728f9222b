using LureSim.Model.Hands;

namespace LureSim.Model.Strike;

/// <summary>One strike: from slack line to the hook, and the seconds after it.</summary>
/// <param name="DistanceM">Straight distance from rod tip to hook at the start, m.</param>
/// <param name="SlackM">Slack at the start, m: unstretched line out less that distance.</param>
/// <param name="DurationS">Time that is computed from the first movement of the hands, s.</param>
/// <param name="KnotShare">Strength of the knots over the line's, guess 0.75 (0.5 to 0.95).</param>
/// <param name="RodFactor">Load that the rod bears at 45 deg of rod angle over its power load, guess 12 (7 to 20): rods lifted until they broke, from memory.</param>
public sealed record StrikeTask(
    [property: Parameter("distance", "m", 3.0, 60.0)] double DistanceM = 15.0,
    [property: Parameter("slack", "m", 0.0, 5.0)] double SlackM = 0.3,
    [property: Parameter("duration", "s", 0.3, 10.0)] double DurationS = 1.5,
    [property: Parameter("knot", "", 0.2, 1.0, GuessLow = 0.5, GuessHigh = 0.95)] double KnotShare = 0.75,
    [property: Parameter("rod factor", "", 1.0, 50.0, GuessLow = 7.0, GuessHigh = 20.0)] double RodFactor = 12.0) : ISpec
{
    /// <summary>What hands and body do.</summary>
    public StrikeStroke Stroke { get; init; } = new();

    /// <summary>Numerical settings.</summary>
    public StrikeSolverSpec Solver { get; init; } = new();

    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        Parameter.Demand(this);
        Require.InRange(Stroke.StopRad, Stroke.StartRad + HandsSpec.LeastSwingRad, double.PositiveInfinity);
    }
}

/// <summary>Numerical settings of a strike.</summary>
/// <param name="StepS">Time step, s.</param>
/// <param name="Nodes">Segments of the line at most; each is at least 0.25 m.</param>
/// <param name="OutputStepS">Spacing of the recorded series, s.</param>
public sealed record StrikeSolverSpec(
    [property: Parameter("h", "s", 1e-5, 2e-3)] double StepS = 5e-4,
    [property: Parameter("N", "", 4, 400)] int Nodes = 24,
    [property: Parameter("output step", "s", 1e-4, 0.1)] double OutputStepS = 2e-3) : ISpec;
