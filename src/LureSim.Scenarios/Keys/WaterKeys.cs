using LureSim.Model;
using LureSim.Model.Media;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[water]</c>.</summary>
public static class WaterKeys
{
    /// <summary>Temperature.</summary>
    public static readonly KeySpec Temperature = new("water.temperature", QuantityKind.Temperature, "C", "Water temperature.")
    {
        Parameter = Parameter.Of<WaterSpec>(nameof(WaterSpec.TemperatureC)),
        Lens = Lens.OfSetup(s => s.Water.TemperatureC),
    };

    /// <summary>Salt content.</summary>
    public static readonly KeySpec Salinity = new("water.salinity", QuantityKind.Salinity, "g/kg", "Salt content; fresh is 0, the open sea 35.")
    {
        Default = "fresh",
        Choices = [new("fresh", 0), new("sea", 35)],
        Parameter = Parameter.Of<WaterSpec>(nameof(WaterSpec.SalinityGPerKg)),
        Lens = Lens.OfSetup(s => s.Water.SalinityGPerKg),
    };

    /// <summary>Layer in which a line is partly wet.</summary>
    public static readonly KeySpec ContactHeight = new(
        "water.contact_height", QuantityKind.Length, "mm", "A line so high over the water touches it no more, so deep under it is wholly wet; a thin line lifts a meniscus of up to 3.9 mm.")
    {
        Words = "height of water that clings to the line",
        Parameter = Parameter.Of<WaterSpec>(nameof(WaterSpec.ContactHeightM)),
        Lens = Lens.OfSetup(s => s.Water.ContactHeightM),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Temperature, Salinity, ContactHeight];
}
