using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[cast]</c>.</summary>
public static class CastKeys
{
    /// <summary>Casting style.</summary>
    public static readonly KeySpec Style = new("cast.style", QuantityKind.Choice, "", "How the cast is made; sets what is not given in table [hands].")
    {
        Default = "two-handed",
        Choices = [new("wrist-flick", (int)CastingStyle.WristFlick), new("one-handed", (int)CastingStyle.OneHanded), new("two-handed", (int)CastingStyle.TwoHanded)],
        Lens = Lens.OfSetup(s => (int)s.Hands.Style, Activities.Cast),
    };

    /// <summary>Effort.</summary>
    public static readonly KeySpec Effort = new(
        "cast.effort", QuantityKind.Ratio, "", "Share of the hands' full torque and push, its square root on their speed: a word or a number; 1 is all that a practised person has.")
    {
        Words = "effort of the cast",
        Default = "everyday",
        Choices = [new("gentle", 0.3, 0.2, 0.4), new("everyday", 0.5, 0.35, 0.65), new("full", 1.0)],
        GuessLow = 0.35,
        GuessHigh = 0.65,
        Parameter = Parameter.Of<HandsSpec>(nameof(HandsSpec.Effort)),
        Lens = Lens.OfSetup(s => s.Hands.Effort, Activities.Cast),
    };

    /// <summary>Skill.</summary>
    public static readonly KeySpec Skill = new("cast.skill", QuantityKind.Choice, "", "How well the release is timed; sets what is not given of hands.release_error and hands.scatter.")
    {
        Default = "practised",
        Choices = [new("beginner", (int)CastingSkill.Beginner), new("practised", (int)CastingSkill.Practised), new("expert", (int)CastingSkill.Expert)],
        Lens = Lens.OfSetup(s => (int)s.Hands.Skill, Activities.Cast),
    };

    /// <summary>Line beyond the tip.</summary>
    public static readonly KeySpec Overhang = new("cast.overhang", QuantityKind.Length, "in", "Line from tip to lure at the start.")
    {
        Parameter = Parameter.Of<CastTask>(nameof(CastTask.OverhangM)),
        Lens = Lens.OfCast(t => t.OverhangM),
    };

    /// <summary>Moment of release.</summary>
    public static readonly KeySpec Release = new(
        "cast.release", QuantityKind.Time, "s", "When the line is let go: at a time from the start of the swing, at an angle of the butt from the vertical, or at the best moment.")
    {
        Default = "best",
        Low = 0,
        High = ReleaseSpec.LatestS,
        OtherKind = QuantityKind.Angle,
        OtherRange = (ReleaseSpec.FirstRad, ReleaseSpec.LastRad),
        Choices = [new("best", 0.0)],
        Lens = Lens.OfCast(t => t.Release.Mode == ReleaseMode.AtTime ? t.Release.Value : double.NaN),
    };

    /// <summary>Release too late.</summary>
    public static readonly KeySpec ReleaseLate = new(
        "cast.release_late", QuantityKind.Time, "ms", "How much later than that the line is let go; negative is too early.")
    {
        Parameter = Parameter.Of<ReleaseSpec>(nameof(ReleaseSpec.ErrorS)),
        Lens = Lens.OfCast(t => t.Release.ErrorS),
    };

