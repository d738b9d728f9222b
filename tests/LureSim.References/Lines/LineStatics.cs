using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Model.Media;

namespace LureSim.References.Lines;

/// <summary>Closed forms of one straight piece of line: weight in water, stretch, waves, sinking speed.</summary>
public static class LineStatics
{
    /// <summary>Displaced area A = mu/rho_s, m2.</summary>
    public static double SolidArea(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.LinearDensityKgM / line.DensityKgM3;
    }

    /// <summary>Weight minus buoyancy per length under water, N/m; below 0 for a line that rises.</summary>
    public static double NetWeight(LineSpec line, WaterState water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return (line.LinearDensityKgM - water.DensityKgM3 * SolidArea(line)) * Physics.GravityMS2;
    }

    /// <summary>Static stretch F L/(E A), m.</summary>
    public static double Stretch(LineSpec line, double forceN, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(line);
        return forceN * lengthM / line.AxialStiffnessN;
    }

    /// <summary>Longitudinal sound speed c = sqrt(EA/mu), m/s.</summary>
    public static double SoundSpeed(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Math.Sqrt(line.AxialStiffnessN / line.LinearDensityKgM);
    }

    /// <summary>
    /// Longitudinal impedance Z = sqrt(EA mu) = A sqrt(E rho), kg/s: a jump v of the end's speed sends a force step v Z along the line
    /// (bar impact theory).
    /// </summary>
    public static double Impedance(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Math.Sqrt(line.AxialStiffnessN * line.LinearDensityKgM);
    }

    /// <summary>
    /// Speed at which a horizontal, wetted line sinks: (rho_s - rho) g A = 1/2 rho Cd(Re) d v^2, m/s; below 0 for a line that rises.
    /// </summary>
    public static double SinkingSpeed(LineSpec line, WaterState water)
    {
        double load = Math.Abs(NetWeight(line, water));
        double Surplus(double v) => load - 0.5 * water.DensityKgM3 * line.NormalDragFactor * line.DiameterM * v * v
            * CylinderDrag.Cd(v * line.DiameterM / water.KinematicViscosityM2S);
        double low = 1e-12;
        double high = 10.0;
        // The drag rises with v, so halving on the logarithm closes in on the one balance.
        for (int i = 0; i < 80; i++)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = Surplus(middle) > 0.0 ? (middle, high) : (low, middle);
        }

        return Math.Sign(NetWeight(line, water)) * low;
    }
}
