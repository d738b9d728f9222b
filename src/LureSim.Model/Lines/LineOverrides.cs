namespace LureSim.Model.Lines;

/// <summary>Values the user knows better than the tables; null leaves the table's.</summary>
/// <param name="DensityKgM3">rho_s, kg/m3, 500 to 3000.</param>
/// <param name="ModulusPa">E on the solid area, Pa, 1e7 to 3e11.</param>
/// <param name="DampingTimeS">eta, s, 0 to 0.1.</param>
/// <param name="Packing">Solid share of a braid's outer circle, 0.3 to 0.907.</param>
/// <param name="BreakN">Wet unknotted break, N, above 0.</param>
/// <param name="NormalDragFactor">Factor on Cd(Re), 0 to 5.</param>
/// <param name="TangentialDragCoefficient">Ct, 0 to 0.1.</param>
public sealed record LineOverrides(
    double? DensityKgM3 = null,
    double? ModulusPa = null,
    double? DampingTimeS = null,
    double? Packing = null,
    double? BreakN = null,
    double? NormalDragFactor = null,
    double? TangentialDragCoefficient = null);
