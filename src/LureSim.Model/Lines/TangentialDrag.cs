namespace LureSim.Model.Lines;

/// <summary>
/// Friction of a long thin cylinder moving along itself: F = 1/2 rho Ct pi d l v^2. Only a band is known.
/// </summary>
public static class TangentialDrag
{
    /// <summary>
    /// Ct of a long towed cylinder: 2 to 3 times that of a turbulent flat plate at the same length Reynolds number (ASME Fluids
    /// Eng. Div. Summer Meeting 2002, abstract: 0.89 and 2.5 mm cylinders of 30 to 150 m at 2.4 to 17.4 m/s).
    /// Flat plate: 0.455/(log10 Re)^2.58 (Prandtl-Schlichting, from memory).
    /// </summary>
    /// <param name="lengthReynolds">v l/nu, 5e5 to 1e10.</param>
    /// <exception cref="ArgumentOutOfRangeException">Reynolds number outside its range.</exception>
    public static (double Low, double High) Band(double lengthReynolds)
    {
        double plate = 0.455 / Math.Pow(Math.Log10(Require.InRange(lengthReynolds, 5e5, 1e10)), 2.58);
        return (2.0 * plate, 3.0 * plate);
    }
}
