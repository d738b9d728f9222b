namespace LureSim.Model.Media;

/// <summary>Evaluates air as stated to the numbers that the models read.</summary>
internal static class AirModel
{
    /// <summary>Density and viscosity at the stated temperature and the standard pressure of the stated height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Temperature (-20 to 50 deg C) or height (0 to 4000 m) outside its range.</exception>
    public static AirState Evaluate(AirSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        double t = Require.InRange(spec.TemperatureC, -20.0, 50.0) + FreshWater.ZeroCelsiusK;
        double p = StandardAir.Pressure(Require.InRange(spec.AltitudeM, 0.0, 4000.0));
        return new(StandardAir.Density(t, p), StandardAir.DynamicViscosity(t));
    }
}
