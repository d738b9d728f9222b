namespace LureSim.Model.Media;

/// <summary>Water as the scenario states it.</summary>
/// <param name="TemperatureC">t, deg C, 0 to 40.</param>
/// <param name="SalinityGPerKg">S, g of salt per kg of water, 0 (fresh) to 42; 35 is the open sea.</param>
/// <param name="ContactHeightM">Height over and depth under the surface between which a line passes from dry to wet, m, 0.0005 to 0.02; guess 0.005 (0.002 to 0.005): a thin
/// line that is lifted off draws a meniscus of up to sqrt(2) l_c = 3.9 mm, and the water closes over it at the same depth (H7).</param>
public sealed record WaterSpec(
    [property: Parameter("t", "C", 0.0, 40.0)] double TemperatureC = 22.0,
    [property: Parameter("S", "g/kg", 0.0, 42.0)] double SalinityGPerKg = 0.0,
    [property: Parameter("contact height", "m", 5e-4, 0.02, GuessLow = 0.002, GuessHigh = 0.005)] double ContactHeightM = 0.005) : ISpec;

/// <summary>Air and wind as the scenario states them.</summary>
/// <param name="TemperatureC">t, deg C, -20 to 50.</param>
/// <param name="AltitudeM">Height of the water above sea level, m, 0 to 4000.</param>
/// <param name="WindSpeedMS">Wind speed at 10 m above the water, m/s, 0 to 25.</param>
/// <param name="WindFromRad">Bearing the wind comes from, rad: 0 = in the angler's face (from the lure),
/// pi/2 = from the angler's left, pi = from behind.</param>
/// <param name="RoughnessM">Roughness length of the water surface in the log wind profile, m; guess 2e-4 (1e-5 to 1e-3).</param>
public sealed record AirSpec(
    [property: Parameter("t", "C", -20.0, 50.0)] double TemperatureC = 25.0,
    [property: Parameter("h", "m", 0.0, 4000.0)] double AltitudeM = 100.0,
    [property: Parameter("U_10", "m/s", 0.0, 25.0)] double WindSpeedMS = 0.0,
    [property: Parameter("bearing", "rad", -2.0 * Math.PI, 2.0 * Math.PI)] double WindFromRad = 0.0,
    [property: Parameter("z_0", "m", 1e-5, 1e-3, GuessLow = 1e-5, GuessHigh = 1e-3)] double RoughnessM = 2e-4) : ISpec;

/// <summary>The state of the water that every model reads: SI, already evaluated at its temperature.</summary>
/// <param name="DensityKgM3">rho_w, kg/m3.</param>
/// <param name="DynamicViscosityPaS">mu_w, Pa s.</param>
/// <param name="SurfaceTensionNM">sigma, N/m, against air.</param>
public sealed record WaterState(double DensityKgM3, double DynamicViscosityPaS, double SurfaceTensionNM)
{
    /// <summary>nu_w = mu_w / rho_w, m2/s.</summary>
    public double KinematicViscosityM2S => DynamicViscosityPaS / DensityKgM3;
}

/// <summary>The state of the air that every model reads: SI, already evaluated at height and temperature.</summary>
/// <param name="DensityKgM3">rho_a, kg/m3.</param>
/// <param name="DynamicViscosityPaS">mu_a, Pa s.</param>
internal sealed record AirState(double DensityKgM3, double DynamicViscosityPaS)
{
    /// <summary>nu_a = mu_a / rho_a, m2/s.</summary>
    public double KinematicViscosityM2S => DynamicViscosityPaS / DensityKgM3;
}
