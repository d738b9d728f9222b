namespace LureSim.Model.Media;

/// <summary>
/// Steady wind over the water: U(z) = U10 ln(z/z0)/ln(10/z0), zero below the roughness length z0 (logarithmic law of the wall,
/// neutral air; Prandtl). Axes: x from the rod tip toward the cast, y to the angler's left.
/// </summary>
internal readonly struct WindProfile
{
    private const double ReferenceHeightM = 10.0;

    private readonly double _speedPerLog;
    private readonly double _roughnessM;

    /// <summary>Creates the profile of an air spec.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Speed (0 to 25 m/s), roughness (1e-5 to 1e-3 m) or bearing is out of range.</exception>
    public WindProfile(AirSpec air)
    {
        ArgumentNullException.ThrowIfNull(air);
        _roughnessM = Require.InRange(air.RoughnessM, 1e-5, 1e-3, nameof(air.RoughnessM));
        double u10 = Require.InRange(air.WindSpeedMS, 0.0, 25.0, nameof(air.WindSpeedMS));
        double from = Require.InRange(air.WindFromRad, -2.0 * Math.PI, 2.0 * Math.PI, nameof(air.WindFromRad));
        _speedPerLog = u10 / Math.Log(ReferenceHeightM / _roughnessM);
        DirectionX = -Math.Cos(from);
        DirectionY = -Math.Sin(from);
    }

    /// <summary>x part of the unit vector the wind blows toward: -1 when it comes from the lure into the angler's face.</summary>
    public double DirectionX { get; }

    /// <summary>y part of that vector: -1 when it comes from the angler's left.</summary>
    public double DirectionY { get; }

    /// <summary>True without wind.</summary>
    public bool IsCalm => _speedPerLog == 0.0;

    /// <summary>U at a height z over the water, m/s; 0 at and below the roughness length.</summary>
    public double Speed(double heightM) =>
        heightM > _roughnessM && _speedPerLog > 0.0 ? _speedPerLog * Math.Log(heightM / _roughnessM) : 0.0;

    /// <summary>Wind vector at a height, m/s.</summary>
    public (double X, double Y) Velocity(double heightM)
    {
        double u = Speed(heightM);
        return (u * DirectionX, u * DirectionY);
    }
}
