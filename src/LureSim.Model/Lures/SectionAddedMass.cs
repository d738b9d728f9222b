namespace LureSim.Model.Lures;

/// <summary>
/// Two-dimensional added mass of a section cut by the water surface, over rho times a half-axis squared. The level t
/// is the distance of the water line over the section's centre in half-heights: -1 dry, 0 half immersed, 1 just under;
/// draft h = q (1 + t). Exact for a circle at every draft and for any half-immersed ellipse; between, the circle's
/// function is used.
/// </summary>
internal static class SectionAddedMass
{
    /// <summary>
    /// Sway with the surface as a rigid lid (slow motion): the double body is a lens of two arcs, mapped on a circle
    /// by Karman and Trefftz: pi sin^2(a) (1 - k^2)/(3 k^2) - a + sin(2a)/2, k = 1 - a/pi, a = acos(-t). Half
    /// immersed: pi/2 (times rho c^2, c half-height). Derived as the twin of <see cref="Heave"/>.
    /// Fully under: falls from the value at the lid, pi (pi^2/3 - 1), to pi with the depth of the centre squared (guess).
    /// </summary>
    /// <param name="t">Relative level.</param>
    public static double Sway(double t)
    {
        if (t >= 1.0)
        {
            return Math.PI * (1.0 + (((Math.PI * Math.PI / 3.0) - 2.0) / (t * t)));
        }

        double a = Angle(t);
        double k = 1.0 - (a / Math.PI);
        double ratio = Math.Sin(a) / k;
        return t <= -1.0
            ? 0.0
            : (Math.PI * ratio * ratio * (1.0 - (k * k)) / 3.0) - a + (0.5 * Math.Sin(2.0 * a));
    }

    /// <summary>
    /// Heave at high frequency (surface without pressure): pi sin^2(a)(1 + 2k^2)/(6 k^2) - a + sin(2a)/2.
    /// Korotkin, Added Masses of Ship Structures, p. 206. Half immersed: pi/2 (times rho b^2, b half-breadth).
    /// Fully under: rises from pi (pi^2/6 - 1) to pi with the depth of the centre squared (guess).
    /// </summary>
    /// <param name="t">Relative level.</param>
    public static double Heave(double t)
    {
        if (t >= 1.0)
        {
            return Math.PI * (1.0 + (((Math.PI * Math.PI / 6.0) - 2.0) / (t * t)));
        }

        double a = Angle(t);
        double k = 1.0 - (a / Math.PI);
        double ratio = Math.Sin(a) / k;
        return t <= -1.0
            ? 0.0
            : (Math.PI * ratio * ratio * (1.0 + (2.0 * k * k)) / 6.0) - a + (0.5 * Math.Sin(2.0 * a));
    }

    // Held off 0 and pi, where 0/0 and cancellation spoil the formulas; the sections there carry nothing.
    private static double Angle(double t) => Math.Clamp(Math.Acos(-Math.Clamp(t, -1.0, 1.0)), 1e-4, Math.PI - 1e-4);
}
