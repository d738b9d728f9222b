namespace LureSim.Model.Media;

/// <summary>Sea water at one atmosphere, by temperature and salinity. Practical salinity is taken equal to g/kg (0.5 % apart).</summary>
internal static class SeaWater
{
    /// <summary>
    /// rho, kg/m3: one-atmosphere equation of state EOS-80 (Fofonoff and Millard 1983, UNESCO Tech. Pap. Mar. Sci. 44). Its
    /// temperature scale of 1968 differs from today's by less than 0.01 K here, which is left out.
    /// </summary>
    /// <param name="temperatureC">t, deg C, 0 to 40.</param>
    /// <param name="salinityGPerKg">S, g/kg, 0 to 42.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Density(double temperatureC, double salinityGPerKg)
    {
        double t = Require.InRange(temperatureC, 0.0, 40.0);
        double s = Require.InRange(salinityGPerKg, 0.0, 42.0);
        double pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return pure + s * (a + b * Math.Sqrt(s) + 4.8314e-4 * s);
    }

    /// <summary>
    /// mu, Pa s: that of fresh water times 1 + A S + B S^2 (Sharqawy, Lienhard, Zubair 2010, Desal. Water Treat. 16:354, eq. 22;
    /// coefficients from memory).
    /// </summary>
    /// <inheritdoc cref="Density" path="/param"/>
    /// <inheritdoc cref="Density" path="/exception"/>
    public static double DynamicViscosity(double temperatureC, double salinityGPerKg)
    {
        double t = temperatureC;
        double s = 1e-3 * Require.InRange(salinityGPerKg, 0.0, 42.0);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return FreshWater.DynamicViscosity(t) * (1.0 + s * (a + s * b));
    }

    /// <summary>
    /// sigma, N/m: that of fresh water times 1 + 3.766e-4 S + 2.347e-6 S t (Nayar, Panchanathan, McKinley, Lienhard 2014, J. Phys.
    /// Chem. Ref. Data 43:043103; coefficients from memory).
    /// </summary>
    /// <inheritdoc cref="Density" path="/param"/>
    /// <inheritdoc cref="Density" path="/exception"/>
    public static double SurfaceTension(double temperatureC, double salinityGPerKg)
    {
        double s = Require.InRange(salinityGPerKg, 0.0, 42.0);
        return FreshWater.SurfaceTension(temperatureC) * (1.0 + s * (3.766e-4 + 2.347e-6 * temperatureC));
    }
}
