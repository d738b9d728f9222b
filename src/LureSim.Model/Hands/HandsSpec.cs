namespace LureSim.Model.Hands;

/// <summary>
/// The hands of a cast: torque and push that fall in a straight line with speed until the stop, then braking. All values are
/// rounded guesses near the middle of their range; measured human limits bound them (docs/cast.md).
/// </summary>
/// <remarks>Angles of the rod are counted from the vertical, forward positive.</remarks>
/// <param name="Effort">e, factor on torque and push: 0.5 beginner or gentle (guess, 0.35 to 0.7), 1 practised by definition, 1.5 expert
/// (guess, 1.25 to 1.9); 0.05 to 3.</param>
/// <param name="TorqueNm">tau_0, torque at rest of both hands at effort 1, N m, guess 40 (25 to 60; wrist alone 8 to 15).</param>
/// <param name="SpeedRadS">w_0, turning speed at which no torque is left, rad/s, guess 13 (9 to 18; wrist flick 15 to 25).</param>
/// <param name="InertiaKgM2">I_h, hands, forearm and reel about the turning point, kg m2, guess 0.15 (0.06 to 0.3).</param>
/// <param name="PushN">F_0, forward push at rest at effort 1, N, guess 70 (0 to 120).</param>
/// <param name="PushSpeedMS">v_0, speed at which no push is left, m/s, guess 3 (2 to 4).</param>
/// <param name="PushedMassKg">Mass of arms and body that goes forward, kg, guess 5 (3 to 8).</param>
/// <param name="TravelM">Travel of the turning point until braking, m, guess 0.4 (0.3 to 0.5).</param>
/// <param name="RampS">Time over which torque and push rise, s, guess 0.06 (0.04 to 0.10).</param>
/// <param name="StartRad">Start angle of the butt from the vertical, rad, guess -2.0 (-2.3 to -1.2).</param>
/// <param name="StopRad">Angle at which the hands begin to brake, rad, guess 0.7 (0.4 to 1.0).</param>
/// <param name="BrakeShare">Largest braking torque over the driving one, guess 0.5 (0.2 soft follow-through to 1.3, the measured
/// ratio of eccentric to isometric strength); a hard stop lets the rod whip and throws loops.</param>
/// <param name="RaiseM">Turning point above the hand height of the angler, m, guess 0.3 (0 to 0.5).</param>
/// <param name="ReleaseErrorS">One sigma of the release time, s, guess 0.008 (0.004 to 0.015).</param>
/// <param name="Scatter">One sigma of distance from cast to cast beyond the release, share, guess 0.04 (0.03 to 0.06).</param>
/// <param name="SettlingRadS">Rate at which the braked hands settle, like a critically damped arm, rad/s, guess 10 (5 to 20); it acts after the release.</param>
public sealed record HandsSpec(
    [property: Parameter("e", "", 0.05, 3.0)] double Effort = 1.0,
    [property: Parameter("tau_0", "N m", 1.0, 120.0, GuessLow = 25.0, GuessHigh = 60.0)] double TorqueNm = 40.0,
    [property: Parameter("w_0", "rad/s", 3.0, 40.0, GuessLow = 9.0, GuessHigh = 18.0)] double SpeedRadS = 13.0,
    [property: Parameter("I_h", "kg m2", 0.005, 1.0, GuessLow = 0.06, GuessHigh = 0.3)] double InertiaKgM2 = 0.15,
    [property: Parameter("F_0", "N", 0.0, 300.0, GuessLow = 0.0, GuessHigh = 120.0)] double PushN = 70.0,
    [property: Parameter("v_0", "m/s", 0.5, 10.0, GuessLow = 2.0, GuessHigh = 4.0)] double PushSpeedMS = 3.0,
    [property: Parameter("pushed mass", "kg", 0.5, 30.0, GuessLow = 3.0, GuessHigh = 8.0)] double PushedMassKg = 5.0,
    [property: Parameter("travel", "m", 0.0, 1.5, GuessLow = 0.3, GuessHigh = 0.5)] double TravelM = 0.4,
    [property: Parameter("ramp", "s", 0.01, 0.5, GuessLow = 0.04, GuessHigh = 0.1)] double RampS = 0.06,
    [property: Parameter("start angle", "rad", -2.6, 0.5, GuessLow = -2.3, GuessHigh = -1.2)] double StartRad = -2.0,
    [property: Parameter("stop angle", "rad", -2.4, 1.6, GuessLow = 0.4, GuessHigh = 1.0)] double StopRad = 0.7,
    [property: Parameter("brake share", "", 0.05, 2.0, GuessLow = 0.2, GuessHigh = 1.3)] double BrakeShare = 0.5,
    [property: Parameter("raise", "m", 0.0, 1.0, GuessLow = 0.0, GuessHigh = 0.5)] double RaiseM = 0.3,
    [property: Parameter("release error", "s", 0.0, 0.05, GuessLow = 0.004, GuessHigh = 0.015)] double ReleaseErrorS = 0.008,
    [property: Parameter("scatter", "", 0.0, 0.2, GuessLow = 0.03, GuessHigh = 0.06)] double Scatter = 0.04,
    [property: Parameter("settling", "rad/s", 1.0, 100.0, GuessLow = 5.0, GuessHigh = 20.0)] double SettlingRadS = 10.0)
{
    /// <summary>Least arc from start to stop, rad.</summary>
    public const double LeastSwingRad = 0.2;

    /// <summary>A beginner: half effort, wide release error. Guess.</summary>
    public static HandsSpec Beginner { get; } = new(Effort: 0.5, ReleaseErrorS: 0.015, Scatter: 0.06);

    /// <summary>A practised angler. Guess.</summary>
    public static HandsSpec Practised { get; } = new();

    /// <summary>An expert: half again as much effort, narrow release error. Guess.</summary>
    public static HandsSpec Expert { get; } = new(Effort: 1.5, ReleaseErrorS: 0.005, Scatter: 0.03);

    /// <summary>The hands that go with an effort: release error and scatter of the beginner below 0.75, of the expert above 1.25.</summary>
    /// <param name="effort">e.</param>
    public static HandsSpec WithEffort(double effort) =>
        (effort < 0.75 ? Beginner : effort > 1.25 ? Expert : Practised) with { Effort = effort };
}
