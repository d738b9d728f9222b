using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[angler]</c>.</summary>
public static class AnglerKeys
{
    /// <summary>Height of the hand.</summary>
    public static readonly KeySpec HandHeight = new("angler.hand_height", QuantityKind.Length, "m", "Height of the rod hand over the water.")
    {
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.HandHeightM)),
        Lens = Lens.OfSetup(s => s.Angler.HandHeightM),
    };

    /// <summary>Rod above the horizontal.</summary>
    public static readonly KeySpec RodElevation = new(
        "angler.rod_elevation", QuantityKind.Angle, "deg", "Rod above the horizontal at rest; negative points the tip at the water.")
    {
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.RodElevationRad)),
        Lens = Lens.OfSetup(s => s.Angler.RodElevationRad),
    };

    /// <summary>Rod from the line.</summary>
    public static readonly KeySpec RodBearing = new(
        "angler.rod_bearing", QuantityKind.Angle, "deg", "Rod from the direction of the lure: 0 points at it, 90 deg is square to the line.")
    {
        Low = 0,
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.RodBearingRad)),
        Lens = Lens.OfSetup(s => s.Angler.RodBearingRad),
    };

    /// <summary>Time of the pull.</summary>
    public static readonly KeySpec PullTime = new("angler.pull_time", QuantityKind.Time, "s", "Time of the pull in a twitch.")
    {
        Words = "time of the pull",
        Default = "0.10 s",
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.PullTimeS)),
        Lens = Lens.OfSetup(s => s.Angler.PullTimeS),
    };

    /// <summary>Time of the quick return.</summary>
    public static readonly KeySpec ReturnTime = new("angler.return_time", QuantityKind.Time, "s", "Time of the quick return after the pull.")
    {
        Words = "time of the return",
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.ReturnTimeS)),
        Lens = Lens.OfSetup(s => s.Angler.ReturnTimeS),
    };

    /// <summary>Share of the stroke thrown back.</summary>
    public static readonly KeySpec ReturnShare = new(
        "angler.return_share", QuantityKind.Ratio, "", "Share of the stroke given back in the quick return; the rest drifts back until the next pull.")
    {
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.ReturnShare)),
        Lens = Lens.OfSetup(s => s.Angler.ReturnShare),
    };

    /// <summary>Torque the wrist can repeat.</summary>
    public static readonly KeySpec SustainedTorque = new(
        "angler.sustained_torque", QuantityKind.Torque, "N m", "Wrist torque that can be repeated for a long time.")
    {
        Words = "torque the wrist can repeat",
        Parameter = Parameter.Of<AnglerSpec>(nameof(AnglerSpec.SustainedTorqueNm)),
        Lens = Lens.OfSetup(s => s.Angler.SustainedTorqueNm),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [HandHeight, RodElevation, RodBearing, PullTime, ReturnTime, ReturnShare, SustainedTorque];
}
