namespace LureSim.Model.Retrieve;

/// <summary>How the reel is worked during the retrieve.</summary>
public enum TakeUpMode
{
    /// <summary>The angler keeps a wanted slack: slow feedback on the handle.</summary>
    Gather,

    /// <summary>Constant handle speed.</summary>
    Steady,

    /// <summary>A fixed length wound in during the return of each twitch.</summary>
    PerTwitch,
}

/// <summary>One retrieve.</summary>
/// <param name="DistanceM">Straight distance from rod tip to line tie at the start, m, 2 to 80.</param>
/// <param name="CadencePerS">Twitches per second, 0.3 to 6.</param>
/// <param name="StrokeM">B: rigid tip travel of a twitch, m, 0 to 1; 0 is a steady pull.</param>
/// <param name="SlackM">Mean slack the angler keeps: unstretched line out minus straight distance, m, 0 to 2.</param>
/// <param name="TakeUp">Take-up mode.</param>
/// <param name="TakeUpSpeedMS">Line speed for <see cref="TakeUpMode.Steady"/> and for a steady pull, m/s, 0 to 2.</param>
/// <param name="TakeUpPerTwitchM">Line per twitch for <see cref="TakeUpMode.PerTwitch"/>, m, 0 to 1.</param>
/// <param name="DurationS">Simulated time, s, 0.5 to 600.</param>
/// <param name="HoldDistance">True: the angler backs away instead of reeling, so that the line keeps its length and the walk can
/// become stationary (rhythm studies). False: line is reeled in.</param>
/// <param name="StartHeadingRad">Angle of the nose from "pointing at the rod", counter-clockwise, rad.</param>
/// <param name="StartSidewaysM">Sideways start offset of the lure, m.</param>
/// <param name="WarmUpS">Time before twitches count, s, at most two thirds of the duration is used; 0 to 120.</param>
public sealed record RetrieveSpec(
    double DistanceM = 15.0,
    double CadencePerS = 2.0,
    double StrokeM = 0.20,
    double SlackM = 0.14,
    TakeUpMode TakeUp = TakeUpMode.Gather,
    double TakeUpSpeedMS = 0.3,
    double TakeUpPerTwitchM = 0.2,
    double DurationS = 15.0,
    bool HoldDistance = false,
    double StartHeadingRad = 0.15,
    double StartSidewaysM = 0.0,
    double WarmUpS = 6.0)
{
    /// <summary>True for a steady pull: no stroke, the line is taken up at <see cref="TakeUpSpeedMS"/>.</summary>
    public bool IsTow => StrokeM == 0.0;
}

/// <summary>Numerical settings of a retrieve.</summary>
/// <param name="Nodes">Line segments N, 1 to 400.</param>
/// <param name="StepS">Largest time step, s, up to 1e-3.</param>
/// <param name="OutputStepS">Spacing of the recorded channels, s.</param>
public sealed record SolverSpec(int Nodes = 60, double StepS = 5e-4, double OutputStepS = 5e-3);
