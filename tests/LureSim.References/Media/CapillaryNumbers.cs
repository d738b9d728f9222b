using LureSim.Model;
using LureSim.Model.Media;

namespace LureSim.References.Media;

/// <summary>Length and speed scales of a water surface under gravity and surface tension (Lamb, Hydrodynamics, art. 267).</summary>
public static class CapillaryNumbers
{
    /// <summary>Capillary length l_c = sqrt(sigma/(rho g)), m.</summary>
    public static double Length(WaterState water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return Math.Sqrt(water.SurfaceTensionNM / (water.DensityKgM3 * Physics.GravityMS2));
    }

    /// <summary>
    /// Slowest phase speed of a surface wave, c_min = (4 g sigma/rho)^(1/4), m/s: what moves straight and steadily below it makes no
    /// waves; what speeds up or turns does.
    /// </summary>
    public static double MinimumWaveSpeed(WaterState water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return Math.Pow(4.0 * Physics.GravityMS2 * water.SurfaceTensionNM / water.DensityKgM3, 0.25);
    }
}
