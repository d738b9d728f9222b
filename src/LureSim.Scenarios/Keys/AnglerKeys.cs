using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[angler]</c>.</summary>
public static class AnglerKeys
{
    /// <summary>Height of the hand.</summary>
    public static readonly KeySpec HandHeight = new("angler.hand_height", QuantityKind.Length, "m", "Height of the rod hand over the water.")
    {
        Default = "1.2 m",
        Low = 0.3,
        High = 4,
        FromSpec = s => s.Angler.HandHeightM,
    };

    /// <summary>Rod above the horizontal.</summary>
    public static readonly KeySpec RodElevation = new(
        "angler.rod_elevation", QuantityKind.Angle, "deg", "Rod above the horizontal at rest; negative points the tip at the water.")
    {
        Default = "-0.35 rad",
        Low = -1.4,
        High = 1.4,
        FromSpec = s => s.Angler.RodElevationRad,
    };

    /// <summary>Rod from the line.</summary>
    public static readonly KeySpec RodBearing = new(
        "angler.rod_bearing", QuantityKind.Angle, "deg", "Rod from the direction of the lure: 0 points at it, 90 deg is square to the line.")
    {
        Default = "1.05 rad",
        Low = 0,
        High = 2.6,
        FromSpec = s => s.Angler.RodBearingRad,
    };

    /// <summary>Time of the pull.</summary>
    public static readonly KeySpec PullTime = new("angler.pull_time", QuantityKind.Time, "s", "Time of the pull in a twitch.")
    {
        Default = "0.10 s",
        Low = 0.03,
        High = 1,
        GuessLow = 0.06,
        GuessHigh = 0.18,
        FromSpec = s => s.Angler.PullTimeS,
    };

    /// <summary>Time of the quick return.</summary>
    public static readonly KeySpec ReturnTime = new("angler.return_time", QuantityKind.Time, "s", "Time of the quick return after the pull.")
    {
        Default = "0.15 s",
        Low = 0.03,
        High = 2,
        GuessLow = 0.08,
        GuessHigh = 0.3,
        FromSpec = s => s.Angler.ReturnTimeS,
    };

    /// <summary>Share of the stroke thrown back.</summary>
    public static readonly KeySpec ReturnShare = new(
        "angler.return_share", QuantityKind.Ratio, "", "Share of the stroke given back in the quick return; the rest drifts back until the next pull.")
    {
        Default = "1",
        Low = 0,
        High = 1,
        FromSpec = s => s.Angler.ReturnShare,
    };

    /// <summary>Torque the wrist can repeat.</summary>
    public static readonly KeySpec SustainedTorque = new(
        "angler.sustained_torque", QuantityKind.Torque, "N m", "Wrist torque that can be repeated for a long time.")
    {
        Default = "3 N m",
        Low = 0.1,
        High = 30,
        GuessLow = 2,
        GuessHigh = 5,
        FromSpec = s => s.Angler.SustainedTorqueNm,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [HandHeight, RodElevation, RodBearing, PullTime, ReturnTime, ReturnShare, SustainedTorque];
}
