namespace LureSim.Model.Rods;

/// <summary>
/// The power of a rod: the load that drops the tip by a third of the free length. Rod clamped level, load kept vertical,
/// own weight acting, drop counted from the tip's place without the load.
/// </summary>
internal static class RodPower
{
    /// <summary>Standard gravity in the bend test, m/s2.</summary>
    public const double GravityMS2 = 9.80665;

    /// <summary>Tip drop under a load over the free length.</summary>
    /// <param name="chain">The rod.</param>
    /// <param name="loadN">P, N, not negative.</param>
    public static double DropShare(RodChain chain, double loadN)
    {
        ArgumentNullException.ThrowIfNull(chain);
        double free = RodStatics.Solve(chain, 0.0, 0.0, 0.0, GravityMS2).TipYM;
        return (free - RodStatics.Solve(chain, 0.0, 0.0, -loadN, GravityMS2).TipYM) / chain.FreeLengthM;
    }

    /// <summary>The angle of the tip in the bend test: the action of the rod, rad (larger = bends more in the tip).</summary>
    /// <param name="chain">The rod.</param>
    /// <param name="thirdLoadN">Its power, N.</param>
    public static double ActionRad(RodChain chain, double thirdLoadN)
    {
        ArgumentNullException.ThrowIfNull(chain);
        return -RodStatics.Solve(chain, 0.0, 0.0, -thirdLoadN, GravityMS2).TipAngleRad;
    }

    /// <summary>The action without the rod's own weight, rad: a matter of the taper alone, the same for any length and stiffness.</summary>
    /// <param name="tipRadiusRatio">rho, 0.001 to 1.</param>
    /// <param name="stiffnessExponent">p, 0 to 6.</param>
    public static double PlainActionRad(double tipRadiusRatio, double stiffnessExponent)
    {
        // Next to no mass: its weight moves the tip by a millionth of a millionth.
        RodChain chain = RodChain.Build(new RodTaper(1.0, 1.0, 1e-12, tipRadiusRatio, stiffnessExponent, 1.0, 0.01), 40);
        return ActionRad(chain, ThirdLoad(chain));
    }

    /// <summary>EI_0 for which the load drops the tip by a third, N m2.</summary>
    /// <param name="taper">The rod; its own stiffness is not read.</param>
    /// <param name="thirdLoadN">Power, N, positive.</param>
    /// <param name="links">n of the chain that will be used, so that the chain itself passes the test exactly.</param>
    /// <exception cref="ArgumentException">The load is not positive.</exception>
    /// <exception cref="ModelException">The rod is so heavy for its power that its own weight bends it down first.</exception>
    public static double RootStiffness(RodTaper taper, double thirdLoadN, int links)
    {
        ArgumentNullException.ThrowIfNull(taper);
        if (!(thirdLoadN > 0.0 && double.IsFinite(thirdLoadN)))
        {
            throw new ArgumentOutOfRangeException(nameof(thirdLoadN), thirdLoadN, "must be positive");
        }

        // Small-deflection answer first; the true one is near it, and the drop falls as EI rises.
        RodChain unit = RodChain.Build(taper with { RootStiffnessNm2 = 1.0 }, links);
        double guess = 3.0 * thirdLoadN * Flexibility(unit) / unit.FreeLengthM;
        double Excess(double scale) => DropShare(RodChain.Build(taper with { RootStiffnessNm2 = guess * scale }, links), thirdLoadN) - (1.0 / 3.0);
        double low = 1.0, high = 1.0;
        while (Excess(low) < 0.0)
        {
            low *= 0.8;
            if (low < 0.05)
            {
                throw new ModelException("The rod is too heavy for its power: its own weight bends it down.", 0.0);
            }
        }

        while (Excess(high) > 0.0)
        {
            high *= 1.25;
        }

        return guess * MathNet.Numerics.RootFinding.Brent.FindRoot(Excess, low, high, 1e-12, 200);
    }

    /// <summary>The power of a rod of known stiffness, N: the other way round than <see cref="RootStiffness"/>.</summary>
    /// <param name="chain">The rod.</param>
    /// <exception cref="ModelException">Its own weight bends it down so far that no load drops the tip by a third more.</exception>
    public static double ThirdLoad(RodChain chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        double high = chain.FreeLengthM / (3.0 * Flexibility(chain));
        double Excess(double load) => DropShare(chain, load) - (1.0 / 3.0);
        for (int doublings = 0; Excess(high) < 0.0; doublings++)
        {
            high *= 2.0;
            if (doublings == 10)
            {
                throw new ModelException("The rod is too heavy for its power: its own weight bends it down.", 0.0);
            }
        }

        return MathNet.Numerics.RootFinding.Brent.FindRoot(Excess, 0.0, high, 1e-10 * high, 200);
    }

    /// <summary>Tip displacement per tip load of the straight rod, m/N.</summary>
    /// <param name="chain">The rod.</param>
    public static double Flexibility(RodChain chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        double lever = 0.0, sum = 0.0;
        for (int j = chain.Links - 1; j >= 0; j--)
        {
            lever += chain.LengthM[j + 1];
            sum += lever * lever / chain.SpringNm[j];
        }

        return sum;
    }
}
