using LureSim.Model.Cast;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[cast]</c>.</summary>
public static class CastKeys
{
    /// <summary>Effort.</summary>
    public static readonly KeySpec Effort = new(
        "cast.effort", QuantityKind.Ratio, "", "Factor on torque and push of the hands: a word, a guess but for practised, which is 1 by definition; or a number.")
    {
        Default = "practised",
        Low = 0.05,
        High = 3,
        Choices = [new("beginner", 0.5, 0.35, 0.7), new("practised", 1.0), new("expert", 1.5, 1.25, 1.9)],
        FromCast = s => s.Cast.Hands.Effort,
    };

    /// <summary>Line beyond the tip.</summary>
    public static readonly KeySpec Overhang = new("cast.overhang", QuantityKind.Length, "in", "Line from tip to lure at the start.")
    {
        Default = "0.45 m",
        Low = 0.05,
        High = 3,
        FromCast = s => s.Cast.OverhangM,
    };

    /// <summary>Moment of release.</summary>
    public static readonly KeySpec Release = new(
        "cast.release", QuantityKind.Time, "s", "When the line is let go: at a time from the start of the swing, at an angle of the butt from the vertical, or at the best moment.")
    {
        Default = "best",
        Low = 0,
        High = 2,
        OtherKind = QuantityKind.Angle,
        OtherRange = (-2.6, 1.6),
        Choices = [new("best", 0.0)],
        FromCast = s => s.Cast.Release.Mode == ReleaseMode.AtTime ? s.Cast.Release.Value : double.NaN,
    };

    /// <summary>Release too late.</summary>
    public static readonly KeySpec ReleaseLate = new(
        "cast.release_late", QuantityKind.Time, "ms", "How much later than that the line is let go; negative is too early.")
    {
        Default = "0 s",
        Low = -0.1,
        High = 0.1,
        FromCast = s => s.Cast.Release.ErrorS,
    };

    /// <summary>Thumb on the spool.</summary>
    public static readonly KeySpec Thumb = new("cast.thumb", QuantityKind.Torque, "mN m", "Friction of the thumb on a revolving spool while line is loose.")
    {
        Default = "0.003 N m",
        Low = 0,
        High = 0.5,
        GuessLow = 0,
        GuessHigh = 0.01,
        FromCast = s => s.Cast.Spool.ThumbNm,
    };

    /// <summary>Lag of the thumb.</summary>
    public static readonly KeySpec ThumbDelay = new("cast.thumb_delay", QuantityKind.Time, "s", "Lag of the thumb behind loose line.")
    {
        Default = "0.15 s",
        Low = 0,
        High = 2,
        GuessLow = 0.1,
        GuessHigh = 0.2,
        FromCast = s => s.Cast.Spool.ThumbDelayS,
    };

    /// <summary>Pick-up factor.</summary>
    public static readonly KeySpec PickUp = new(
        "cast.pick_up", QuantityKind.Ratio, "", "K in T = c_g (T_0 + K mu v^2) of a fixed spool; without it the line decides: 2 for braid, 1.2 for single strands.")
    {
        Low = 0,
        High = 10,
        FromCast = s => s.Cast.FixedSpool.PickUpFactor,
    };

    /// <summary>Tension at rest.</summary>
    public static readonly KeySpec RestTension = new("cast.rest_tension", QuantityKind.Force, "N", "T_0 of a fixed spool.")
    {
        Default = "0.005 N",
        Low = 0,
        High = 1,
        GuessLow = 0,
        GuessHigh = 0.02,
        FromCast = s => s.Cast.FixedSpool.RestTensionN,
    };

    /// <summary>Friction in the rings.</summary>
    public static readonly KeySpec RingFriction = new(
        "cast.ring_friction", QuantityKind.Ratio, "", "c_g, tension beyond the rings over tension before them, fixed spool.")
    {
        Default = "1.1",
        Low = 1,
        High = 3,
        GuessLow = 1,
        GuessHigh = 1.3,
        FromCast = s => s.Cast.FixedSpool.RingFactor,
    };

    /// <summary>Air along the line.</summary>
    public static readonly KeySpec LineFriction = new(
        "cast.line_friction", QuantityKind.Ratio, "", "Air friction along the line over the thread-drawing law; without it 0.8 for braid, 0.4 for single strands.")
    {
        Low = 0,
        High = 5,
        FromCast = s => s.Cast.Flight.FrictionFactor,
    };

    /// <summary>Wet line.</summary>
    public static readonly KeySpec WetLine = new(
        "cast.wet_line", QuantityKind.Ratio, "", "Mass of the wet line over dry; without it 1.3 for braid, 1 for single strands.")
    {
        Low = 0,
        High = 3,
        FromCast = s => s.Cast.Flight.WetFactor,
    };

    /// <summary>Line nodes.</summary>
    public static readonly KeySpec NodeSpacing = new("cast.node_spacing", QuantityKind.Length, "m", "Spacing of line nodes in the air.")
    {
        Default = "2 m",
        Low = 0.5,
        High = 10,
        FromCast = s => s.Cast.Numerics.NodeSpacingM,
    };

    /// <summary>Step of the swing.</summary>
    public static readonly KeySpec SwingStep = new("cast.swing_step", QuantityKind.Time, "ms", "Time step while the rod moves.")
    {
        Default = "0.0005 s",
        Low = 1e-5,
        High = 1e-3,
        FromCast = s => s.Cast.Numerics.SwingStepS,
    };

    /// <summary>Step of the flight.</summary>
    public static readonly KeySpec FlightStep = new("cast.flight_step", QuantityKind.Time, "ms", "Time step after that.")
    {
        Default = "0.001 s",
        Low = 1e-5,
        High = 2e-3,
        FromCast = s => s.Cast.Numerics.FlightStepS,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Effort, Overhang, Release, ReleaseLate, Thumb, ThumbDelay, PickUp, RestTension, RingFriction, LineFriction, WetLine,
        NodeSpacing, SwingStep, FlightStep,
    ];
}
