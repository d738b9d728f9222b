using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[hands]</c>: the hands of a cast. All defaults are rounded guesses; measured limits in <c>docs/cast.md</c>.</summary>
public static class HandsKeys
{
    /// <summary>Torque at rest.</summary>
    public static readonly KeySpec Torque = new("hands.torque", QuantityKind.Torque, "N m", "Torque of both hands at rest and at effort 1; wrist alone 8 to 15 N m.")
    {
        Default = "40 N m",
        Low = 1,
        High = 120,
        GuessLow = 25,
        GuessHigh = 60,
        FromCast = s => s.Cast.Hands.TorqueNm,
    };

    /// <summary>Speed without torque.</summary>
    public static readonly KeySpec Speed = new(
        "hands.speed", QuantityKind.AngularSpeed, "rad/s", "Turning speed at which the hands have no torque left; wrist flick 15 to 25 rad/s.")
    {
        Default = "13 rad/s",
        Low = 3,
        High = 40,
        GuessLow = 9,
        GuessHigh = 18,
        FromCast = s => s.Cast.Hands.SpeedRadS,
    };

    /// <summary>Inertia of the hands.</summary>
    public static readonly KeySpec Inertia = new("hands.inertia", QuantityKind.Inertia, "kg m2", "Hands, forearm and reel about the turning point.")
    {
        Default = "0.15 kg m2",
        Low = 0.005,
        High = 1,
        GuessLow = 0.06,
        GuessHigh = 0.3,
        FromCast = s => s.Cast.Hands.InertiaKgM2,
    };

    /// <summary>Forward push.</summary>
    public static readonly KeySpec Push = new("hands.push", QuantityKind.Force, "N", "Forward push at rest and at effort 1.")
    {
        Default = "70 N",
        Low = 0,
        High = 300,
        GuessLow = 0,
        GuessHigh = 120,
        FromCast = s => s.Cast.Hands.PushN,
    };

    /// <summary>Speed without push.</summary>
    public static readonly KeySpec PushSpeed = new("hands.push_speed", QuantityKind.Speed, "m/s", "Forward speed at which no push is left.")
    {
        Default = "3 m/s",
        Low = 0.5,
        High = 10,
        GuessLow = 2,
        GuessHigh = 4,
        FromCast = s => s.Cast.Hands.PushSpeedMS,
    };

    /// <summary>Mass that is pushed.</summary>
    public static readonly KeySpec PushedMass = new("hands.pushed_mass", QuantityKind.Mass, "kg", "Mass of arms and body that goes forward.")
    {
        Default = "5 kg",
        Low = 0.5,
        High = 30,
        GuessLow = 3,
        GuessHigh = 8,
        FromCast = s => s.Cast.Hands.PushedMassKg,
    };

    /// <summary>Travel of the turning point.</summary>
    public static readonly KeySpec Travel = new("hands.travel", QuantityKind.Length, "m", "Forward travel of the hands until they brake.")
    {
        Default = "0.4 m",
        Low = 0,
        High = 1.5,
        GuessLow = 0.3,
        GuessHigh = 0.5,
        FromCast = s => s.Cast.Hands.TravelM,
    };

    /// <summary>Rise time.</summary>
    public static readonly KeySpec Ramp = new("hands.ramp", QuantityKind.Time, "s", "Time over which torque and push rise.")
    {
        Default = "0.06 s",
        Low = 0.01,
        High = 0.5,
        GuessLow = 0.04,
        GuessHigh = 0.1,
        FromCast = s => s.Cast.Hands.RampS,
    };

    /// <summary>Start of the swing.</summary>
    public static readonly KeySpec StartAngle = new(
        "hands.start_angle", QuantityKind.Angle, "deg", "Butt from the vertical at the start, negative backward; less far back where the lure would hang in the water.")
    {
        Default = "-2 rad",
        Low = -2.6,
        High = 0.5,
        GuessLow = -2.3,
        GuessHigh = -1.2,
        FromCast = s => s.Cast.Hands.StartRad,
    };

    /// <summary>End of the swing.</summary>
    public static readonly KeySpec StopAngle = new("hands.stop_angle", QuantityKind.Angle, "deg", "Butt from the vertical where the hands begin to brake.")
    {
        Default = "0.7 rad",
        Low = -2.4,
        High = 1.6,
        GuessLow = 0.4,
        GuessHigh = 1,
        FromCast = s => s.Cast.Hands.StopRad,
    };

    /// <summary>How hard the swing stops.</summary>
    public static readonly KeySpec BrakeShare = new(
        "hands.brake_share", QuantityKind.Ratio, "", "Largest braking torque over the driving one; 0.2 is a soft follow-through, 1.3 all a person can.")
    {
        Default = "0.5",
        Low = 0.05,
        High = 2,
        GuessLow = 0.2,
        GuessHigh = 1.3,
        FromCast = s => s.Cast.Hands.BrakeShare,
    };

    /// <summary>Height of the turning point.</summary>
    public static readonly KeySpec Raise = new("hands.raise", QuantityKind.Length, "m", "Turning point of the cast above angler.hand_height.")
    {
        Default = "0.3 m",
        Low = 0,
        High = 1,
        GuessLow = 0,
        GuessHigh = 0.5,
        FromCast = s => s.Cast.Hands.RaiseM,
    };

    /// <summary>Error of the release.</summary>
    public static readonly KeySpec ReleaseError = new(
        "hands.release_error", QuantityKind.Time, "ms", "One sigma of the moment of release; without it the effort decides: 15, 8 or 5 ms.")
    {
        Low = 0,
        High = 0.05,
        FromCast = s => s.Cast.Hands.ReleaseErrorS,
    };

    /// <summary>Scatter from cast to cast.</summary>
    public static readonly KeySpec Scatter = new(
        "hands.scatter", QuantityKind.Ratio, "", "One sigma of the distance from cast to cast beyond the release; without it the effort decides: 0.06, 0.04 or 0.03.")
    {
        Low = 0,
        High = 0.2,
        FromCast = s => s.Cast.Hands.Scatter,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Torque, Speed, Inertia, Push, PushSpeed, PushedMass, Travel, Ramp, StartAngle, StopAngle, BrakeShare, Raise,
        ReleaseError, Scatter,
    ];
}
