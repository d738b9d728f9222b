namespace LureSim.Model.Lines;

/// <summary>
/// Cylinder at an angle alpha to the flow, cross-flow principle: only the speed across the axis makes pressure drag (Hoerner,
/// Fluid-Dynamic Drag, ch. III).
/// </summary>
public static class InclinedCylinder
{
    /// <summary>Normal force over 1/2 rho v^2 d l: Cn = Cd90 sin^2(alpha).</summary>
    /// <param name="cd90">Cd of the cylinder square to the flow.</param>
    /// <param name="alphaRad">alpha between axis and flow, rad, 0 to pi/2.</param>
    /// <exception cref="ArgumentOutOfRangeException">alpha outside its range.</exception>
    public static double NormalCoefficient(double cd90, double alphaRad)
    {
        double s = Math.Sin(Require.InRange(alphaRad, 0.0, Math.PI / 2.0));
        return cd90 * s * s;
    }

    /// <summary>Drag along the flow over 1/2 rho v^2 d l: Cd90 sin^3(alpha) + friction.</summary>
    /// <param name="alphaRad">alpha between axis and flow, rad, 0 to pi/2.</param>
    /// <param name="cd90">Cd of the cylinder square to the flow; Hoerner 1.1.</param>
    /// <param name="friction">Friction on d l; Hoerner 0.02.</param>
    /// <exception cref="ArgumentOutOfRangeException">alpha outside its range.</exception>
    public static double DragCoefficient(double alphaRad, double cd90 = 1.1, double friction = 0.02) =>
        NormalCoefficient(cd90, alphaRad) * Math.Sin(alphaRad) + friction;
}
