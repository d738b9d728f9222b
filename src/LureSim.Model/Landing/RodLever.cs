using LureSim.Model.Rods;

namespace LureSim.Model.Landing;

/// <summary>Who has the lever: the same hands on rods of other lengths.</summary>
public static class RodLever
{
    /// <summary>Pull on a fish that hands of a torque hold with a rod built longer or shorter, N: the same power load, mass beyond the grip as length^1.5
    /// (guess, 1 to 2). Nothing but the hands limits it.</summary>
    /// <param name="rod">Rod.</param>
    /// <param name="lengthM">Its length, m.</param>
    /// <param name="angleRad">Butt over the line, rad; a right angle is square to it.</param>
    /// <param name="torqueNm">Torque of the hands, N m.</param>
    /// <exception cref="ArgumentException">The rod or its length is out of range.</exception>
    /// <exception cref="ModelException">No stiffness fulfils the bend test.</exception>
    public static double PullN(RodSpec rod, double lengthM, double angleRad, double torqueNm)
    {
        ArgumentNullException.ThrowIfNull(rod);
        RodSpec built = rod with { LengthM = lengthM };
        built = built with { MassKg = rod.MassKg * Math.Pow(built.FreeLengthM / rod.FreeLengthM, 1.5) };
        Parameter.Demand(built);
        var held = new HeldRod(built, rodFactor: 1.0);
        return RodHold.PullN(n => held.Drawn(angleRad, n), s => s.ButtMomentNm, torqueNm);
    }
}
