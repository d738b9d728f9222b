namespace LureSim.Model.Hands;

/// <summary>
/// The hands of a cast: torque and push that fall in a straight line with speed until the line is let go, then fade and catch the rod. The values at
/// rest are those of a two-handed overhead cast (<see cref="CastingStyles"/>); measured human limits bound them (docs/cast.md).
/// </summary>
/// <remarks>Angles of the rod are counted from the vertical, forward positive. Effort stretches time: the same path in another time needs torque ~ 1/T^2
/// and has speed ~ 1/T, so that e scales torque and push, and sqrt e both top speeds.</remarks>
/// <param name="Effort">e, 1 = all that a practised person has in this style; everyday casts 0.5 (guess, 0.35 to 0.65); 0.05 to 3.</param>
/// <param name="TorqueNm">tau_0, torque at rest at full effort, N m.</param>
/// <param name="SpeedRadS">w_0, turning speed at which no torque is left at full effort, rad/s.</param>
/// <param name="InertiaKgM2">I_h, hands, forearm and reel about the turning point, kg m2.</param>
/// <param name="PushN">F_0, forward push at rest at full effort, N.</param>
/// <param name="PushSpeedMS">v_0, speed at which no push is left at full effort, m/s.</param>
/// <param name="PushedMassKg">Mass of arms and body that goes forward, kg.</param>
/// <param name="TravelM">Travel of the turning point until braking, m.</param>
/// <param name="RampS">Time over which torque and push rise, s.</param>
/// <param name="StartRad">Start angle of the butt from the vertical, rad.</param>
/// <param name="StopRad">Angle at which the hands brake when the line is never let go, rad.</param>
/// <param name="CatchShare">L, largest catching torque over the driving one, guess 1 (0.6 to 1.4; people brake with up to 1.3 times their static strength).</param>
/// <param name="RaiseM">Turning point above the hand height of the angler, m, guess 0.3 (0.1 to 0.5).</param>
/// <param name="ReleaseErrorS">One sigma of the release time, s, guess 0.008.</param>
/// <param name="Scatter">One sigma of distance from cast to cast beyond the release, share, guess 0.04.</param>
/// <param name="SettlingRadS">w_c, rate at which the catching hands settle, like a critically damped arm, rad/s, guess 15 (10 to 20; a held arm does 1 to 3 Hz).</param>
/// <param name="FadeS">t_f, time over which the drive fades after the release and the catch rises, s, guess 0.05 (0.03 to 0.07): a muscle's activation falls in 40 to 60 ms (from memory).</param>
/// <param name="CatchDelayS">t_d, start of the catch after the release, s, guess 0 (-0.03 to 0.06): stop and release are one planned movement.</param>
public sealed record HandsSpec(
    [property: Parameter("e", "", 0.05, 3.0)] double Effort = 0.5,
    [property: Parameter("tau_0", "N m", 1.0, 120.0)] double TorqueNm = 40.0,
    [property: Parameter("w_0", "rad/s", 3.0, 40.0)] double SpeedRadS = 13.0,
    [property: Parameter("I_h", "kg m2", 0.003, 1.0)] double InertiaKgM2 = 0.15,
    [property: Parameter("F_0", "N", 0.0, 300.0)] double PushN = 70.0,
    [property: Parameter("v_0", "m/s", 0.5, 10.0)] double PushSpeedMS = 3.0,
    [property: Parameter("pushed mass", "kg", 0.5, 30.0)] double PushedMassKg = 5.0,
    [property: Parameter("travel", "m", 0.0, 1.5)] double TravelM = 0.4,
    [property: Parameter("ramp", "s", 0.01, 0.5)] double RampS = 0.06,
    [property: Parameter("start angle", "rad", -2.6, 0.5)] double StartRad = -1.3,
    [property: Parameter("stop angle", "rad", -2.4, 1.6)] double StopRad = 0.7,
    [property: Parameter("L", "", 0.05, 2.0, GuessLow = 0.6, GuessHigh = 1.4)] double CatchShare = 1.0,
    [property: Parameter("raise", "m", 0.0, 1.0, GuessLow = 0.1, GuessHigh = 0.5)] double RaiseM = 0.3,
    [property: Parameter("release error", "s", 0.0, 0.05)] double ReleaseErrorS = 0.008,
    [property: Parameter("scatter", "", 0.0, 0.2)] double Scatter = 0.04,
    [property: Parameter("w_c", "rad/s", 1.0, 100.0, GuessLow = 10.0, GuessHigh = 20.0)] double SettlingRadS = 15.0,
    [property: Parameter("t_f", "s", 0.01, 0.5, GuessLow = 0.03, GuessHigh = 0.07)] double FadeS = 0.05,
    [property: Parameter("t_d", "s", -0.1, 0.5, GuessLow = -0.03, GuessHigh = 0.06)] double CatchDelayS = 0.0) : ISpec
{
    /// <summary>Least arc from start to stop, rad.</summary>
    public const double LeastSwingRad = 0.2;

    /// <summary>e tau_0, N m.</summary>
    public double FullTorqueNm => Effort * TorqueNm;

    /// <summary>w_0 sqrt e, rad/s.</summary>
    public double TopSpeedRadS => SpeedRadS * Math.Sqrt(Effort);

    /// <summary>e F_0, N.</summary>
    public double FullPushN => Effort * PushN;

    /// <summary>v_0 sqrt e, m/s.</summary>
    public double TopPushSpeedMS => PushSpeedMS * Math.Sqrt(Effort);

    /// <summary>Style that the values go with.</summary>
    public CastingStyle Style { get; init; } = CastingStyle.TwoHanded;

    /// <summary>Skill that release error and scatter go with.</summary>
    public CastingSkill Skill { get; init; } = CastingSkill.Practised;

    /// <summary>One sigma of the release time, s: 15, 8 or 5 ms. Guess, a factor of 1.5 either way.</summary>
    /// <param name="skill">Skill.</param>
    public static Ranged UsualReleaseError(CastingSkill skill) => Ranged.About(Of(skill, 0.015, 0.008, 0.005), 1.5);

    /// <summary>One sigma of distance beyond the release, share: 6, 4 or 3 %. Guess, a factor of 1.3 either way.</summary>
    /// <param name="skill">Skill.</param>
    public static Ranged UsualScatter(CastingSkill skill) => Ranged.About(Of(skill, 0.06, 0.04, 0.03), 1.3);

    /// <summary>The same hands with release error and scatter of a skill.</summary>
    /// <param name="skill">Skill.</param>
    public HandsSpec With(CastingSkill skill) =>
        this with { Skill = skill, ReleaseErrorS = UsualReleaseError(skill).Value, Scatter = UsualScatter(skill).Value };

    private static double Of(CastingSkill skill, double beginner, double practised, double expert) =>
        skill switch { CastingSkill.Beginner => beginner, CastingSkill.Expert => expert, _ => practised };
}
