namespace LureSim.Model.Lines;

/// <summary>Mass per length as the textile trade writes it, and the solid thread of that mass.</summary>
/// <remarks>Definitions: denier = g per 9000 m, tex = g per 1000 m, dtex = g per 10 km.</remarks>
public static class TextileUnits
{
    /// <summary>Mass per length of a braid of number 1: 200 denier (trade standard).</summary>
    public const double DenierPerBraidNumber = 200.0;

    /// <summary>Denier to kg/m.</summary>
    public static double FromDenier(double denier) => denier / 9e6;

    /// <summary>Tex to kg/m.</summary>
    public static double FromTex(double tex) => tex * 1e-6;

    /// <summary>Braid number to linear density mu, kg/m.</summary>
    public static double FromBraidNumber(double number) => FromDenier(DenierPerBraidNumber * number);

    /// <summary>Braid number of a linear density mu, kg/m.</summary>
    public static double ToBraidNumber(double linearDensityKgM) => linearDensityKgM / FromBraidNumber(1.0);

    /// <summary>Diameter of a solid round thread, d = sqrt(4 mu / (pi rho)), m.</summary>
    /// <param name="linearDensityKgM">mu, kg/m, above 0.</param>
    /// <param name="densityKgM3">rho, kg/m3, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0.</exception>
    public static double SolidDiameter(double linearDensityKgM, double densityKgM3) =>
        Math.Sqrt(4.0 * Require.Positive(linearDensityKgM) / (Math.PI * Require.Positive(densityKgM3)));
}
