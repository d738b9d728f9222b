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
public sealed record HandsSpec(
    double Effort = 1.0,
    double TorqueNm = 40.0,
    double SpeedRadS = 13.0,
    double InertiaKgM2 = 0.15,
    double PushN = 70.0,
    double PushSpeedMS = 3.0,
    double PushedMassKg = 5.0,
    double TravelM = 0.4,
    double RampS = 0.06,
    double StartRad = -2.0,
    double StopRad = 0.7,
    double BrakeShare = 0.5,
    double RaiseM = 0.3,
    double ReleaseErrorS = 0.008,
    double Scatter = 0.04)
{
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
