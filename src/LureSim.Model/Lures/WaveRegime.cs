using LureSim.Model.Media;

namespace LureSim.Model.Lures;

/// <summary>
/// Flags for wave making. A hull in steady straight motion makes no waves below the least phase speed of
/// capillary-gravity waves; wave drag has its main hump near a Froude number of 0.5. The walk holds wave drag only as
/// a declared factor on the axial drag.
/// </summary>
internal static class WaveRegime
{
    /// <summary>Half angle of the Kelvin wake, asin(1/3), rad (Kelvin 1887).</summary>
    public static double KelvinHalfAngleRad => Math.Asin(1.0 / 3.0);

    /// <summary>Fn = U / sqrt(g L).</summary>
    /// <param name="speedMS">U, m/s, 0 or more.</param>
    /// <param name="lengthM">L, m, above 0.</param>
    public static double FroudeNumber(double speedMS, double lengthM) =>
        Require.InRange(speedMS, 0.0, 1e3) / SpeedMS(1.0, lengthM);

    /// <summary>Speed at a Froude number, m/s.</summary>
    /// <param name="froudeNumber">Fn.</param>
    /// <param name="lengthM">L, m, above 0.</param>
    public static double SpeedMS(double froudeNumber, double lengthM) =>
        froudeNumber * Math.Sqrt(FloatingLure.GravityMS2 * Require.Positive(lengthM));

    /// <summary>Length of the deep-water gravity wave that keeps up with U: 2 pi U^2 / g, m.</summary>
    /// <param name="speedMS">U, m/s.</param>
    public static double GravityWavelengthM(double speedMS) =>
        2.0 * Math.PI * speedMS * speedMS / FloatingLure.GravityMS2;

    /// <summary>(4 g sigma / rho)^(1/4), m/s, the slowest capillary-gravity wave (Kelvin 1871).</summary>
    /// <param name="water">Water.</param>
    public static double MinimumPhaseSpeedMS(WaterState water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return Math.Pow(4.0 * FloatingLure.GravityMS2 * water.SurfaceTensionNM / water.DensityKgM3, 0.25);
    }
}
