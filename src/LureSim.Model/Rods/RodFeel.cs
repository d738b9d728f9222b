namespace LureSim.Model.Rods;

/// <summary>How a rod feels in a hand that holds it still or swings it: the free length turned about the hand as a stiff body.</summary>
/// <remarks>
/// Only the free length counts. Grip, reel seat and reel lie within a hand's breadth or two of the axis: a reel of 0.2 kg at 5 cm adds 5e-4 kg m2, one
/// or two per cent, the same for every rod. They do balance part of the static torque, so that torque is an upper end where the butt is heavy.
/// </remarks>
/// <param name="InertiaKgM2">I, swing weight: moment of inertia of the free length about the hand, kg m2.</param>
/// <param name="FirstMomentKgM">S, mass times its distance from the hand, kg m.</param>
public sealed record RodFeel(double InertiaKgM2, double FirstMomentKgM)
{
    /// <summary>Of a rod.</summary>
    /// <param name="rod">Rod.</param>
    /// <exception cref="ArgumentException">A number of the rod is out of range.</exception>
    public static RodFeel Of(RodSpec rod)
    {
        ArgumentNullException.ThrowIfNull(rod);
        double length = Require.InRange(rod.FreeLengthM, 1e-3, double.PositiveInfinity);
        var unit = new RodTaper(length, 1.0, 1.0, rod.TipRadiusRatio, rod.StiffnessExponent, rod.MassExponent, rod.ButtDiameterM);
        unit.Check();
        double root = rod.MassKg / unit.MassMoment(0.0, length, 0, 0.0);
        return new(root * unit.MassMoment(0.0, length, 2, 0.0), root * unit.MassMoment(0.0, length, 1, 0.0));
    }

    /// <summary>Torque that holds the rod still, N m: g S cos(elevation).</summary>
    /// <param name="elevationRad">Rod above the horizontal, rad.</param>
    public double TipTorqueNm(double elevationRad) => RodPower.GravityMS2 * FirstMomentKgM * Math.Cos(elevationRad);
}
