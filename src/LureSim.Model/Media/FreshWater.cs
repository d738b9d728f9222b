namespace LureSim.Model.Media;

/// <summary>Fresh water at one atmosphere, by temperature.</summary>
internal static class FreshWater
{
    /// <summary>0 deg C, K.</summary>
    internal const double ZeroCelsiusK = 273.15;

    private const double CriticalTemperatureK = 647.096;
    private const double CriticalDensityKgM3 = 322.0;

    private static readonly double[] DiluteGas = [1.67752, 2.20462, 0.6366564, -0.241605];

    // H_ij of the residual viscosity: (power i of 1/T - 1, power j of rho - 1, coefficient).
    private static readonly (int I, int J, double H)[] Residual =
    [
        (0, 0, 5.20094e-1), (1, 0, 8.50895e-2), (2, 0, -1.08374), (3, 0, -2.89555e-1),
        (0, 1, 2.22531e-1), (1, 1, 9.99115e-1), (2, 1, 1.88797), (3, 1, 1.26613), (5, 1, 1.20573e-1),
        (0, 2, -2.81378e-1), (1, 2, -9.06851e-1), (2, 2, -7.72479e-1), (3, 2, -4.89837e-1), (4, 2, -2.57040e-1),
        (0, 3, 1.61913e-1), (1, 3, 2.57399e-1), (0, 4, -3.25372e-2), (3, 4, 6.98452e-2),
        (4, 5, 8.72102e-3), (3, 6, -4.35673e-3), (5, 6, -5.93264e-4),
    ];

    /// <summary>rho_w, kg/m3 (Tanaka, Girard, Davis, Peuto, Bignell 2001, Metrologia 38:301, eq. 1; coefficients from memory).</summary>
    /// <param name="temperatureC">t, deg C, 0 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside its range.</exception>
    public static double Density(double temperatureC)
    {
        double t = Require.InRange(temperatureC, 0.0, 40.0);
        double a = t - 3.983035;
        return 999.974950 * (1.0 - a * a * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }

    /// <summary>mu_w at one atmosphere, Pa s.</summary>
    /// <inheritdoc cref="Density" path="/param"/>
    /// <inheritdoc cref="Density" path="/exception"/>
    public static double DynamicViscosity(double temperatureC) =>
        DynamicViscosity(temperatureC + ZeroCelsiusK, Density(temperatureC));

    /// <summary>
    /// mu(T, rho), Pa s (IAPWS R12-08; Huber et al. 2009, J. Phys. Chem. Ref. Data 38:101, eqs 10-12, critical enhancement dropped).
    /// </summary>
    /// <param name="temperatureK">T, K, 273 to 1173.</param>
    /// <param name="densityKgM3">rho, kg/m3, 0 to 1300.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DynamicViscosity(double temperatureK, double densityKgM3)
    {
        double t = Require.InRange(temperatureK, 273.0, 1173.0) / CriticalTemperatureK;
        double rho = Require.InRange(densityKgM3, 0.0, 1300.0) / CriticalDensityKgM3;
        double gas = 0.0;
        for (int i = 0; i < DiluteGas.Length; i++)
        {
            gas += DiluteGas[i] / Math.Pow(t, i);
        }

        double sum = 0.0;
        foreach ((int i, int j, double h) in Residual)
        {
            sum += h * Math.Pow(1.0 / t - 1.0, i) * Math.Pow(rho - 1.0, j);
        }

        return 1e-6 * (100.0 * Math.Sqrt(t) / gas) * Math.Exp(rho * sum);
    }

    /// <summary>
    /// sigma, N/m (IAPWS R1-76(2014), after Vargaftik, Volkov, Voljak 1983, J. Phys. Chem. Ref. Data 12:817; coefficients from memory).
    /// </summary>
    /// <inheritdoc cref="Density" path="/param"/>
    /// <inheritdoc cref="Density" path="/exception"/>
    public static double SurfaceTension(double temperatureC)
    {
        double tau = 1.0 - (Require.InRange(temperatureC, 0.0, 40.0) + ZeroCelsiusK) / CriticalTemperatureK;
        return 0.2358 * Math.Pow(tau, 1.256) * (1.0 - 0.625 * tau);
    }
}
