namespace LureSim.Model.Rods;

/// <summary>A rod as a tapered tube, described by what a home bend test gives.</summary>
/// <param name="LengthM">Overall length, m, 1.2 to 4.5.</param>
/// <param name="GripM">Length from the butt end to the hand's turning point; the free length is the rest, m.</param>
/// <param name="ThirdLoadN">Power: tip load that drops the tip by a third of the free length, rod clamped level at the grip,
/// load kept vertical, drop counted from the unloaded tip, N.</param>
/// <param name="MassKg">Mass of the free length (blank, guides, wraps), kg.</param>
/// <param name="TipRadiusRatio">Tip radius over butt radius, 0.1 to 0.9; 0.25 is a class default (0.15 to 0.35).</param>
/// <param name="StiffnessExponent">p in EI ~ r^p along the rod, 2.5 to 4, guess 3.</param>
/// <param name="MassExponent">q in mass per length ~ r^q, 1 to 2, guess 1.5.</param>
/// <param name="DampingRatio">zeta of every bending mode, hand and air included; guess 0.10 (0.05 to 0.2) in a twitch,
/// 0.03 (0.005 to 0.1) in a cast.</param>
/// <param name="AirDragCoefficient">Cd of the rod's cylinder, guides included, guess 1.15 (0.9 to 1.5).</param>
/// <param name="ButtDiameterM">Diameter at the grip for air drag, m, guess 0.011.</param>
/// <param name="Links">Number of rigid links, 8 to 12 (up to 200 in convergence studies).</param>
public sealed record RodSpec(
    double LengthM,
    double GripM,
    double ThirdLoadN,
    double MassKg,
    double TipRadiusRatio = 0.25,
    double StiffnessExponent = 3.0,
    double MassExponent = 1.5,
    double DampingRatio = 0.10,
    double AirDragCoefficient = 1.15,
    double ButtDiameterM = 0.011,
    int Links = 10)
{
    /// <summary>Length from the hand's turning point to the tip, m.</summary>
    public double FreeLengthM => LengthM - GripM;
}
