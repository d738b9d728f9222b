using LureSim.Model.Media;

namespace LureSim.Model.Lines.Chain;

/// <summary>What surrounds the line.</summary>
/// <param name="Water">Water.</param>
/// <param name="Air">Air.</param>
/// <param name="NormalDrag">Cd(Re) of the cylinder across the flow.</param>
/// <param name="GravityMS2">g, m/s2.</param>
/// <param name="LayerM">Height of the layer in which a node passes from dry to wet, m: twice the contact height of <see cref="WaterSpec"/>.</param>
/// <param name="AddedMassCoefficient">Ca across a wet line, 1 (potential flow, C7); 0 in reference cases without it.</param>
internal sealed record LineMedium(
    WaterState Water,
    AirState Air,
    DragCurve NormalDrag,
    double GravityMS2 = Physics.GravityMS2,
    double LayerM = 0.010,
    double AddedMassCoefficient = 1.0)
{
    /// <summary>l_c = sqrt(sigma / (rho g)), m.</summary>
    public double CapillaryLengthM => Math.Sqrt(Water.SurfaceTensionNM / (Water.DensityKgM3 * GravityMS2));

    /// <summary>Wet share of a node at height z: 0 above the layer, 1 below it, smoothstep between.</summary>
    /// <param name="z">Height over the water, m.</param>
    public double WetShare(double z)
    {
        double s = Math.Clamp(0.5 - (z / LayerM), 0.0, 1.0);
        return s * s * (3.0 - (2.0 * s));
    }
}
