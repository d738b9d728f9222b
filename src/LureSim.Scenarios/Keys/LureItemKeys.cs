using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Columns of the lists in <c>[lure]</c>.</summary>
public static class LureItemKeys
{
    /// <summary>Ballast mass.</summary>
    public static readonly KeySpec BallastMass = new("lure.ballast.mass", QuantityKind.Mass, "g", "Mass of the weight; counted in lure.mass.") { Required = true, Parameter = Parameter.Of<BallastSpec>(nameof(BallastSpec.MassKg)) };

    /// <summary>Ballast x.</summary>
    public static readonly KeySpec BallastX = new("lure.ballast.x", QuantityKind.Length, "mm", "From the middle toward the nose.") { Required = true, Parameter = Parameter.Of<BallastSpec>(nameof(BallastSpec.XM)) };

    /// <summary>Ballast z.</summary>
    public static readonly KeySpec BallastZ = new("lure.ballast.z", QuantityKind.Length, "mm", "Above the axis.") { Default = "0 m", Parameter = Parameter.Of<BallastSpec>(nameof(BallastSpec.ZM)) };

    /// <summary>Ballast density.</summary>
    public static readonly KeySpec BallastDensity = new("lure.ballast.density", QuantityKind.Density, "kg/m3", "Density of the weight, which says how much of a solid body it takes the place of.")
    {
        HasNoDefault = true,
        Parameter = Parameter.Of<BallastSpec>(nameof(BallastSpec.DensityKgM3)),
    };

    /// <summary>Ballast material.</summary>
    public static readonly KeySpec BallastMaterial = new("lure.ballast.material", QuantityKind.Choice, "", "What the weight is made of; gives density unless that is given.")
    {
        Default = "lead",
        Choices = BodyMaterials.Weights,
        Gives = BallastDensity,
    };

    /// <summary>Hook type.</summary>
    public static readonly KeySpec HookType = new("lure.hooks.type", QuantityKind.Choice, "", "Points of the hook, used with size; \"ring\" for a split ring or swivel, with diameter or mass.")
    {
        Default = "treble",
        Choices = [new("single", 1), new("double", 2), new("treble", 3), new("ring", 0)],
    };

    /// <summary>Ring diameter.</summary>
    public static readonly KeySpec RingDiameter = new("lure.hooks.diameter", QuantityKind.Length, "mm", "Outer diameter of a ring; gives mass and drag area.") { Low = 0.001, High = 0.05 };

    /// <summary>Hook size.</summary>
    public static readonly KeySpec HookSize = new("lure.hooks.size", QuantityKind.Choice, "", "Hook size; gives mass and drag area from a table of guesses.")
    {
        Choices = HookTable.Choices,
    };

    /// <summary>Hook mass.</summary>
    public static readonly KeySpec HookMass = new("lure.hooks.mass", QuantityKind.Mass, "g", "Mass; overrides the size's.") { Parameter = Parameter.Of<HookSpec>(nameof(HookSpec.MassKg)) };

    /// <summary>Hook drag area.</summary>
    public static readonly KeySpec HookDragArea = new("lure.hooks.drag_area", QuantityKind.Area, "cm2", "Drag area CdA in water, moved across the hull; overrides the size's.") { Low = 0, High = 0.01 };

    /// <summary>Hook drag area along the hull.</summary>
    public static readonly KeySpec HookDragAreaAlong = new("lure.hooks.drag_area_along", QuantityKind.Area, "cm2", "Drag area CdA moved along the hull; without it, drag_area.") { Low = 0, High = 0.01 };

    /// <summary>Feather.</summary>
    public static readonly KeySpec HookFeather = new("lure.hooks.feather_area", QuantityKind.Area, "cm2", "Drag area CdA of feather or skirt, added.") { Default = "0 m2", Low = 0, High = 0.01 };

    /// <summary>Dressing in words: half of width times length (mean over directions), as of wire; 3 x 30 mm and 6 x 40 mm, guesses.</summary>
    public static readonly KeySpec HookDressing = new("lure.hooks.dressing", QuantityKind.Choice, "", "Feather or tinsel tied on the hook, in words; gives feather_area unless that is given.")
    {
        Default = "none",
        Choices = [new("none", 0.0), new("thin", 0.45e-4, 0.2e-4, 0.9e-4), new("full", 1.2e-4, 0.6e-4, 2.4e-4)],
        Gives = HookFeather,
    };

    /// <summary>Density.</summary>
    public static readonly KeySpec HookDensity = new("lure.hooks.density", QuantityKind.Density, "kg/m3", "Density, for buoyancy: steel unless given (a silicone skirt about 1100).")
    {
        Default = "7850 kg/m3",
        Low = 100,
        High = 20000,
    };

    /// <summary>Hook x.</summary>
    public static readonly KeySpec HookX = new("lure.hooks.x", QuantityKind.Length, "mm", "Hanger from the middle toward the nose.") { Required = true, Parameter = Parameter.Of<HookSpec>(nameof(HookSpec.XM)) };

    /// <summary>Hook z.</summary>
    public static readonly KeySpec HookZ = new("lure.hooks.z", QuantityKind.Length, "mm", "Hanger above the axis.") { Default = "0 m", Parameter = Parameter.Of<HookSpec>(nameof(HookSpec.ZM)) };

    /// <summary>Station x.</summary>
    public static readonly KeySpec StationX = new("lure.stations.x", QuantityKind.Length, "mm", "From the middle toward the nose; rising.") { Required = true, Parameter = Parameter.Of<HullStation>(nameof(HullStation.XM)) };

    /// <summary>Station breadth.</summary>
    public static readonly KeySpec StationBreadth = new("lure.stations.breadth", QuantityKind.Length, "mm", "Full breadth of the section.") { Required = true, Low = 0, High = 0.2 };

    /// <summary>Station height.</summary>
    public static readonly KeySpec StationHeight = new("lure.stations.height", QuantityKind.Length, "mm", "Full height of the section.") { Required = true, Low = 0, High = 0.2 };

    /// <summary>Station centre.</summary>
    public static readonly KeySpec StationCentre = new("lure.stations.centre", QuantityKind.Length, "mm", "Height of the section's centre over the axis.") { Parameter = Parameter.Of<HullStation>(nameof(HullStation.CentreZM)) };

    /// <summary>Columns of <c>lure.ballast</c>.</summary>
    public static readonly KeySpec[] BallastItems = [BallastMass, BallastX, BallastZ, BallastMaterial, BallastDensity];

    /// <summary>Columns of <c>lure.hooks</c>.</summary>
    public static readonly KeySpec[] HookItems = [HookType, HookSize, RingDiameter, HookX, HookZ, HookMass, HookDragArea, HookDragAreaAlong, HookFeather, HookDressing, HookDensity];

    /// <summary>Columns of <c>lure.stations</c>.</summary>
    public static readonly KeySpec[] StationItems = [StationX, StationBreadth, StationHeight, StationCentre];
}
