namespace LureSim.Model.Media;

/// <summary>
/// Dry air of the standard atmosphere below 11 km (US Standard Atmosphere 1976 / ISO 2533). Moisture is left out: saturated air at
/// 30 deg C is 1.6 % lighter.
/// </summary>
internal static class StandardAir
{
    private const double SeaLevelK = 288.15;
    private const double SeaLevelPa = 101325.0;
    private const double LapseKM = 0.0065;
    private const double GasConstant = 287.05287;

    /// <summary>T of the standard atmosphere, K.</summary>
    /// <param name="altitudeM">h, geopotential height, m, 0 to 11000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Height outside its range.</exception>
    public static double TemperatureK(double altitudeM) => SeaLevelK - LapseKM * Require.InRange(altitudeM, 0.0, 11000.0);

    /// <summary>p of the standard atmosphere, Pa.</summary>
    /// <inheritdoc cref="TemperatureK"/>
    public static double Pressure(double altitudeM) =>
        SeaLevelPa * Math.Pow(TemperatureK(altitudeM) / SeaLevelK, Physics.GravityMS2 / (GasConstant * LapseKM));

    /// <summary>rho = p/(R T), kg/m3.</summary>
    /// <param name="temperatureK">T, K, 200 to 350.</param>
    /// <param name="pressurePa">p, Pa, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Density(double temperatureK, double pressurePa) =>
        Require.Positive(pressurePa) / (GasConstant * Require.InRange(temperatureK, 200.0, 350.0));

    /// <summary>mu = 1.458e-6 T^1.5/(T + 110.4), Pa s (Sutherland's law with the constants of the 1976 standard).</summary>
    /// <inheritdoc cref="Density" path="/param[@name='temperatureK']"/>
    /// <inheritdoc cref="Density" path="/exception"/>
    public static double DynamicViscosity(double temperatureK)
    {
        double t = Require.InRange(temperatureK, 200.0, 350.0);
        return 1.458e-6 * t * Math.Sqrt(t) / (t + 110.4);
    }
}
