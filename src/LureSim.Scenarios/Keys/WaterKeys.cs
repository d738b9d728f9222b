using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[water]</c>.</summary>
public static class WaterKeys
{
    /// <summary>Temperature.</summary>
    public static readonly KeySpec Temperature = new("water.temperature", QuantityKind.Temperature, "C", "Water temperature.")
    {
        Default = "22 C",
        Low = 0,
        High = 40,
        FromSpec = s => s.Water.TemperatureC,
    };

    /// <summary>Salt content.</summary>
    public static readonly KeySpec Salinity = new("water.salinity", QuantityKind.Salinity, "g/kg", "Salt content; fresh is 0, the open sea 35.")
    {
        Default = "fresh",
        Low = 0,
        High = 42,
        Choices = [new("fresh", 0), new("sea", 35)],
        FromSpec = s => s.Water.SalinityGPerKg,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Temperature, Salinity];
}
