namespace LureSim.Model.Rods;

/// <summary>Inertia of the hands.</summary>
internal readonly record struct HandInertia(double InertiaKgM2, double PushedMassKg);

/// <summary>Air that the rod moves through.</summary>
/// <param name="DensityKgM3">rho.</param>
/// <param name="Cd">Cd of the rod's cylinder.</param>
/// <param name="WindMS">Wind along the cast at the rod, m/s.</param>
internal readonly record struct RodAir(double DensityKgM3, double Cd, double WindMS);

/// <summary>Work done on and by the rod since the start, J.</summary>
internal struct RodWork
{
    /// <summary>By the hands, net.</summary>
    public double HandsJ;

    /// <summary>Taken by the air.</summary>
    public double AirJ;

    /// <summary>Taken by the rod's own damping.</summary>
    public double DampingJ;

    /// <summary>Stored in its raised weight.</summary>
    public double RaisedJ;

    /// <summary>Adds work per second over a time.</summary>
    /// <param name="power">Work in 1 s.</param>
    /// <param name="h">Time, s.</param>
    public void Add(in RodWork power, double h)
    {
        HandsJ += h * power.HandsJ;
        AirJ += h * power.AirJ;
        DampingJ += h * power.DampingJ;
        RaisedJ += h * power.RaisedJ;
    }
}

/// <summary>The rod tip in one pass of a step: place at the midpoint, speed at the start, accelerations, answer to a force.</summary>
internal sealed class TipLink
{
    /// <summary>Place at the midpoint with the last accelerations, m.</summary>
    public double X, Z;

    /// <summary>Speed at the start of the step through the midpoint's levers, m/s.</summary>
    public double Vx, Vz;

    /// <summary>Acceleration without the line, and in the last pass, m/s2.</summary>
    public double FreeAx, FreeAz, LastAx, LastAz;

    /// <summary>J A^-1 J', acceleration per force, 1/kg.</summary>
    public double Gxx, Gxz, Gzz;
}

/// <summary>Masses that fly.</summary>
/// <param name="LureKg">Lure with hooks, kg.</param>
/// <param name="LineKgM">mu of the wet line, kg/m.</param>
internal readonly record struct CastLineMass(double LureKg, double LineKgM);

/// <summary>Work on lure and line since the start, J.</summary>
internal struct LineWork
{
    /// <summary>Stored in raised weight of lure and line.</summary>
    public double RaisedJ;

    /// <summary>Put into stretching the line (stored or lost there).</summary>
    public double StretchJ;

    /// <summary>Taken by the air from the lure.</summary>
    public double LureAirJ;

    /// <summary>Taken by the air from the line.</summary>
    public double LineAirJ;

    /// <summary>Energy of motion that new line has when it joins the points in the air.</summary>
    public double FedJ;
}
