namespace LureSim.Model.Media;

/// <summary>Evaluates water as stated to the numbers that the models read.</summary>
public static class WaterModel
{
    /// <summary>State of fresh water (S = 0) or sea water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Temperature or salinity outside its range.</exception>
    public static WaterState Evaluate(WaterSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        double t = spec.TemperatureC;
        double s = spec.SalinityGPerKg;
        return s == 0.0
            ? new(FreshWater.Density(t), FreshWater.DynamicViscosity(t), FreshWater.SurfaceTension(t))
            : new(SeaWater.Density(t, s), SeaWater.DynamicViscosity(t, s), SeaWater.SurfaceTension(t, s));
    }
}
