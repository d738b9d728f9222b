namespace LureSim.Model.Rods;

/// <summary>A rod as hands swing it: its chain, with what casts and strikes ask of it.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="BetaS">beta, damping of the joints over their stiffness: the first mode has the damping ratio of the spec, s.</param>
/// <param name="InertiaKgM2">Straight rod about the hand, kg m2.</param>
/// <param name="AirDragCoefficient">Cd of its cylinder.</param>
internal sealed record SwungRod(RodChain Chain, double BetaS, double InertiaKgM2, double AirDragCoefficient)
{
    /// <summary>Of a rod.</summary>
    /// <param name="rod">Rod.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test.</exception>
    public static SwungRod Of(RodSpec rod)
    {
        var chain = RodChain.Build(rod);
        double beta = 2.0 * rod.CastDampingRatio / RodModes.Compute(chain, 0.0).AngularFrequency(0), inertia = 0.0;
        foreach (double a in chain.InertiaKgM2)
        {
            inertia += a;
        }

        return new(chain, beta, inertia, rod.AirDragCoefficient);
    }

    /// <summary>Its equations in hands and air.</summary>
    /// <param name="hands">Inertia of the hands.</param>
    /// <param name="airDensity">rho of the air, kg/m3.</param>
    /// <param name="windMS">Wind along x, m/s.</param>
    /// <param name="gravity">g against z, m/s2.</param>
    /// <param name="handHeight">z of the turning point, m.</param>
    public ChainMotion Motion(HandInertia hands, double airDensity, double windMS, double gravity, double handHeight = 0.0) =>
        new(Chain, BetaS, hands, new RodAir(airDensity, AirDragCoefficient, windMS), gravity, handHeight);
}
