using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Validation.Lures.Free;

/// <summary>Small free motions of the floating hull.</summary>
public static class FreePeriods
{
    private const double Length = 0.1, Diameter = 0.02, BallastKg = 0.003, BallastDepthM = 0.004;

    /// <summary>N1.</summary>
    [PublishedCheck]
    public static Check PeriodsAfloat()
    {
        LureSpec lure = FreeBench.Bare(Samples.HalfSpheroid(Length, Diameter) with { Ballast = [new BallastSpec(BallastKg, 0.0, -BallastDepthM)] });
        FreeHull hull = FreeBench.Hull(lure);
        LureMass mass = hull.Float.Mass;
        double m = mass.MassKg, g = FreeBench.Gravity, low = BallastKg * BallastDepthM / m, k1 = Spheroid.Surge(5.0), k2 = Spheroid.Sway(5.0);
        double heave = Turn(Diameter * (1.0 + k2) / (3.0 * g));

        // The hull rolls or pitches about a point between G and O, where the water it carries has its centre: no force along the surface.
        double gmLong = (3.0 * Length * Length / (16.0 * Diameter)) - (3.0 * Diameter / 16.0) + low;
        double water = 2.0 / 15.0 * Math.PI * Samples.Water.DensityKgM3 * Math.Pow(0.5 * Length, 3) * 0.25 * Diameter * Diameter * Spheroid.YawOverStrips(5.0);
        double pitch = Turn((mass.PitchInertiaKgM2 + water + (low * low * m * k1 / (1.0 + k1))) / (m * g * gmLong));
        double roll = Turn((mass.RollInertiaKgM2 + (low * low * m * k2 / (1.0 + k2))) / (m * g * low));
        double fixedG = Turn(mass.RollInertiaKgM2 / (m * g * low)), fixedO = Turn((mass.RollInertiaKgM2 + (m * low * low)) / (m * g * low));
        double rolled = Roll(hull);
        FreeHull spar = FreeBench.Hull(Spar());
        double upright = Turn((spar.MassKg + spar.SurgeAddedKg) / (Samples.Water.DensityKgM3 * g * Math.PI * 0.008 * 0.008));
        double[] steps = [4.0, 2.0, 1.0, 0.5];
        return new Check(
            "N1", "Periods of heave, pitch and roll of the hull in six degrees of freedom, without damping",
            "Archimedes (H2) and the added mass of A3: 2 pi sqrt((m + a)/(rho g Aw)), 2 pi sqrt(I/(m g GM)); derived",
            "Step of 0.2 ms: (omega dt)^2/3 = 1e-5, amplitude of 0.02 mm or 0.03 deg alike; pitch: the waterplane of 40 cylinders falls short of a spheroid's second moment by 1e-3 (a quarter of it with twice as many), half of it in the period.",
            [
                new("heave, half-immersed spheroid of 100 by 20 mm", "s", heave, Heave(hull, 2e-4), 1e-4, Tol.Relative),
                new("pitch", "s", pitch, Pitch(hull), 1e-3, Tol.Relative),
                new("roll about the axis that makes no side force", "s", roll, rolled, 1e-4, Tol.Relative),
                BandRow.Of("roll, between that about G and that about the axis", "s", fixedG, fixedO, rolled),
                new("heave of an upright spar, D 16 mm, k1 rho V carried along", "s", upright, Heave(spar, 2e-4), 1e-4, Tol.Relative),
            ],
            new("dt, ms", "heave period, relative", [.. steps.Select(ms => (ms, Math.Abs((Heave(hull, 1e-3 * ms) / Heave(hull, 1e-4)) - 1.0)))],
                1.9, "order 2 of BDF2; 0.1 for the next term"));
    }

    private static double Turn(double square) => 2.0 * Math.PI * Math.Sqrt(square);

    private static LureSpec Spar() => FreeBench.Bare(new LureSpec(
        LureShape.Stations, 0.12, 0.016, 0.016, 0.012, 0.06, 0.0, [new BallastSpec(0.008, -0.055, 0.0)], [],
        [new(-0.06, 0.008, 0.008), new(0.06, 0.008, 0.008)]));

    private static double Heave(FreeHull hull, double dt)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        var lure = new FreeLure(hull, rest with { Origin = rest.Origin + new Vec3(0.0, 0.0, 2e-5) }, 0.0);
        return FreeBench.Period(lure, dt, 3.0, s => s.Origin.Z - rest.Origin.Z);
    }

    private static double Pitch(FreeHull hull) => Swing(hull, new Vec3(0.0, 5e-4, 0.0), s => s.Frame.X.Z);

    private static double Roll(FreeHull hull) => Swing(hull, new Vec3(5e-4, 0.0, 0.0), s => s.Frame.Y.Z);

    private static double Swing(FreeHull hull, Vec3 turn, Func<FreeMotionState, double> shown)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        return FreeBench.Period(new FreeLure(hull, rest with { Frame = rest.Frame.Turned(turn) }, 0.0), 2e-4, 3.0, shown);
    }
}
