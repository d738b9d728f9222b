using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[hands]</c>: the hands of a cast. What is not given follows from the casting style; all are rounded guesses, measured limits in
/// <c>docs/cast.md</c>.</summary>
public static class HandsKeys
{
    /// <summary>Torque at rest.</summary>
    public static readonly KeySpec Torque = new("hands.torque", QuantityKind.Torque, "N m", "Torque of the hands at rest and at full effort; without it the style decides: 9.5, 20 or 40 N m.")
    {
        Words = "torque of the hands",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.TorqueNm)),
        Lens = Lens.OfSetup(s => s.Hands.TorqueNm, Activities.Cast),
    };

    /// <summary>Speed without torque.</summary>
    public static readonly KeySpec Speed = new(
        "hands.speed", QuantityKind.AngularSpeed, "rad/s", "Turning speed at which the hands have no torque left at full effort; without it the style decides: 14, 13 or 13 rad/s.")
    {
        Words = "turning speed of the hands",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.SpeedRadS)),
        Lens = Lens.OfSetup(s => s.Hands.SpeedRadS, Activities.Cast),
    };

    /// <summary>Inertia of the hands.</summary>
    public static readonly KeySpec Inertia = new("hands.inertia", QuantityKind.Inertia, "kg m2", "Hands, forearm and reel about the turning point; without it the style decides: 0.012, 0.10 or 0.15 kg m2.")
    {
        Words = "inertia of hands and reel",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.InertiaKgM2)),
        Lens = Lens.OfSetup(s => s.Hands.InertiaKgM2, Activities.Cast),
    };

    /// <summary>Forward push.</summary>
    public static readonly KeySpec Push = new("hands.push", QuantityKind.Force, "N", "Forward push at rest and at full effort; without it the style decides: 10, 30 or 70 N.")
    {
        Words = "forward push of the hands",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushN)),
        Lens = Lens.OfSetup(s => s.Hands.PushN, Activities.Cast),
    };

    /// <summary>Speed without push.</summary>
    public static readonly KeySpec PushSpeed = new("hands.push_speed", QuantityKind.Speed, "m/s", "Forward speed at which no push is left at full effort; without it the style decides: 2, 2.5 or 3 m/s.")
    {
        Words = "speed of the forward push",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushSpeedMS)),
        Lens = Lens.OfSetup(s => s.Hands.PushSpeedMS, Activities.Cast),
    };

    /// <summary>Mass that is pushed.</summary>
    public static readonly KeySpec PushedMass = new("hands.pushed_mass", QuantityKind.Mass, "kg", "Mass of arms and body that goes forward; without it the style decides: 2, 3 or 5 kg.")
    {
        Words = "mass of arms and body pushed",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushedMassKg)),
        Lens = Lens.OfSetup(s => s.Hands.PushedMassKg, Activities.Cast),
    };

    /// <summary>Travel of the turning point.</summary>
    public static readonly KeySpec Travel = new("hands.travel", QuantityKind.Length, "m", "Forward travel of the hands until they brake; without it the style decides: 0.1, 0.3 or 0.4 m.")
    {
        Words = "travel of the hands",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.TravelM)),
        Lens = Lens.OfSetup(s => s.Hands.TravelM, Activities.Cast),
    };

    /// <summary>Rise time.</summary>
    public static readonly KeySpec Ramp = new("hands.ramp", QuantityKind.Time, "s", "Time over which torque and push rise; without it the style decides: 0.04, 0.06 or 0.06 s.")
    {
        Words = "rise time of the hands",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.RampS)),
        Lens = Lens.OfSetup(s => s.Hands.RampS, Activities.Cast),
    };

    /// <summary>Start of the swing.</summary>
    public static readonly KeySpec StartAngle = new(
        "hands.start_angle", QuantityKind.Angle, "deg", "Butt from the vertical at the start, negative backward; less far back where the lure would hang in the water; without it the style decides: -40, -60 or -74 deg.")
    {
        Words = "start of the swing",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.StartRad)),
        Lens = Lens.OfSetup(s => s.Hands.StartRad, Activities.Cast),
    };

    /// <summary>End of the swing.</summary>
    public static readonly KeySpec StopAngle = new("hands.stop_angle", QuantityKind.Angle, "deg", "Butt from the vertical where the hands brake if the line is never let go; without it the style decides: 34, 40 or 40 deg.")
    {
        Words = "stop of the swing",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.StopRad)),
        Lens = Lens.OfSetup(s => s.Hands.StopRad, Activities.Cast),
    };

    /// <summary>How hard the rod is caught.</summary>
    public static readonly KeySpec CatchShare = new(
        "hands.catch_share", QuantityKind.Ratio, "", "Largest torque with which the hands catch the rod after the release, over the driving one.")
    {
        Words = "strength of the catch",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.CatchShare)),
        Lens = Lens.OfSetup(s => s.Hands.CatchShare, Activities.Cast | Activities.Strike),
    };

    /// <summary>Fade of the drive.</summary>
    public static readonly KeySpec Fade = new("hands.fade", QuantityKind.Time, "ms", "Time over which the drive fades after the release and the catch rises.")
    {
        Words = "fade of the drive after the release",
        Default = "50 ms",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.FadeS)),
        Lens = Lens.OfSetup(s => s.Hands.FadeS, Activities.Cast),
    };

    /// <summary>Delay of the catch.</summary>
    public static readonly KeySpec CatchDelay = new("hands.catch_delay", QuantityKind.Time, "ms", "When the hands begin to catch the rod, from the release; negative before it.")
    {
        Words = "delay of the catch",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.CatchDelayS)),
        Lens = Lens.OfSetup(s => s.Hands.CatchDelayS, Activities.Cast),
    };

    /// <summary>Height of the turning point.</summary>
    public static readonly KeySpec Raise = new("hands.raise", QuantityKind.Length, "m", "Turning point of the cast above angler.hand_height.")
    {
        Words = "height of the turning point",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.RaiseM)),
        Lens = Lens.OfSetup(s => s.Hands.RaiseM, Activities.Cast),
    };

    /// <summary>Error of the release.</summary>
    public static readonly KeySpec ReleaseError = new(
        "hands.release_error", QuantityKind.Time, "ms", "One sigma of the moment of release; without it the skill decides: 15, 8 or 5 ms.")
    {
        Words = "error of the release",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.ReleaseErrorS)),
        Lens = Lens.OfSetup(s => s.Hands.ReleaseErrorS, Activities.Cast),
    };

    /// <summary>Scatter from cast to cast.</summary>
    public static readonly KeySpec Scatter = new(
        "hands.scatter", QuantityKind.Ratio, "", "One sigma of the distance from cast to cast beyond the release; without it the skill decides: 0.06, 0.04 or 0.03.")
    {
        Words = "scatter from cast to cast",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.Scatter)),
        Lens = Lens.OfSetup(s => s.Hands.Scatter, Activities.Cast),
    };

    /// <summary>Settling of the catch.</summary>
    public static readonly KeySpec Settling = new("hands.settling", QuantityKind.AngularSpeed, "rad/s", "Rate at which the catching hands settle, like a critically damped arm.")
    {
        Words = "settling of the catch",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.SettlingRadS)),
        Lens = Lens.OfSetup(s => s.Hands.SettlingRadS, Activities.Cast | Activities.Strike),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Torque, Speed, Inertia, Push, PushSpeed, PushedMass, Travel, Ramp, StartAngle, StopAngle, CatchShare, Fade, CatchDelay, Settling, Raise,
        ReleaseError, Scatter,
    ];
}
