using LureSim.Model;
using LureSim.Model.Reels;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[reel]</c>.</summary>
public static class ReelKeys
{
    private const string SpoolGroup = "spool";

    /// <summary>Spool kind.</summary>
    public static readonly KeySpec Kind = new("reel.kind", QuantityKind.Choice, "", "Whether the spool turns in the cast or stands still.")
    {
        Default = "revolving",
        Choices = [new("revolving", (int)ReelKind.Revolving), new("fixed", (int)ReelKind.Fixed)],
        Lens = Lens.OfSetup(s => (int)s.Reel.Kind),
    };

    /// <summary>Gear ratio.</summary>
    public static readonly KeySpec Ratio = new("reel.ratio", QuantityKind.Ratio, "", "Spool or rotor turns per handle turn; 7.1 or \"7.1:1\".")
    {
        Due = "a gear ratio is due, for example \"7.1:1\"",
        Parameter = Parameter.Of<ReelSpec>(nameof(ReelSpec.Ratio)),
        Lens = Lens.OfSetup(s => s.Reel.Ratio),
    };

    /// <summary>Full spool.</summary>
    public static readonly KeySpec SpoolDiameter = new("reel.spool_diameter", QuantityKind.Length, "mm", "Diameter of the wound line on a full spool.")
    {
        Words = "diameter of the wound line",
        Group = SpoolGroup,
        Parameter = Parameter.Of<ReelSpec>(nameof(ReelSpec.SpoolDiameterM)),
        Lens = Lens.OfSetup(s => s.Reel.SpoolDiameterM),
    };

    /// <summary>Line per handle turn.</summary>
    public static readonly KeySpec TakeUp = new("reel.take_up", QuantityKind.TakeUp, "in/turn", "Line won per handle turn, full spool; instead of the spool diameter.")
    {
        Low = 0.2,
        High = 2.5,
        Group = SpoolGroup,
        Lens = Lens.OfSetup(s => s.Reel.TakeUpPerTurnM),
    };

    /// <summary>Clutch.</summary>
    public static readonly KeySpec Drag = new("reel.drag", QuantityKind.Force, "lb", "Slip force of the clutch, full spool; \"locked\" is what a freshwater bait-casting reel holds with its drag shut, it does slip.")
    {
        // 3.5 to 4.5 kg, freshwater bait-casters pulled by hand with the star drag shut: one angling handbook, its tables damaged in the copy seen. 13 lb: a catalogue.
        Choices = [new("locked", Units.ToSi(QuantityKind.Force, "kg", 4.0), Units.ToSi(QuantityKind.Force, "kg", 3.5), Units.ToSi(QuantityKind.Force, "lb", 13.0))],
        Words = "slip force of the clutch",
        Due = $"{Units.Due(QuantityKind.Force)}, not a share of the line's strength",
        Parameter = Parameter.Of<ReelSpec>(nameof(ReelSpec.DragN)),
        Lens = Lens.OfSetup(s => s.Reel.DragN),
    };

    /// <summary>Start of the clutch.</summary>
    public static readonly KeySpec DragStart = new(
        "reel.drag_start", QuantityKind.Ratio, "", "Force that starts the clutch over the force that keeps it slipping: 1.1 is a smooth drag, 1.5 one that sticks.")
    {
        Words = "stickiness of the clutch",
        Parameter = Parameter.Of<ClutchSpec>(nameof(ClutchSpec.StaticRatio)),
        Lens = Lens.OfSetup(s => s.Reel.Clutch.StaticRatio, Activities.Retrieve | Activities.Strike | Activities.Crawl),
    };

    /// <summary>Friction in the rings.</summary>
    public static readonly KeySpec RingFriction = new(
        "reel.ring_friction", QuantityKind.Ratio, "", "Friction coefficient of the line in the rod rings while it runs out under load.")
    {
        Words = "friction in the rings under load",
        Parameter = Parameter.Of<ClutchSpec>(nameof(ClutchSpec.RingFriction)),
        Lens = Lens.OfSetup(s => s.Reel.Clutch.RingFriction, Activities.Retrieve | Activities.Strike | Activities.Crawl),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Kind, Ratio, SpoolDiameter, TakeUp, Drag, DragStart, RingFriction, .. SpoolKeys.All];
}
