namespace LureSim.Model.Lines;

/// <summary>Properties of the three line materials.</summary>
/// <remarks>
/// Densities: nylon 1140 and PVDF 1780 kg/m3 from polymer data sheets, gel-spun polyethylene 970 (fibre handbooks, from memory).
/// Moduli of drawn nylon and PVDF strands and of braid (30-70 % of the 100 GPa fibre): from memory, guesses with range; that soaking
/// halves nylon's modulus is on a data sheet of polyamide 66 (3100 to 1400 MPa), its wet strength of 0.8-0.9 in a textile handbook.
/// PVDF takes up 0.03 % and polyethylene no water. Damping times and contact angles: guesses.
/// </remarks>
public static class LineMaterials
{
    private static readonly MaterialProperties Braid = new(
        LineMaterial.Braid,
        DensityKgM3: new(970, 960, 980),
        DryModulusPa: new(50e9, 30e9, 70e9),
        SoakedModulusPa: new(50e9, 30e9, 70e9),
        DampingTimeS: new(0.002, 0, 0.003),
        WetStrengthFactor: new(1.0, 1.0, 1.0),
        BreakOverLabel: new(1.55, 1.3, 1.8),
        Packing: new(0.75, 0.65, 0.90),
        ContactAngleRad: new(Deg(100), Deg(90), Deg(110)));

    private static readonly MaterialProperties Nylon = new(
        LineMaterial.Nylon,
        DensityKgM3: new(1140, 1110, 1150),
        DryModulusPa: new(3.0e9, 2.0e9, 5.0e9),
        SoakedModulusPa: new(1.7e9, 1.2e9, 2.5e9),
        DampingTimeS: new(0.010, 0.003, 0.020),
        WetStrengthFactor: new(0.85, 0.80, 0.90),
        BreakOverLabel: new(1.1, 1.0, 1.3),
        Packing: new(1, 1, 1),
        ContactAngleRad: new(Deg(70), Deg(60), Deg(80)));

    private static readonly MaterialProperties Fluorocarbon = new(
        LineMaterial.Fluorocarbon,
        DensityKgM3: new(1780, 1750, 1800),
        DryModulusPa: new(2.2e9, 1.5e9, 3.0e9),
        SoakedModulusPa: new(2.2e9, 1.5e9, 3.0e9),
        DampingTimeS: new(0.010, 0.003, 0.020),
        WetStrengthFactor: new(1.0, 1.0, 1.0),
        BreakOverLabel: new(1.15, 1.05, 1.5),
        Packing: new(1, 1, 1),
        ContactAngleRad: new(Deg(85), Deg(75), Deg(95)));

    /// <summary>The properties of a material.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The material is not one of the three.</exception>
    public static MaterialProperties Of(LineMaterial material) => material switch
    {
        LineMaterial.Braid => Braid,
        LineMaterial.Nylon => Nylon,
        LineMaterial.Fluorocarbon => Fluorocarbon,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "Unknown line material."),
    };

    private static double Deg(double degrees) => degrees * Math.PI / 180.0;
}
