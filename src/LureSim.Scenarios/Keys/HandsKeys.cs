using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[hands]</c>: the hands of a cast. All defaults are rounded guesses; measured limits in <c>docs/cast.md</c>.</summary>
public static class HandsKeys
{
    /// <summary>Torque at rest.</summary>
    public static readonly KeySpec Torque = new("hands.torque", QuantityKind.Torque, "N m", "Torque of both hands at rest and at effort 1; wrist alone 8 to 15 N m.")
    {
        Words = "torque of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.TorqueNm)),
        Lens = Lens.OfSetup(s => s.Hands.TorqueNm, Activities.Cast),
    };

    /// <summary>Speed without torque.</summary>
    public static readonly KeySpec Speed = new(
        "hands.speed", QuantityKind.AngularSpeed, "rad/s", "Turning speed at which the hands have no torque left; wrist flick 15 to 25 rad/s.")
    {
        Words = "turning speed of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.SpeedRadS)),
        Lens = Lens.OfSetup(s => s.Hands.SpeedRadS, Activities.Cast),
    };

    /// <summary>Inertia of the hands.</summary>
    public static readonly KeySpec Inertia = new("hands.inertia", QuantityKind.Inertia, "kg m2", "Hands, forearm and reel about the turning point.")
    {
        Words = "inertia of hands and reel",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.InertiaKgM2)),
        Lens = Lens.OfSetup(s => s.Hands.InertiaKgM2, Activities.Cast),
    };

    /// <summary>Forward push.</summary>
    public static readonly KeySpec Push = new("hands.push", QuantityKind.Force, "N", "Forward push at rest and at effort 1.")
    {
        Words = "forward push of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushN)),
        Lens = Lens.OfSetup(s => s.Hands.PushN, Activities.Cast),
    };

    /// <summary>Speed without push.</summary>
    public static readonly KeySpec PushSpeed = new("hands.push_speed", QuantityKind.Speed, "m/s", "Forward speed at which no push is left.")
    {
        Words = "speed of the forward push",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushSpeedMS)),
        Lens = Lens.OfSetup(s => s.Hands.PushSpeedMS, Activities.Cast),
    };

    /// <summary>Mass that is pushed.</summary>
    public static readonly KeySpec PushedMass = new("hands.pushed_mass", QuantityKind.Mass, "kg", "Mass of arms and body that goes forward.")
    {
        Words = "mass of arms and body pushed",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.PushedMassKg)),
        Lens = Lens.OfSetup(s => s.Hands.PushedMassKg, Activities.Cast),
    };

    /// <summary>Travel of the turning point.</summary>
    public static readonly KeySpec Travel = new("hands.travel", QuantityKind.Length, "m", "Forward travel of the hands until they brake.")
    {
        Words = "travel of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.TravelM)),
        Lens = Lens.OfSetup(s => s.Hands.TravelM, Activities.Cast),
    };

    /// <summary>Rise time.</summary>
    public static readonly KeySpec Ramp = new("hands.ramp", QuantityKind.Time, "s", "Time over which torque and push rise.")
    {
        Words = "rise time of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.RampS)),
        Lens = Lens.OfSetup(s => s.Hands.RampS, Activities.Cast),
    };

    /// <summary>Start of the swing.</summary>
    public static readonly KeySpec StartAngle = new(
        "hands.start_angle", QuantityKind.Angle, "deg", "Butt from the vertical at the start, negative backward; less far back where the lure would hang in the water.")
    {
        Words = "start of the swing",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.StartRad)),
        Lens = Lens.OfSetup(s => s.Hands.StartRad, Activities.Cast),
    };

    /// <summary>End of the swing.</summary>
    public static readonly KeySpec StopAngle = new("hands.stop_angle", QuantityKind.Angle, "deg", "Butt from the vertical where the hands begin to brake.")
    {
        Words = "stop of the swing",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.StopRad)),
        Lens = Lens.OfSetup(s => s.Hands.StopRad, Activities.Cast),
    };

    /// <summary>How hard the swing stops.</summary>
    public static readonly KeySpec BrakeShare = new(
        "hands.brake_share", QuantityKind.Ratio, "", "Largest braking torque over the driving one; 0.2 is a soft follow-through, 1.3 all a person can.")
    {
        Words = "braking of the hands",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.BrakeShare)),
        Lens = Lens.OfSetup(s => s.Hands.BrakeShare, Activities.Cast),
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
        "hands.release_error", QuantityKind.Time, "ms", "One sigma of the moment of release; without it the effort decides: 15, 8 or 5 ms.")
    {
        Words = "error of the release",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.ReleaseErrorS)),
        Lens = Lens.OfSetup(s => s.Hands.ReleaseErrorS, Activities.Cast),
    };

    /// <summary>Scatter from cast to cast.</summary>
    public static readonly KeySpec Scatter = new(
        "hands.scatter", QuantityKind.Ratio, "", "One sigma of the distance from cast to cast beyond the release; without it the effort decides: 0.06, 0.04 or 0.03.")
    {
        Words = "scatter from cast to cast",
        HasNoDefault = true,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.Scatter)),
        Lens = Lens.OfSetup(s => s.Hands.Scatter, Activities.Cast),
    };

    /// <summary>Settling after the stop.</summary>
    public static readonly KeySpec Settling = new("hands.settling", QuantityKind.AngularSpeed, "rad/s", "Rate at which the braked hands settle, like a critically damped arm; it acts after the release.")
    {
        Words = "settling of the hands after the stop",
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.SettlingRadS)),
        Lens = Lens.OfSetup(s => s.Hands.SettlingRadS, Activities.Cast),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Torque, Speed, Inertia, Push, PushSpeed, PushedMass, Travel, Ramp, StartAngle, StopAngle, BrakeShare, Raise,
        ReleaseError, Scatter, Settling,
    ];
}
