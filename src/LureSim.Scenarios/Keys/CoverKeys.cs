using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[cover]</c>. What is not given follows from the kind; nobody has published any of it.</summary>
public static class CoverKeys
{
    // Plants under the line enter wherever a line lies on them.
    private const Activities UnderLine = Activities.Strike | Activities.Retrieve | Activities.Crawl;

    /// <summary>Kind.</summary>
    public static readonly KeySpec Kind = new(
        "cover.kind", QuantityKind.Choice, "", "Plants between fish and angler: open water or the open side of an edge, single plants, or a closed mat; sets what is not given below.")
    {
        Default = "open",
        Choices = [new("open", (int)CoverKind.Open), new("sparse", (int)CoverKind.Sparse), new("mat", (int)CoverKind.Mat)],
        Lens = Lens.OfSetup(s => (int)s.Cover.Kind, UnderLine),
    };

    /// <summary>Line over plants.</summary>
    public static readonly KeySpec LineOver = new(
        "cover.line_over", QuantityKind.Length, "m", "Line that crosses plants, counted from the lure; without it none in open water, 3 m among single plants, 6 m on a mat.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.LineOverM)),
        Lens = Lens.OfSetup(s => s.Cover.LineOverM, UnderLine),
    };

    /// <summary>Hold along the line.</summary>
    public static readonly KeySpec LineDrag = new(
        "cover.line_drag", QuantityKind.ForcePerLength, "N/m", "Hold of plants on each metre of line that lies on them; without it the kind decides: 0, 0.2 or 0.5 N/m.")
    {
        Words = "hold of plants on the line",
        HasNoDefault = true,
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.DragNM)),
        Lens = Lens.OfSetup(s => s.Cover.DragNM, UnderLine),
    };

    /// <summary>Turn about stems.</summary>
    public static readonly KeySpec LineTurn = new(
        "cover.line_turn", QuantityKind.AnglePerLength, "deg/m", "Turn of the line about stems on each metre over plants; without it the kind decides: 0, 3 or 6 deg/m.")
    {
        Words = "turn of the line about stems",
        HasNoDefault = true,
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.TurnRadM)),
        Lens = Lens.OfSetup(s => s.Cover.TurnRadM, UnderLine),
    };

    /// <summary>Friction of the line.</summary>
    public static readonly KeySpec LineFriction = new("cover.line_friction", QuantityKind.Ratio, "", "Friction coefficient of line on wet plants.")
    {
        Words = "friction of line on plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.LineFriction)),
        Lens = Lens.OfSetup(s => s.Cover.LineFriction, UnderLine),
    };

    /// <summary>Height.</summary>
    public static readonly KeySpec Height = new("cover.height", QuantityKind.Length, "cm", "Height of the plants over the water: line that is higher is free of them.")
    {
        Words = "height of the plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.HeightM)),
        Lens = Lens.OfSetup(s => s.Cover.HeightM, UnderLine),
    };

    /// <summary>Grip.</summary>
    public static readonly KeySpec Grip = new(
        "cover.grip", QuantityKind.Force, "N", "Pull that drags the fish through the plants, on top of the drag of water; without it the kind decides: 0, 8 or 40 N.")
    {
        Words = "grip of the plants on the fish",
        HasNoDefault = true,
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.GripN)),
        Lens = Lens.OfSetup(s => s.Cover.GripN, Activities.Strike),
    };

    /// <summary>Weed.</summary>
    public static readonly KeySpec Weed = new("cover.weed", QuantityKind.Mass, "kg", "Wet weed that comes along with the fish; without it the kind decides: 0, 0.3 or 1.5 kg.")
    {
        Words = "weed that comes along",
        HasNoDefault = true,
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.WeedKg)),
        Lens = Lens.OfSetup(s => s.Cover.WeedKg, Activities.Strike),
    };

    /// <summary>Friction of the lure.</summary>
    public static readonly KeySpec LureFriction = new("cover.lure_friction", QuantityKind.Ratio, "", "Friction coefficient of the lure on wet plants.")
    {
        Words = "friction of the lure on plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.LureFriction)),
        Lens = Lens.OfSetup(s => s.Cover.LureFriction, Activities.Crawl),
    };

    /// <summary>Opening.</summary>
    public static readonly KeySpec Opening = new(
        "cover.opening", QuantityKind.Length, "m", "Free water under the line: from the lure on where it lies in an opening of the plants, ahead of it where it crawls toward one.")
    {
        Words = "opening in the plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.OpeningM)),
        Lens = Lens.OfSetup(s => s.Cover.OpeningM, UnderLine),
    };

    /// <summary>Stiffness.</summary>
    public static readonly KeySpec Stiffness = new("cover.stiffness", QuantityKind.ForcePerLength, "N/m", "What plants carry of a lure per metre that it presses them down.")
    {
        Words = "stiffness of the plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.StiffnessNM)),
        Lens = Lens.OfSetup(s => s.Cover.StiffnessNM, Activities.Crawl),
    };

    /// <summary>Damping.</summary>
    public static readonly KeySpec Damping = new("cover.damping", QuantityKind.Ratio, "", "Damping ratio of a lure that bobs on plants; 1: it no longer swings.")
    {
        Words = "damping of the plants",
        Parameter = Parameter.Of<CoverSpec>(nameof(CoverSpec.DampingRatio)),
        Lens = Lens.OfSetup(s => s.Cover.DampingRatio, Activities.Crawl),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Kind, LineOver, LineDrag, LineTurn, LineFriction, Height, Grip, Weed, LureFriction, Opening, Stiffness, Damping];
}
