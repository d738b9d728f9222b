using LureSim.Model;
using LureSim.Model.Rods;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[rod]</c>.</summary>
public static class RodKeys
{
    private const string PowerGroup = "rod power";

    /// <summary>Overall length.</summary>
    public static readonly KeySpec Length = new("rod.length", QuantityKind.Length, "ft", "Overall length.")
    {
        Required = true,
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.LengthM)),
        Lens = Lens.OfSetup(s => s.Rod.LengthM),
    };

    /// <summary>Butt end to hand.</summary>
    public static readonly KeySpec Grip = new("rod.grip", QuantityKind.Length, "in", "Butt end to the turning point of the hand; the rest is the free length.")
    {
        Words = "length of the grip",
        Default = "0.3 m",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.GripM)),
        Lens = Lens.OfSetup(s => s.Rod.GripM),
    };

    /// <summary>Load of a bend test.</summary>
    public static readonly KeySpec BendLoad = new(
        "rod.bend_load", QuantityKind.Force, "oz", "Measured: what hangs at the tip when it has dropped by a third of the free length, rod clamped level at the grip; without it rod.power decides.")
    {
        Words = "load that bends the rod by a third",
        Due = "what hangs at the tip is due in g, oz, kg, lb or N, for example \"300 g\" or \"10 oz\"",
        HasNoDefault = true,
        Group = PowerGroup,
        DrawnAs = "rod.power",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.ThirdLoadN)),
        Lens = Lens.OfSetup(s => s.Rod.ThirdLoadN),
    };

    /// <summary>Tip over butt radius.</summary>
    public static readonly KeySpec TipRadiusRatio = new("rod.tip_radius_ratio", QuantityKind.Ratio, "", "Tip radius over butt radius; without it the action decides.")
    {
        Words = "tip over butt diameter of the rod",
        HasNoDefault = true,
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.TipRadiusRatio)),
        Lens = Lens.OfSetup(s => s.Rod.TipRadiusRatio),
    };

    /// <summary>Power.</summary>
    public static readonly KeySpec Power = new(
        "rod.power", QuantityKind.Choice, "", "Class printed on the rod, a guess at rod.bend_load; due unless that is given.")
    {
        Choices = PowerClasses(),
        Group = PowerGroup,
        Gives = BendLoad,
        NoNumber = "the line weight printed on a rod does not tell how it bends; a weight that you hung on the tip yourself goes into rod.bend_load",
    };

    /// <summary>Action.</summary>
    public static readonly KeySpec Action = new(
        "rod.action", QuantityKind.Choice, "", "Where the rod bends; sets the default of rod.tip_radius_ratio.")
    {
        Default = "fast",
        Choices = ActionClasses(),
        Gives = TipRadiusRatio,
    };

    /// <summary>Mass as sold.</summary>
    public static readonly KeySpec Mass = new("rod.mass", QuantityKind.Mass, "oz", "Mass of the whole rod as sold, without reel.")
    {
        Words = "mass of the rod",
        Default = "0.12 kg",
        Low = 0.02,
        High = 1,
        GuessLow = 0.09,
        GuessHigh = 0.16,
    };

    /// <summary>Share of the mass beyond the hand.</summary>
    public static readonly KeySpec FreeMassShare = new(
        "rod.free_mass_share", QuantityKind.Ratio, "", "Share of the mass beyond the hand: blank, guides and wraps of the free length.")
    {
        Words = "share of the rod mass beyond the grip",
        Default = "0.45",
        Low = 0.1,
        High = 1,
        GuessLow = 0.35,
        GuessHigh = 0.6,
    };

    /// <summary>p in EI ~ r^p.</summary>
    public static readonly KeySpec StiffnessExponent = new("rod.stiffness_exponent", QuantityKind.Ratio, "", "p in EI ~ r^p along the rod.")
    {
        Words = "stiffness taper of the rod",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.StiffnessExponent)),
        Lens = Lens.OfSetup(s => s.Rod.StiffnessExponent),
    };

    /// <summary>q in mass per length ~ r^q.</summary>
    public static readonly KeySpec MassExponent = new("rod.mass_exponent", QuantityKind.Ratio, "", "q in mass per length ~ r^q along the rod.")
    {
        Words = "mass taper of the rod",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.MassExponent)),
        Lens = Lens.OfSetup(s => s.Rod.MassExponent),
    };

    /// <summary>Damping ratio.</summary>
    public static readonly KeySpec Damping = new("rod.damping", QuantityKind.Ratio, "", "Damping ratio of the bending modes in a twitch, hand and air included.")
    {
        Words = "damping of the rod",
        Default = "0.10",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.DampingRatio)),
        Lens = Lens.OfSetup(s => s.Rod.DampingRatio),
    };

    /// <summary>Damping ratio in a cast.</summary>
    public static readonly KeySpec CastDamping = new("rod.cast_damping", QuantityKind.Ratio, "", "Damping ratio of the first bending mode in a cast or a strike.")
    {
        Words = "damping of the rod in the cast",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.CastDampingRatio)),
        Lens = Lens.OfSetup(s => s.Rod.CastDampingRatio, Activities.Cast | Activities.Strike),
    };

    /// <summary>Air drag coefficient.</summary>
    public static readonly KeySpec AirDrag = new("rod.air_drag", QuantityKind.Ratio, "", "Cd of the rod in air, guides included.")
    {
        Words = "air drag of the rod",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.AirDragCoefficient)),
        Lens = Lens.OfSetup(s => s.Rod.AirDragCoefficient),
    };

    /// <summary>Diameter at the grip.</summary>
    public static readonly KeySpec ButtDiameter = new("rod.butt_diameter", QuantityKind.Length, "mm", "Blank diameter at the grip, for air drag.")
    {
        Words = "butt diameter of the rod",
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.ButtDiameterM)),
        Lens = Lens.OfSetup(s => s.Rod.ButtDiameterM),
    };

    /// <summary>Links of the chain.</summary>
    public static readonly KeySpec Links = new("rod.links", QuantityKind.WholeNumber, "", "Rigid links of the rod model; 8 to 12 are enough.")
    {
        Parameter = Parameter.Of<RodSpec>(nameof(RodSpec.Links)),
        Lens = Lens.OfSetup(s => s.Rod.Links),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All =
    [
        Length, Grip, Power, BendLoad, Action, Mass, FreeMassShare, TipRadiusRatio, StiffnessExponent, MassExponent, Damping, CastDamping, AirDrag, ButtDiameter, Links,
    ];

    // Class loads in N: guesses, no maker states them; each range reaches to the middle of its neighbours.
    private static Choice[] PowerClasses() =>
    [
        new("ultralight", 0.9, 0.6, 1.2), new("light", 1.5, 1.2, 1.85), new("medium-light", 2.2, 1.85, 2.6), new("medium", 3.0, 2.6, 3.75),
        new("medium-heavy", 4.5, 3.75, 5.5), new("heavy", 6.5, 5.5, 7.75), new("extra-heavy", 9.0, 7.75, 11.0),
    ];

    // Tip radius ratios: guesses around the class default 0.25 (0.15 to 0.35). With p = 3 they give tip angles of
    // 38, 40, 43, 46 and 52 deg in the bend test without the rod's own weight.
    private static Choice[] ActionClasses() =>
    [
        new("slow", 0.40, 0.30, 0.55), new("moderate", 0.35, 0.27, 0.45), new("moderate-fast", 0.30, 0.22, 0.38),
        new("fast", 0.25, 0.15, 0.35), new("extra-fast", 0.18, 0.12, 0.25),
    ];
}
