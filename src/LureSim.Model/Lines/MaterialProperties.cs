namespace LureSim.Model.Lines;

/// <summary>What a line material brings along, whatever its size.</summary>
/// <param name="Material">Which material.</param>
/// <param name="DensityKgM3">rho_s, density of the solid, kg/m3.</param>
/// <param name="DryModulusPa">E on the solid area, dry, Pa.</param>
/// <param name="SoakedModulusPa">E on the solid area, soaked, Pa.</param>
/// <param name="DampingTimeS">eta, Kelvin-Voigt time, s.</param>
/// <param name="WetStrengthFactor">Soaked over dry strength.</param>
/// <param name="BreakOverLabel">Dry break over the label, where no table gives it.</param>
/// <param name="Packing">Solid share of the outer circle: 1 for a single strand.</param>
/// <param name="ContactAngleRad">theta, advancing contact angle of water on the clean polymer, rad.</param>
public sealed record MaterialProperties(
    LineMaterial Material,
    Ranged DensityKgM3,
    Ranged DryModulusPa,
    Ranged SoakedModulusPa,
    Ranged DampingTimeS,
    Ranged WetStrengthFactor,
    Ranged BreakOverLabel,
    Ranged Packing,
    Ranged ContactAngleRad)
{
    /// <summary>E for a skin state: a wetted line counts as soaked, a dry one as dry.</summary>
    public Ranged ModulusPa(SurfaceFilm film) => film == SurfaceFilm.Wetted ? SoakedModulusPa : DryModulusPa;
}
