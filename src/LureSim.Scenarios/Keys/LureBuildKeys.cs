using LureSim.Model;
using LureSim.Model.Lures;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Keys of table <c>[lure]</c> that say what the body is made of.</summary>
public static class LureBuildKeys
{
    /// <summary>Shell or solid.</summary>
    public static readonly KeySpec Build = new(
        "lure.build", QuantityKind.Choice, "", "\"solid\" or \"shell\": where the mass of the body lies; without it, solid where material or density is given without wall, else shell.")
    {
        Choices = [new("shell", (int)LureBuild.Shell), new("solid", (int)LureBuild.Solid)],
        Lens = Lens.OfSetup(s => (int)s.Lure.Build.Kind),
    };

    /// <summary>Density.</summary>
    public static readonly KeySpec Density = new(
        "lure.density", QuantityKind.Density, "kg/m3", "Density of wood, foam or plastic, instead of lure.mass; luresim board finds it from a weighed piece.")
    {
        Words = "density of the body",
        Group = LureKeys.MassGroup,
        Parameter = Parameter.Of<LureBuildSpec>(nameof(LureBuildSpec.DensityKgM3)),
        Lens = Lens.OfSetup(s => s.Lure.Build.DensityKgM3 ?? double.NaN),
    };

    /// <summary>Material.</summary>
    public static readonly KeySpec Material = new(
        "lure.material", QuantityKind.Choice, "", "Wood, foam or plastic of the body, instead of lure.mass; gives the density unless that is given.")
    {
        Group = LureKeys.MassGroup,
        Choices = BodyMaterials.Choices,
        Gives = Density,
    };

    /// <summary>Wall.</summary>
    public static readonly KeySpec Wall = new(
        "lure.wall", QuantityKind.Length, "mm", "Thickness of the wall of a moulded, hollow body; with material or density it gives the mass.")
    {
        Words = "wall of the body",
        Parameter = Parameter.Of<LureBuildSpec>(nameof(LureBuildSpec.WallM)),
        Lens = Lens.OfSetup(s => s.Lure.Build.WallM ?? double.NaN),
    };

    /// <summary>Coat: thickness.</summary>
    public static readonly KeySpec CoatThickness = new(
        "lure.coat_thickness", QuantityKind.Length, "mm", "Paint and clear coat over the whole surface, inside the measures of the body; 0 for none.")
    {
        Words = "coat of the body",
        HasNoDefault = true,
        Parameter = Parameter.Of<LureBuildSpec>(nameof(LureBuildSpec.CoatThicknessM)),
        Lens = Lens.OfSetup(s => IsCoated(s.Lure) ? s.Lure.Build.CoatThicknessM : double.NaN),
    };

    /// <summary>Coat: density.</summary>
    public static readonly KeySpec CoatDensity = new(
        "lure.coat_density", QuantityKind.Density, "kg/m3", "Density of paint and clear coat.")
    {
        Words = "density of the coat",
        HasNoDefault = true,
        Parameter = Parameter.Of<LureBuildSpec>(nameof(LureBuildSpec.CoatDensityKgM3)),
        Lens = Lens.OfSetup(s => IsCoated(s.Lure) && s.Lure.Build.CoatThicknessM > 0.0 ? s.Lure.Build.CoatDensityKgM3 : double.NaN),
    };

    /// <summary>Coat where nothing is said: a sealer, a few coats of paint and a clear coat; a guess.</summary>
    internal static readonly Ranged UsualCoat = new(0.15e-3, 0.05e-3, 0.3e-3);

    /// <summary>Rows.</summary>
    public static readonly KeySpec[] All = [Build, Material, Density, Wall, CoatThickness, CoatDensity];

    /// <summary>Rows from which the mass follows.</summary>
    public static readonly KeySpec[] OfMass = [Material, Density, Wall, CoatThickness, CoatDensity];

    private static bool IsCoated(LureSpec lure) => lure.Build.Kind == LureBuild.Solid || lure.Build.DensityKgM3 is not null;
}
