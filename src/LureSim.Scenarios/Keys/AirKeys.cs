using LureSim.Model;
using LureSim.Model.Media;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[air]</c>.</summary>
public static class AirKeys
{
    /// <summary>Temperature.</summary>
    public static readonly KeySpec Temperature = new("air.temperature", QuantityKind.Temperature, "C", "Air temperature.")
    {
        Parameter = Parameter.Of<AirSpec>(nameof(AirSpec.TemperatureC)),
        Lens = Lens.OfSetup(s => s.Air.TemperatureC),
    };

    /// <summary>Height of the water above the sea.</summary>
    public static readonly KeySpec Altitude = new("air.altitude", QuantityKind.Length, "m", "Height of the water above sea level.")
    {
        Parameter = Parameter.Of<AirSpec>(nameof(AirSpec.AltitudeM)),
        Lens = Lens.OfSetup(s => s.Air.AltitudeM),
    };

    /// <summary>Wind speed.</summary>
    public static readonly KeySpec Wind = new("air.wind", QuantityKind.Speed, "m/s", "Wind speed 10 m above the water.")
    {
        Parameter = Parameter.Of<AirSpec>(nameof(AirSpec.WindSpeedMS)),
        Lens = Lens.OfSetup(s => s.Air.WindSpeedMS),
    };

    /// <summary>Where the wind comes from.</summary>
    public static readonly KeySpec WindFrom = new(
        "air.wind_from", QuantityKind.Angle, "deg", "Where the wind comes from: 0 deg in the angler's face, 90 deg from the left.")
    {
        Default = "in face",
        Choices =
        [
            new("in face", 0.0), new("from left", 0.5 * Math.PI), new("from behind", Math.PI), new("from right", 1.5 * Math.PI),
        ],
        Parameter = Parameter.Of<AirSpec>(nameof(AirSpec.WindFromRad)),
        Lens = Lens.OfSetup(s => s.Air.WindFromRad),
    };

    /// <summary>Roughness of the water in the wind profile.</summary>
    public static readonly KeySpec Roughness = new("air.roughness", QuantityKind.Length, "mm", "Roughness length of the water in the log wind profile.")
    {
        Words = "roughness of the water for the wind",
        Parameter = Parameter.Of<AirSpec>(nameof(AirSpec.RoughnessM)),
        Lens = Lens.OfSetup(s => s.Air.RoughnessM),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Temperature, Altitude, Wind, WindFrom, Roughness];
}
