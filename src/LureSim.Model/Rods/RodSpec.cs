namespace LureSim.Model.Rods;

/// <summary>A rod as a tapered tube, described by what a home bend test gives.</summary>
/// <param name="LengthM">Overall length, m, 1.2 to 4.5.</param>
/// <param name="GripM">Length from the butt end to the hand's turning point; the free length is the rest, m.</param>
/// <param name="ThirdLoadN">Power: tip load that drops the tip by a third of the free length, rod clamped level at the grip,
/// load kept vertical, drop counted from the unloaded tip, N.</param>
/// <param name="MassKg">Mass of the free length (blank, guides, wraps), kg.</param>
/// <param name="TipRadiusRatio">Tip radius over butt radius, 0.1 to 0.9; 0.25 is a class default (0.15 to 0.35).</param>
/// <param name="StiffnessExponent">p in EI ~ r^p along the rod, guess 3 (2.5 to 4).</param>
/// <param name="MassExponent">q in mass per length ~ r^q, guess 1.5 (1 to 2).</param>
/// <param name="DampingRatio">zeta of every bending mode in a twitch, hand and air included; guess 0.10 (0.05 to 0.2).</param>
/// <param name="AirDragCoefficient">Cd of the rod's cylinder, guides included, guess 1.15 (0.9 to 1.4).</param>
/// <param name="ButtDiameterM">Diameter at the grip for air drag, m, guess 0.011.</param>
/// <param name="Links">Number of rigid links, 8 to 12 (up to 200 in convergence studies).</param>
/// <param name="CastDampingRatio">zeta_1 of the first bending mode in a cast, guess 0.04 (0.011 to 0.069).</param>
public sealed record RodSpec(
    [property: Parameter("length", "m", 1.2, 4.5)] double LengthM,
    [property: Parameter("grip", "m", 0.05, 1.5, GuessLow = 0.2, GuessHigh = 0.4)] double GripM,
    [property: Parameter("power", "N", 0.2, 40.0)] double ThirdLoadN,
    [property: Parameter("mass", "kg", 0.002, 1.0)] double MassKg,
    [property: Parameter("rho", "", 0.1, 0.9)] double TipRadiusRatio = 0.25,
    [property: Parameter("p", "", 2.0, 4.5, GuessLow = 2.5, GuessHigh = 4.0)] double StiffnessExponent = 3.0,
    [property: Parameter("q", "", 0.5, 2.5, GuessLow = 1.0, GuessHigh = 2.0)] double MassExponent = 1.5,
    [property: Parameter("zeta", "", 0.0, 1.0, GuessLow = 0.05, GuessHigh = 0.2)] double DampingRatio = 0.10,
    [property: Parameter("Cd", "", 0.0, 3.0, Spread = 1.25)] double AirDragCoefficient = 1.15,
    [property: Parameter("d_0", "m", 0.003, 0.05, GuessLow = 0.008, GuessHigh = 0.015)] double ButtDiameterM = 0.011,
    [property: Parameter("n", "", 1, 200)] int Links = 10,
    [property: Parameter("zeta_1", "", 0.0, 0.5, Spread = 2.5)] double CastDampingRatio = 0.04) : ISpec
{
    /// <summary>Least free length that the model is made for, m.</summary>
    public const double LeastFreeLengthM = 0.5;

    /// <summary>Length from the hand's turning point to the tip, m.</summary>
    public double FreeLengthM => LengthM - GripM;
}
