using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[air]</c>.</summary>
public static class AirKeys
{
    /// <summary>Temperature.</summary>
    public static readonly KeySpec Temperature = new("air.temperature", QuantityKind.Temperature, "C", "Air temperature.")
    {
        Default = "25 C",
        Low = -20,
        High = 50,
        FromSpec = s => s.Air.TemperatureC,
    };

    /// <summary>Height of the water above the sea.</summary>
    public static readonly KeySpec Altitude = new("air.altitude", QuantityKind.Length, "m", "Height of the water above sea level.")
    {
        Default = "100 m",
        Low = 0,
        High = 4000,
        FromSpec = s => s.Air.AltitudeM,
    };

    /// <summary>Wind speed.</summary>
    public static readonly KeySpec Wind = new("air.wind", QuantityKind.Speed, "m/s", "Wind speed 10 m above the water.")
    {
        Default = "0 m/s",
        Low = 0,
        High = 25,
        FromSpec = s => s.Air.WindSpeedMS,
    };

    /// <summary>Where the wind comes from.</summary>
    public static readonly KeySpec WindFrom = new(
        "air.wind_from", QuantityKind.Angle, "deg", "Where the wind comes from: 0 deg in the angler's face, 90 deg from the left.")
    {
        Default = "in face",
        Low = -2.0 * Math.PI,
        High = 2.0 * Math.PI,
        Choices =
        [
            new("in face", 0.0), new("from left", 0.5 * Math.PI), new("from behind", Math.PI), new("from right", 1.5 * Math.PI),
        ],
        FromSpec = s => s.Air.WindFromRad,
    };

    /// <summary>Roughness of the water in the wind profile.</summary>
    public static readonly KeySpec Roughness = new("air.roughness", QuantityKind.Length, "mm", "Roughness length of the water in the log wind profile.")
    {
        Default = "0.0002 m",
        Low = 1e-5,
        High = 1e-3,
        GuessLow = 1e-5,
        GuessHigh = 1e-3,
        FromSpec = s => s.Air.RoughnessM,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Temperature, Altitude, Wind, WindFrom, Roughness];
}
