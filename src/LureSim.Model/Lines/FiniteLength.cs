namespace LureSim.Model.Lines;

/// <summary>
/// Loss of cross-flow drag by flow around the free ends of a cylinder: eta = Cd(L/D)/Cd(infinite).
/// </summary>
/// <remarks>
/// Wieselsberger 1922 at Re about 1e5, read linearly in D/L. The same ratios are the eta of Allen and Perkins 1951 (NACA Rep. 1048)
/// for slender bodies at incidence (0.62 at L/D 5, 0.69 at 10). Whether they hold at the lower Re of lines and lures is a guess.
/// </remarks>
internal static class FiniteLength
{
    private const double InfiniteCd = 1.19;

    private static readonly double[] DiameterOverLength = [0, 0.0237, 0.0490, 0.0998, 0.200, 0.341, 0.498, 0.998];
    private static readonly double[] Cd = [InfiniteCd, 0.986, 0.926, 0.820, 0.737, 0.744, 0.687, 0.614];

    /// <summary>eta, 0.52 to 1.</summary>
    /// <param name="lengthOverDiameter">L/D, above 0; below 1 the value at 1 is kept, infinity gives 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">L/D is not above 0.</exception>
    public static double Factor(double lengthOverDiameter)
    {
        if (!(lengthOverDiameter > 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(lengthOverDiameter), lengthOverDiameter, "L/D must be above 0.");
        }

        double x = 1.0 / lengthOverDiameter;
        int i = 1;
        while (i < Cd.Length - 1 && DiameterOverLength[i] < x)
        {
            i++;
        }

        double share = Math.Min(1.0, (x - DiameterOverLength[i - 1]) / (DiameterOverLength[i] - DiameterOverLength[i - 1]));
        return (Cd[i - 1] + share * (Cd[i] - Cd[i - 1])) / InfiniteCd;
    }
}
