namespace LureSim.Model.Hands;

/// <summary>How the hook is set.</summary>
public enum StrikeStyle
{
    /// <summary>A jerk upward with wrists and forearms, as with a light hand.</summary>
    Snap,

    /// <summary>Upward with both arms and the back, as over mats.</summary>
    Haul,

    /// <summary>A long sideways pull on a tight line.</summary>
    Sweep,
}

/// <summary>The plane in which the rod turns.</summary>
public enum StrokePlane
{
    /// <summary>Upright: the rod goes up and back.</summary>
    Up,

    /// <summary>Level: the rod goes sideways and back.</summary>
    Side,
}

/// <summary>
/// What hands and body do in a strike: torque and pull that fall in a straight line with speed. Angles of the butt are counted from the square to the line (upright
/// for a stroke upward), away from the fish positive: -1.3 points at the fish, 0 is square. All values are guesses with their ranges (docs/strike.md); the
/// torques are those of <see cref="CastingStyles"/>, since it is the same person.
/// </summary>
/// <param name="Effort">e, share of full strength, guess 0.75 (0.5 to 1).</param>
/// <param name="TorqueNm">tau_0, torque at rest at full effort, N m.</param>
/// <param name="SpeedRadS">w_0, turning speed at which no torque is left, rad/s.</param>
/// <param name="InertiaKgM2">I_h, hands, forearms and reel about the turning point, kg m2.</param>
/// <param name="PullN">F_0, pull of arms and body on the turning point, away from the fish, N.</param>
/// <param name="PullSpeedMS">v_0, speed at which no pull is left, m/s.</param>
/// <param name="PulledMassKg">Mass of arms and body that moves with it, kg.</param>
/// <param name="TravelM">Travel of the turning point, m.</param>
/// <param name="RampS">Time over which torque and pull rise, s.</param>
/// <param name="StartRad">Butt at the start, rad.</param>
/// <param name="StopRad">Butt where the hands stop the rod, rad.</param>
/// <param name="HoldS">Time from the start after which the hands only hold the rod, s.</param>
/// <param name="HoldShare">Torque with which they hold it then, over tau_0, guess 0.4 (0.2 to 0.7).</param>
public sealed record StrikeStroke(
    [property: Parameter("e", "", 0.05, 3.0, GuessLow = 0.5, GuessHigh = 1.0)] double Effort = 0.75,
    [property: Parameter("tau_0", "N m", 1.0, 120.0, Spread = 1.5)] double TorqueNm = 25.0,
    [property: Parameter("w_0", "rad/s", 1.0, 40.0, Spread = 1.35)] double SpeedRadS = 14.0,
    [property: Parameter("I_h", "kg m2", 0.003, 1.0, Spread = 1.7)] double InertiaKgM2 = 0.1,
    [property: Parameter("F_0", "N", 0.0, 300.0, Spread = 1.7)] double PullN = 30.0,
    [property: Parameter("v_0", "m/s", 0.2, 10.0, Spread = 1.4)] double PullSpeedMS = 2.5,
    [property: Parameter("pulled mass", "kg", 0.5, 60.0, Spread = 1.6)] double PulledMassKg = 3.0,
    [property: Parameter("travel", "m", 0.0, 1.5, Spread = 1.4)] double TravelM = 0.15,
    [property: Parameter("ramp", "s", 0.01, 1.0, Spread = 1.6)] double RampS = 0.04,
    [property: Parameter("start angle", "rad", -1.6, 0.5)] double StartRad = -1.3,
    [property: Parameter("stop angle", "rad", -1.4, 1.6)] double StopRad = 0.2,
    [property: Parameter("hold after", "s", 0.1, 5.0)] double HoldS = 0.6,
    [property: Parameter("hold share", "", 0.0, 1.5, GuessLow = 0.2, GuessHigh = 0.7)] double HoldShare = 0.4) : ISpec
{
    /// <summary>Style that the values go with.</summary>
    public StrikeStyle Style { get; init; } = StrikeStyle.Snap;

    /// <summary>Plane of the stroke.</summary>
    public StrokePlane Plane { get; init; } = StrokePlane.Up;

    /// <summary>Stroke of a style at the usual effort.</summary>
    /// <param name="style">Style.</param>
    /// <exception cref="ArgumentOutOfRangeException">The style is not known.</exception>
    public static StrikeStroke Of(StrikeStyle style) => style switch
    {
        StrikeStyle.Snap => new(),
        StrikeStyle.Haul => new(0.75, 40.0, 12.0, 0.15, 100.0, 2.5, 8.0, 0.4, 0.08, -1.3, 0.3) { Style = style },
        StrikeStyle.Sweep => new(0.75, 40.0, 6.0, 0.2, 100.0, 1.5, 10.0, 0.6, 0.35, -1.2, 0.5, HoldS: 1.0) { Style = style, Plane = StrokePlane.Side },
        _ => throw new ArgumentOutOfRangeException(nameof(style), style, "this style is not known"),
    };
}