    /// <summary>Thumb on the spool.</summary>
    public static readonly KeySpec Thumb = new("cast.thumb", QuantityKind.Force, "N", "Press of the thumb on a revolving spool while line is loose; 0 N for no thumb.")
    {
        Words = "thumb on the spool",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.ThumbPressN)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.ThumbPressN, Activities.Cast),
    };

    /// <summary>Friction of the thumb.</summary>
    public static readonly KeySpec ThumbFriction = new("cast.thumb_friction", QuantityKind.Ratio, "", "Friction coefficient of the thumb on the wound line.")
    {
        Words = "friction of the thumb",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.ThumbFriction)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.ThumbFriction, Activities.Cast),
    };

    /// <summary>Lag of the thumb.</summary>
    public static readonly KeySpec ThumbDelay = new("cast.thumb_delay", QuantityKind.Time, "s", "Lag of the thumb behind loose line.")
    {
        Words = "lag of the thumb",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.ThumbDelayS)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.ThumbDelayS, Activities.Cast),
    };

    /// <summary>Thumb pressed fully.</summary>
    public static readonly KeySpec ThumbFull = new("cast.thumb_full", QuantityKind.Length, "cm", "Loose line at which the thumb presses fully, about one loop.")
    {
        Words = "loose line at full thumb",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.ThumbFullM)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.ThumbFullM, Activities.Cast),
    };

    /// <summary>Pick-up factor.</summary>
    public static readonly KeySpec PickUp = new(
        "cast.pick_up", QuantityKind.Ratio, "", "K in T = c_g (T_0 + K mu v^2) of a fixed spool; without it the line decides: 2 for braid, 1.4 for single strands.")
    {
        Words = "pick-up of the line off a fixed spool",
        HasNoDefault = true,
        Parameter = Parameter.Of<FixedSpoolSpec>(nameof(FixedSpoolSpec.PickUpFactor)),
        Lens = Lens.OfSetup(s => s.Reel.FixedSpool.PickUpFactor, Activities.Cast),
    };

    /// <summary>Tension at rest.</summary>
    public static readonly KeySpec RestTension = new("cast.rest_tension", QuantityKind.Force, "N", "T_0 of a fixed spool; without it 3 mN for a line of 0.30 mm, growing with its square.")
    {
        Words = "pull that starts the line off the spool",
        HasNoDefault = true,
        Parameter = Parameter.Of<FixedSpoolSpec>(nameof(FixedSpoolSpec.RestTensionN)),
        Lens = Lens.OfSetup(s => s.Reel.FixedSpool.RestTensionN, Activities.Cast),
    };

    /// <summary>Friction in the rings.</summary>
    public static readonly KeySpec RingFriction = new(
        "cast.ring_friction", QuantityKind.Ratio, "", "c_g, tension beyond the rings over tension before them, fixed spool.")
    {
        Words = "friction in the rod rings",
        Parameter = Parameter.Of<FixedSpoolSpec>(nameof(FixedSpoolSpec.RingFactor)),
        Lens = Lens.OfSetup(s => s.Reel.FixedSpool.RingFactor, Activities.Cast),
    };

    /// <summary>Friction of the line in the rings, revolving spool.</summary>
    public static readonly KeySpec RingDrag = new("cast.ring_drag", QuantityKind.Force, "N", "Friction of the line in the rings, revolving spool.")
    {
        Words = "friction of the line in the rings",
        Parameter = Parameter.Of<SpoolSpec>(nameof(SpoolSpec.RingDragN)),
        Lens = Lens.OfSetup(s => s.Reel.Spool.RingDragN, Activities.Cast),
    };

    /// <summary>Air along the line.</summary>
    public static readonly KeySpec LineFriction = new(
        "cast.line_friction", QuantityKind.Ratio, "", "Air friction along the line over the thread-drawing law; without it 0.8 for braid, 0.5 for single strands.")
    {
        Words = "air friction along the line",
        HasNoDefault = true,
        Parameter = Parameter.Of<LineFlightSpec>(nameof(LineFlightSpec.FrictionFactor)),
        Lens = Lens.OfSetup(s => s.Line.Flight.FrictionFactor, Activities.Cast),
    };

    /// <summary>Wet line.</summary>
    public static readonly KeySpec WetLine = new(
        "cast.wet_line", QuantityKind.Ratio, "", "Mass of the wet line over dry; without it 1.3 for braid, 1.03 for single strands.")
    {
        Words = "water carried by the line",
        HasNoDefault = true,
        Parameter = Parameter.Of<LineFlightSpec>(nameof(LineFlightSpec.WetFactor)),
        Lens = Lens.OfSetup(s => s.Line.Flight.WetFactor, Activities.Cast),
    };

    /// <summary>Line nodes.</summary>
    public static readonly KeySpec NodeSpacing = new("cast.node_spacing", QuantityKind.Length, "m", "Spacing of line nodes in the air within 3 m of the tip, up to four times that beyond.")
    {
        High = 5,
        Parameter = Parameter.Of<CastSolverSpec>(nameof(CastSolverSpec.NodeSpacingM)),
        Lens = Lens.OfCast(t => t.Solver.NodeSpacingM),
    };

    /// <summary>Step of the swing.</summary>
    public static readonly KeySpec SwingStep = new("cast.swing_step", QuantityKind.Time, "ms", "Time step while the rod moves.")
    {
        Parameter = Parameter.Of<CastSolverSpec>(nameof(CastSolverSpec.SwingStepS)),
        Lens = Lens.OfCast(t => t.Solver.SwingStepS),
    };

    /// <summary>Step of the flight.</summary>
    public static readonly KeySpec FlightStep = new("cast.flight_step", QuantityKind.Time, "ms", "Time step after that.")
    {
        Parameter = Parameter.Of<CastSolverSpec>(nameof(CastSolverSpec.FlightStepS)),
        Lens = Lens.OfCast(t => t.Solver.FlightStepS),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Style, Effort, Skill, Overhang, Release, ReleaseLate, Thumb, ThumbFriction, ThumbDelay, ThumbFull, PickUp, RestTension, RingFriction, RingDrag, LineFriction, WetLine,
        NodeSpacing, SwingStep, FlightStep,
    ];
}
