namespace LureSim.Model.Hands;

/// <summary>How a cast is made.</summary>
public enum CastingStyle
{
    /// <summary>A flick of the wrist, forearm almost still.</summary>
    WristFlick,

    /// <summary>Overhead with one hand: forearm and wrist.</summary>
    OneHanded,

    /// <summary>Overhead with both hands on the grip.</summary>
    TwoHanded,
}

/// <summary>How well a release is timed.</summary>
public enum CastingSkill
{
    /// <summary>Seldom casts.</summary>
    Beginner,

    /// <summary>Casts often.</summary>
    Practised,

    /// <summary>Casts for a living.</summary>
    Expert,
}

/// <summary>What hands and arms can do in a casting style, at full effort. All values are guesses with their ranges, bounded by measured limits.</summary>
/// <remarks>
/// Sources of the limits: wrist flexion 12.2 +- 3.7, radial 11.0 +- 2.0, ulnar deviation 9.5 +- 2.2 N m (Delp, Grierson and Buchanan 1996, J. Biomech. 29);
/// a rod is cast forward by ulnar deviation, over about 1 rad. Forearm and hand about the elbow 0.075 kg m2 (0.022 of body mass at 0.83 of the segment,
/// from memory), and 0.03 to 0.05 kg m2 of reel and hand in front of it. One hand is limited by grip and wrist to 12 to 30 N m, not by the elbow's 40
/// to 60; two hands 0.25 to 0.35 m apart push and pull with 100 to 180 N each. Start angles: casting lessons have the rod point to two or three
/// o'clock behind (1.05 to 1.57 rad from the vertical); experts with fly rods turn it over 66 deg, average anglers over 100.
/// </remarks>
/// <param name="TorqueNm">tau_0, N m.</param>
/// <param name="SpeedRadS">w_0, rad/s.</param>
/// <param name="InertiaKgM2">I_h, kg m2.</param>
/// <param name="PushN">F_0, N.</param>
/// <param name="PushSpeedMS">v_0, m/s.</param>
/// <param name="PushedMassKg">Mass that goes forward, kg.</param>
/// <param name="TravelM">Travel until braking, m.</param>
/// <param name="RampS">Rise time, s.</param>
/// <param name="StartRad">Butt from the vertical at the start, rad.</param>
/// <param name="StopRad">Butt from the vertical where the swing stops if the line is never let go, rad.</param>
public sealed record CastingStyles(
    Ranged TorqueNm, Ranged SpeedRadS, Ranged InertiaKgM2, Ranged PushN, Ranged PushSpeedMS, Ranged PushedMassKg, Ranged TravelM, Ranged RampS, Ranged StartRad,
    Ranged StopRad)
{
    /// <summary>A flick of the wrist.</summary>
    public static CastingStyles WristFlick { get; } = new(
        Ranged.About(9.5, 1.4), Ranged.About(14.0, 1.4), Ranged.About(0.012, 2.0), Ranged.About(10.0, 2.0), Ranged.About(2.0, 1.4), Ranged.About(2.0, 1.6),
        Ranged.About(0.1, 2.0), Ranged.About(0.04, 1.6), new(-0.7, -1.0, -0.4), new(0.6, 0.4, 0.8));

    /// <summary>Overhead with one hand.</summary>
    public static CastingStyles OneHanded { get; } = new(
        Ranged.About(20.0, 1.5), Ranged.About(13.0, 1.35), Ranged.About(0.10, 1.5), Ranged.About(30.0, 2.0), Ranged.About(2.5, 1.4), Ranged.About(3.0, 1.6),
        Ranged.About(0.3, 1.4), Ranged.About(0.06, 1.6), new(-1.05, -1.35, -0.75), new(0.7, 0.5, 0.9));

    /// <summary>Overhead with both hands.</summary>
    public static CastingStyles TwoHanded { get; } = new(
        Ranged.About(40.0, 1.5), Ranged.About(13.0, 1.35), Ranged.About(0.15, 2.0), Ranged.About(70.0, 1.7), Ranged.About(3.0, 1.4), Ranged.About(5.0, 1.6),
        Ranged.About(0.4, 1.3), Ranged.About(0.06, 1.6), new(-1.3, -1.65, -0.95), new(0.7, 0.5, 0.9));

    /// <summary>The values of a style.</summary>
    /// <param name="style">Style.</param>
    /// <exception cref="ArgumentOutOfRangeException">The style is not known.</exception>
    public static CastingStyles Of(CastingStyle style) => style switch
    {
        CastingStyle.WristFlick => WristFlick,
        CastingStyle.OneHanded => OneHanded,
        CastingStyle.TwoHanded => TwoHanded,
        _ => throw new ArgumentOutOfRangeException(nameof(style), style, "this style is not known"),
    };

    /// <summary>Hands of a style.</summary>
    /// <param name="style">Style.</param>
    /// <param name="effort">e, 0.05 to 3.</param>
    public static HandsSpec Hands(CastingStyle style, double effort = 0.5)
    {
        CastingStyles s = Of(style);
        return new(
            effort, s.TorqueNm.Value, s.SpeedRadS.Value, s.InertiaKgM2.Value, s.PushN.Value, s.PushSpeedMS.Value, s.PushedMassKg.Value, s.TravelM.Value,
            s.RampS.Value, s.StartRad.Value, s.StopRad.Value)
        {
            Style = style,
        };
    }
}
