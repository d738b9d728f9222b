namespace LureSim.Model.Lures;

/// <summary>How the stuff of a body lies in it.</summary>
public enum LureBuild
{
    /// <summary>A wall of one thickness over the whole surface, ballast in the room inside (a moulded lure).</summary>
    Shell,

    /// <summary>Filled, ballast set into it in place of the stuff that was there (a carved or cast lure), with a coat.</summary>
    Solid,
}

/// <summary>What a body is made of, besides its ballast.</summary>
/// <param name="Kind">Shell or solid.</param>
/// <param name="DensityKgM3">rho of wood, foam or plastic, kg/m3, 20 to 3000; null where only the mass of the body is known. <see cref="LureWeight"/> makes the mass from it.</param>
/// <param name="WallM">Thickness of the wall of a shell, m; null for a solid body, or where only the mass is known.</param>
/// <param name="CoatThicknessM">Paint and clear coat, m, over the whole surface, inside the outer measures; 0 none.</param>
/// <param name="CoatDensityKgM3">Density of the coat, kg/m3, guess 1200 (1000 to 1500: epoxies and paints, from memory).</param>
public sealed record LureBuildSpec(
    LureBuild Kind = LureBuild.Shell,
    [property: Parameter("rho", "kg/m3", 20.0, 3000.0)] double? DensityKgM3 = null,
    [property: Parameter("wall", "m", 1e-4, 0.02)] double? WallM = null,
    [property: Parameter("coat", "m", 0.0, 0.003)] double CoatThicknessM = 0.0,
    [property: Parameter("rho coat", "kg/m3", 500.0, 5000.0, GuessLow = 1000.0, GuessHigh = 1500.0)] double CoatDensityKgM3 = 1200.0) : ISpec;
