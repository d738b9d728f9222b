using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Hands;
using LureSim.Model.Lures;
using LureSim.Model.Strike;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[strike]</c>: the stroke of the hands, which follows from its style, and what the hook needs and bears, which follows from the lure's hooks. Nearly
/// all are guesses (<c>docs/strike.md</c>).</summary>
public static class StrikeKeys
{
    /// <summary>Distance.</summary>
    public static readonly KeySpec Distance = new("strike.distance", QuantityKind.Length, "m", "Straight distance from rod tip to hook at the start; on the water 3 to 45 m.")
    {
        Parameter = Parameter.Of<StrikeTask>(nameof(StrikeTask.DistanceM)),
        Lens = Lens.OfStrike(t => t.DistanceM),
    };

    /// <summary>Slack.</summary>
    public static readonly KeySpec Slack = new(
        "strike.slack", QuantityKind.Length, "cm", "Slack at the start: unstretched line out less the distance; without it 30 cm, and none for a sweep.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeTask>(nameof(StrikeTask.SlackM)),
        Lens = Lens.OfStrike(t => t.SlackM),
    };

    /// <summary>Style.</summary>
    public static readonly KeySpec Style = new(
        "strike.style", QuantityKind.Choice, "", "How the hook is set: a snap of the wrists, a haul with arms and back, or a sideways sweep; without it a haul where cover.kind is mat, else a snap.")
    {
        HasNoDefault = true,
        Choices = [new("snap", (int)StrikeStyle.Snap), new("haul", (int)StrikeStyle.Haul), new("sweep", (int)StrikeStyle.Sweep)],
        Lens = Lens.OfStrike(t => (int)t.Stroke.Style),
    };

    /// <summary>Style where none is said: over a mat people haul (common practice, no source).</summary>
    /// <param name="kind">Cover.</param>
    public static StrikeStyle UsualStyle(CoverKind kind) => kind == CoverKind.Mat ? StrikeStyle.Haul : StrikeStyle.Snap;

