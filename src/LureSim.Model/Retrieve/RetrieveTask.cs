using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Reels;

namespace LureSim.Model.Retrieve;

/// <summary>One retrieve.</summary>
/// <param name="DistanceM">Straight distance from rod tip to line tie at the start, m.</param>
/// <param name="CadencePerS">Twitches per second.</param>
/// <param name="StrokeM">B: rigid tip travel of a twitch, m; 0 is a steady pull.</param>
/// <param name="DurationS">Simulated time, s.</param>
/// <param name="HoldDistance">True: the angler backs away instead of reeling, so that the line keeps its length and the walk can
/// become stationary (rhythm studies). False: line is reeled in.</param>
/// <param name="StartHeadingRad">Angle of the nose from "pointing at the rod", counter-clockwise, rad.</param>
/// <param name="StartSidewaysM">Sideways start offset of the lure, m.</param>
/// <param name="WarmUpS">Time before twitches count, s, at most two thirds of the duration is used.</param>
public sealed record RetrieveTask(
    [property: Parameter("distance", "m", 2.0, 80.0)] double DistanceM = 15.0,
    [property: Parameter("f", "1/s", 0.3, 6.0)] double CadencePerS = 2.0,
    [property: Parameter("B", "m", 0.0, 1.0)] double StrokeM = 0.20,
    [property: Parameter("duration", "s", 0.5, 600.0)] double DurationS = 15.0,
    bool HoldDistance = false,
    [property: Parameter("start heading", "rad", -Math.PI, Math.PI)] double StartHeadingRad = 0.15,
    [property: Parameter("start offset", "m", -5.0, 5.0)] double StartSidewaysM = 0.0,
    [property: Parameter("warm-up", "s", 0.0, 120.0)] double WarmUpS = 6.0) : ISpec
{
    /// <summary>How the handle is turned.</summary>
    public TakeUpSpec TakeUp { get; init; } = new();

    /// <summary>V_i at the start, m/s: the lasting part of the speed at which a gathering hand takes up. Null: half the stroke per twitch. A study of
    /// rhythms sets what the hand came to at a rhythm near by, since finding it takes longer than all else (docs/cadence.md).</summary>
    [Parameter("V_i", "m/s", 0.0, 5.0)]
    public double? StartTakeUpMS { get; init; }

    /// <summary>How the lure may move.</summary>
    public HullFreedom Hull { get; init; } = HullFreedom.Six;

    /// <summary>Numerical settings.</summary>
    public RetrieveSolverSpec Solver { get; init; } = new();

    /// <summary>True: a twitched run ends as soon as its walk has settled, before its duration and perhaps before the warm-up is over, and its
    /// figures count the twitches that showed it. Studies of rhythm set it (docs/cadence.md).</summary>
    public bool EndsWhenSettled { get; init; }

    /// <summary>True for a steady pull: no stroke, the line is taken up at the speed of <see cref="TakeUp"/>.</summary>
    public bool IsTow => StrokeM == 0.0;

    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check() => Parameter.Demand(this);

    /// <summary>The handle at the start: as told, or at half the stroke per twitch, where a walk settles more often than not.</summary>
    /// <param name="twitch">Stroke over time.</param>
    /// <param name="slackM">Slack at the start, m.</param>
    public HandleTakeUp NewTakeUp(Twitch twitch, double slackM) =>
        new(IsTow ? TakeUp with { Mode = TakeUpMode.Steady } : TakeUp, twitch, slackM, StartTakeUpMS ?? (0.5 * StrokeM * CadencePerS));
}

/// <summary>Numerical settings of a retrieve.</summary>
/// <param name="Nodes">Line segments N.</param>
/// <param name="StepS">Largest time step, s.</param>
/// <param name="OutputStepS">Spacing of the recorded channels, s.</param>
public sealed record RetrieveSolverSpec(
    [property: Parameter("N", "", 1, 400)] int Nodes = 60,
    [property: Parameter("h", "s", 1e-6, 1e-3)] double StepS = 5e-4,
    [property: Parameter("output step", "s", 1e-4, 1.0)] double OutputStepS = 5e-3) : ISpec;
