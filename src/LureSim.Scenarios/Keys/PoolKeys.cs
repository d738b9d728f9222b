using LureSim.Model;
using LureSim.Model.Pool;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[pool]</c>.</summary>
public static class PoolKeys
{
    /// <summary>Tow speeds.</summary>
    public static readonly KeySpec Speeds = new(
        "pool.speeds", QuantityKind.Text, "", "Speeds of the tow, 1 to 20 of them, 0.05 to 2 m/s, parted by commas, the unit at each or at the last.")
    {
        Words = "speeds of the tow",
        Default = "0.15, 0.3, 0.5, 0.8 m/s",
        Lens = Lens.OfPool(_ => double.NaN),
    };

    /// <summary>Tow line.</summary>
    public static readonly KeySpec TowLine = new("pool.tow_line", QuantityKind.Length, "m", "Line from the hand to the line tie.")
    {
        Words = "length of the tow line",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.TowLineM)),
        Lens = Lens.OfPool(t => t.TowLineM),
    };

    /// <summary>Hand.</summary>
    public static readonly KeySpec HandHeight = new("pool.hand_height", QuantityKind.Length, "m", "Hand or rod tip over the water on the tow, less than the line is long.")
    {
        Words = "height of the towing hand",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.HandHeightM)),
        Lens = Lens.OfPool(t => t.HandHeightM),
    };

    /// <summary>Stiffness.</summary>
    public static readonly KeySpec TowStiffness = new("pool.tow_stiffness", QuantityKind.Force, "N", "EA of the tow line: pull over stretched share of its length.")
    {
        Words = "stiffness of the tow line",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.TowStiffnessN)),
        Lens = Lens.OfPool(t => t.TowStiffnessN),
    };

    /// <summary>Damping.</summary>
    public static readonly KeySpec TowDamping = new("pool.tow_damping_time", QuantityKind.Time, "ms", "Damping of the tow line over its stiffness.")
    {
        Words = "damping of the tow line",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.TowDampingTimeS)),
        Lens = Lens.OfPool(t => t.TowDampingTimeS),
    };

    /// <summary>Way of the tow.</summary>
    public static readonly KeySpec TowDistance = new("pool.tow_distance", QuantityKind.Length, "m", "Way of the hand at each speed; the last 30 % of it count.")
    {
        Words = "way of the tow",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.TowDistanceM)),
        Lens = Lens.OfPool(t => t.TowDistanceM),
    };

    /// <summary>Heading at the start of a tow.</summary>
    public static readonly KeySpec TowHeading = new("pool.tow_heading", QuantityKind.Angle, "deg", "Heading off the line at the start of a tow, to the left.")
    {
        Words = "heading at the start of the tow",
        Default = "5 deg",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.TowHeadingRad)),
        Lens = Lens.OfPool(t => t.TowHeadingRad),
    };

    /// <summary>Speed of the push.</summary>
    public static readonly KeySpec PushSpeed = new("pool.push_speed", QuantityKind.Speed, "m/s", "Speed at which the lure is let go, of push and coast-down.")
    {
        Words = "speed of the push",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.PushSpeedMS)),
        Lens = Lens.OfPool(t => t.PushSpeedMS),
    };

    /// <summary>Drift of the push.</summary>
    public static readonly KeySpec PushDrift = new("pool.push_drift", QuantityKind.Angle, "deg", "Angle between the push and the lure's axis; the coast-down has none.")
    {
        Words = "drift at the push",
        Default = "3 deg",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.PushDriftRad)),
        Lens = Lens.OfPool(t => t.PushDriftRad),
    };

    /// <summary>Heel.</summary>
    public static readonly KeySpec Heel = new("pool.heel", QuantityKind.Angle, "deg", "Heel at which the lure is let go to roll; at most half of what it rights itself from.")
    {
        Words = "heel at which it is let go",
        Default = "20 deg",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.HeelRad)),
        Lens = Lens.OfPool(t => t.HeelRad),
    };

    /// <summary>Press.</summary>
    public static readonly KeySpec Press = new("pool.press", QuantityKind.Length, "mm", "How far the lure, or its nose, is pressed down before it is let go to bob; at most half of its highest point over the water.")
    {
        Words = "depth from which it bobs",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.PressM)),
        Lens = Lens.OfPool(t => t.PressM),
    };

    /// <summary>Step.</summary>
    public static readonly KeySpec Step = new("pool.step", QuantityKind.Time, "ms", "Time step of pushes and swings; a tow takes steps twice as long.")
    {
        Words = "time step of the pool",
        Parameter = Parameter.Of<PoolTask>(nameof(PoolTask.StepS)),
        Lens = Lens.OfPool(t => t.StepS),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
        [Speeds, TowLine, HandHeight, TowStiffness, TowDamping, TowDistance, TowHeading, PushSpeed, PushDrift, Heel, Press, Step];
}