    /// <summary>Effort.</summary>
    public static readonly KeySpec Effort = new("strike.effort", QuantityKind.Ratio, "", "Share of full strength in the strike; 1 is all that the person has.")
    {
        Words = "effort of the strike",
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.Effort)),
        Lens = Lens.OfStrike(t => t.Stroke.Effort),
    };

    /// <summary>Time.</summary>
    public static readonly KeySpec Duration = new("strike.duration", QuantityKind.Time, "s", "Time that is computed from the first movement of the hands.")
    {
        Parameter = Parameter.Of<StrikeTask>(nameof(StrikeTask.DurationS)),
        Lens = Lens.OfStrike(t => t.DurationS),
    };

    /// <summary>Torque.</summary>
    public static readonly KeySpec Torque = new(
        "strike.torque", QuantityKind.Torque, "N m", "Torque of the hands at rest and at full effort; without it the style decides: 25 N m for a snap, 40 N m for haul and sweep.")
    {
        Words = "torque of the hands in the strike",
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.TorqueNm)),
        Lens = Lens.OfStrike(t => t.Stroke.TorqueNm),
    };

    /// <summary>Turning speed.</summary>
    public static readonly KeySpec TurnSpeed = new(
        "strike.turn_speed", QuantityKind.AngularSpeed, "rad/s", "Turning speed at which the hands have no torque left; without it the style decides: 14, 12 or 6 rad/s.")
    {
        Words = "turning speed of the hands in the strike",
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.SpeedRadS)),
        Lens = Lens.OfStrike(t => t.Stroke.SpeedRadS),
    };

    /// <summary>Pull.</summary>
    public static readonly KeySpec Pull = new(
        "strike.pull", QuantityKind.Force, "N", "Pull of arms and body away from the fish at rest and at full effort; without it the style decides: 30 N for a snap, 100 N for haul and sweep.")
    {
        Words = "pull of arms and body in the strike",
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.PullN)),
        Lens = Lens.OfStrike(t => t.Stroke.PullN),
    };

    /// <summary>Travel.</summary>
    public static readonly KeySpec Travel = new(
        "strike.travel", QuantityKind.Length, "m", "Travel of the hands away from the fish; without it the style decides: 0.15, 0.4 or 0.6 m.")
    {
        Words = "travel of the hands in the strike",
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.TravelM)),
        Lens = Lens.OfStrike(t => t.Stroke.TravelM),
    };

    /// <summary>Rise time.</summary>
    public static readonly KeySpec Ramp = new("strike.ramp", QuantityKind.Time, "s", "Time over which torque and pull rise; without it the style decides: 0.04, 0.08 or 0.35 s.")
    {
        Words = "rise time of the strike",
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.RampS)),
        Lens = Lens.OfStrike(t => t.Stroke.RampS),
    };

    /// <summary>Start.</summary>
    public static readonly KeySpec StartAngle = new(
        "strike.start_angle", QuantityKind.Angle, "deg", "Butt at the start, from square to the line, negative toward the fish; without it the style decides: -74 deg for snap and haul, -69 deg for a sweep.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.StartRad)),
        Lens = Lens.OfStrike(t => t.Stroke.StartRad),
    };

    /// <summary>Stop.</summary>
    public static readonly KeySpec StopAngle = new(
        "strike.stop_angle", QuantityKind.Angle, "deg", "Butt where the hands stop the rod, from square to the line, positive away from the fish; without it the style decides: 11, 17 or 29 deg.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.StopRad)),
        Lens = Lens.OfStrike(t => t.Stroke.StopRad),
    };

    /// <summary>Hold.</summary>
    public static readonly KeySpec HoldShare = new("strike.hold_share", QuantityKind.Ratio, "", "Torque with which the hands hold the rod after the stroke, over strike.torque.")
    {
        Words = "torque that holds the rod after the stroke",
        Parameter = Parameter.Of<StrikeStroke>(nameof(StrikeStroke.HoldShare)),
        Lens = Lens.OfStrike(t => t.Stroke.HoldShare),
    };

    /// <summary>Knots.</summary>
    public static readonly KeySpec KnotStrength = new("strike.knot_strength", QuantityKind.Ratio, "", "Strength of the knots over that of the line they are tied in.")
    {
        Words = "strength of the knots",
        Parameter = Parameter.Of<StrikeTask>(nameof(StrikeTask.KnotShare)),
        Lens = Lens.OfStrike(t => t.KnotShare),
    };

    /// <summary>Rod.</summary>
    public static readonly KeySpec RodLimit = new("strike.rod_limit", QuantityKind.Ratio, "", "Load that the rod bears at 45 deg of rod angle, over rod.bend_load.")
    {
        Words = "load that breaks the rod",
        Parameter = Parameter.Of<StrikeTask>(nameof(StrikeTask.RodFactor)),
        Lens = Lens.OfStrike(t => t.RodFactor),
    };

    /// <summary>Points.</summary>
    public static readonly KeySpec Points = new(
        "strike.points", QuantityKind.WholeNumber, "", "Points that share the load; without it 2 of a treble or double and 1 of a single, of the largest hook in lure.hooks.")
    {
        Words = "points that share the load",
        HasNoDefault = true,
        Parameter = Parameter.Of<HookHold>(nameof(HookHold.Points)),
        Lens = Lens.OfSetup(s => s.Hook.Points, Activities.Strike),
    };

    /// <summary>Setting.</summary>
    public static readonly KeySpec SetForce = new(
        "strike.set_force", QuantityKind.Force, "N", "Force that drives one point in over its barb; nobody has published it: without it a guess in proportion to the wire, 10 N (5 to 20) at 1 mm.")
    {
        Words = "force that sets a point",
        HasNoDefault = true,
        Parameter = Parameter.Of<HookHold>(nameof(HookHold.SetN)),
        Lens = Lens.OfSetup(s => s.Hook.SetN, Activities.Strike),
    };

    /// <summary>Tearing.</summary>
    public static readonly KeySpec TearForce = new(
        "strike.tear_force", QuantityKind.Force, "N", "Force at which one point tears out; nobody has published it: without it a guess in proportion to the wire, 45 N (20 to 100) at 1 mm.")
    {
        Words = "force at which a point tears out",
        HasNoDefault = true,
        Parameter = Parameter.Of<HookHold>(nameof(HookHold.HoldN)),
        Lens = Lens.OfSetup(s => s.Hook.HoldN, Activities.Strike),
    };

    /// <summary>Wire.</summary>
    public static readonly KeySpec WireForce = new(
        "strike.wire_force", QuantityKind.Force, "N", "Force at which the wire of one point bends open; without it from wire and gap of the hook size, which are from memory.")
    {
        Words = "force that bends a point open",
        HasNoDefault = true,
        Parameter = Parameter.Of<HookHold>(nameof(HookHold.WireN)),
        Lens = Lens.OfSetup(s => s.Hook.WireN, Activities.Strike),
    };

    /// <summary>Line segments.</summary>
    public static readonly KeySpec Nodes = new("strike.nodes", QuantityKind.WholeNumber, "", "Segments of the line in a strike at most, none shorter than 0.25 m.")
    {
        Parameter = Parameter.Of<StrikeSolverSpec>(nameof(StrikeSolverSpec.Nodes)),
        Lens = Lens.OfStrike(t => t.Solver.Nodes),
    };

    /// <summary>Step.</summary>
    public static readonly KeySpec Step = new("strike.step", QuantityKind.Time, "ms", "Time step of a strike.")
    {
        Parameter = Parameter.Of<StrikeSolverSpec>(nameof(StrikeSolverSpec.StepS)),
        Lens = Lens.OfStrike(t => t.Solver.StepS),
    };

    /// <summary>What the person is, not what hook and tackle are.</summary>
    public static readonly KeySpec[] OfHands = [Effort, Torque, TurnSpeed, Pull, Travel, Ramp, HoldShare];

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Distance, Slack, Style, Effort, Duration, Torque, TurnSpeed, Pull, Travel, Ramp, StartAngle, StopAngle, HoldShare, KnotStrength, RodLimit,
        Points, SetForce, TearForce, WireForce, Nodes, Step,
    ];
}
