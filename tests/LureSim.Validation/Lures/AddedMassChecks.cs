using LureSim.Model.Lures;

namespace LureSim.Validation.Lures;

/// <summary>Added mass: spheroid, strips, cut sections, Munk moment.</summary>
public static class AddedMassChecks
{
    private const string Lamb = "Lamb, Hydrodynamics, 6th ed., arts 114, 115, 373";

    /// <summary>A1.</summary>
    [PublishedCheck]
    public static Check SpheroidInUnboundedFluid()
    {
        var rows = new List<Row>
        {
            // Published print (Lamb 1918).
            new("k1, L/D 1.50", "-", 0.305, Spheroid.Surge(1.50), 0.002, Tol.Absolute),
            new("k1, L/D 2.51", "-", 0.156, Spheroid.Surge(2.51), 0.002, Tol.Absolute),
            new("k1, L/D 3.99", "-", 0.082, Spheroid.Surge(3.99), 0.002, Tol.Absolute),
            new("k1, L/D 9.97", "-", 0.021, Spheroid.Surge(9.97), 0.002, Tol.Absolute),
            new("k2, L/D 3.99", "-", 0.860, Spheroid.Sway(3.99), 0.002, Tol.Absolute),
            new("k2, L/D 9.02", "-", 0.954, Spheroid.Sway(9.02), 0.002, Tol.Absolute),
            new("k', L/D 1.50", "-", 0.094, Spheroid.Yaw(1.50), 0.002, Tol.Absolute),
            new("k', L/D 2.99", "-", 0.465, Spheroid.Yaw(2.99), 0.002, Tol.Absolute),
            new("k', L/D 6.97", "-", 0.805, Spheroid.Yaw(6.97), 0.002, Tol.Absolute),
            new("k', L/D 9.02", "-", 0.865, Spheroid.Yaw(9.02), 0.002, Tol.Absolute),
            new("k1, sphere", "-", 0.5, Spheroid.Surge(1.0), 1e-12, Tol.Absolute),
            new("k2, sphere", "-", 0.5, Spheroid.Sway(1.0), 1e-12, Tol.Absolute),
            new("k', sphere", "-", 0.0, Spheroid.Yaw(1.0), 1e-12, Tol.Absolute),
        };
        foreach ((double f, double k1, double k2, double yaw) in new[]
        {
            (1.5, 0.303749, 0.622084, 0.095124), (2.0, 0.210015, 0.704210, 0.239424), (3.0, 0.121969, 0.803899, 0.465678),
            (5.0, 0.059121, 0.894261, 0.699851), (8.0, 0.029253, 0.944728, 0.839395), (15.0, 0.010865, 0.978732, 0.937071),
        })
        {
            rows.Add(new Row($"k1, L/D {f}", "-", k1, Spheroid.Surge(f), 6e-7, Tol.Absolute));
            rows.Add(new Row($"k2, L/D {f}", "-", k2, Spheroid.Sway(f), 6e-7, Tol.Absolute));
            rows.Add(new Row($"k', L/D {f}", "-", yaw, Spheroid.Yaw(f), 6e-7, Tol.Absolute));
        }

        return new Check(
            "A1", "Added mass of a prolate spheroid", Lamb + "; print: Lamb 1918, ARC R&M 623; six-digit values recomputed",
            "Print: last digit and rounded ratios (0.002); recomputed: six digits.", rows);
    }

    /// <summary>A2.</summary>
    [PublishedCheck]
    public static Check StripsAgainstTheExactSpheroid()
    {
        (double f, double j)[] table = [(3, 0.517420), (4, 0.645934), (5, 0.727845), (6, 0.783490), (8, 0.852511), (10, 0.892374)];
        List<Row> rows = [.. table.Select(p => new Row($"exact / strips in yaw, L/D {p.f}", "-", p.j, Spheroid.YawOverStrips(p.f), 6e-7, Tol.Absolute))];
        HullForm hull = HullShape.Create(Samples.HalfSpheroid(0.1, 0.02));
        double exact = 4.0 / 15.0 * Math.PI * Math.Pow(0.05, 3) * Math.Pow(0.01, 2);
        rows.Add(new Row("strip yaw inertia over rho, L 100, D 20 mm", "m5", exact, StripYaw(hull, 160), 2e-4, Tol.Relative));
        int[] counts = [20, 40, 80, 160];
        return new Check(
            "A2", "Strip theory against the exact spheroid", "derived from " + Lamb,
            "Six digits of the recomputed table; strips: midpoint rule on 160 strips, error of order N^-2.", rows,
            new Ladder("N", "strip yaw inertia, relative", [.. counts.Select(n => ((double)n, Math.Abs((StripYaw(hull, n) / exact) - 1.0)))],
                1.9, "order 2 of the midpoint rule; 0.1 for the next term"));
    }

    /// <summary>A3.</summary>
    [PublishedCheck]
    public static Check HalfImmersedSpheroid()
    {
        LureSpec lure = Samples.HalfSpheroid(0.1, 0.02);
        WalkHull hull = WalkHullBuilder.Build(lure, Samples.Water);
        LureMass mass = LureMass.Of(lure, HullShape.Create(lure));
        return new Check(
            "A3", "Half-immersed spheroid under a rigid lid, through the whole reduction of a lure",
            "Newman 1977, Marine Hydrodynamics, sec. 4.17 (from memory): half the double body; numbers from " + Lamb,
            "Five digits of the worked numbers; 201 strips and a float solved to 1e-12 add less than 1e-5, in yaw 1e-4.",
            [
                new Row("surge added mass", "g", 0.61800, 1e3 * (hull.M11 - hull.MassKg), 5e-5, Tol.Relative),
                new Row("sway added mass", "g", 9.34782, 1e3 * (hull.M22 - hull.MassKg), 5e-5, Tol.Relative),
                new Row("yaw added inertia", "kg m2", 3.80413e-6, hull.M33 - mass.YawInertiaKgM2, 1e-4, Tol.Relative),
                new Row("sway-yaw coupling", "kg m", 0.0, hull.M23, 1e-9, Tol.Absolute),
                new Row("half-immersed circle, sway, over rho R2", "-", 0.5 * Math.PI, SectionAddedMass.Sway(0.0), 1e-12, Tol.Absolute),
                new Row("circle touching the lid, sway, over rho R2", "-", Math.PI * ((Math.PI * Math.PI / 3.0) - 1.0), SectionAddedMass.Sway(0.9999999), 1e-5, Tol.Relative),
            ]);
    }

    /// <summary>A4.</summary>
    [PublishedCheck]
    public static Check PartlyImmersedCircleInHeave()
    {
        (double h, double value)[] table =
        [
            (0.25, 0.61791), (0.5, 1.05479), (0.75, 1.36273), (1.0, 1.57080), (1.25, 1.70466), (1.5, 1.79228), (1.75, 1.87153), (2.0, 2.02612),
        ];
        return new Check(
            "A4", "Partly immersed circular cylinder, heave at high frequency", "Korotkin, Added Masses of Ship Structures, p. 206",
            "Five decimals of the table.",
            [.. table.Select(p => new Row($"added mass over rho R2, draft {p.h} R", "-", p.value, SectionAddedMass.Heave(p.h - 1.0), 6e-6, Tol.Absolute))]);
    }

    /// <summary>A5.</summary>
    [PublishedCheck]
    public static Check MunkMoment()
    {
        const double ten = 10.0 * Math.PI / 180.0;
        const double rho = 998.2;
        WalkHull hull = WalkHullBuilder.Build(Samples.HalfSpheroid(0.1, 0.02), Samples.Water);
        double fromMasses = (hull.M22 - hull.M11) * 0.25 * Math.Sin(ten) * Math.Cos(ten);
        return new Check(
            "A5", "Munk moment on a spheroid at 10 deg of drift", "Munk 1924, NACA Rep. 184; Newman 1977, sec. 4.13 (both from memory), recomputed",
            "Six digits of the worked numbers; the moment from the mass matrix adds the strip error of A3.",
            [
                new Row("k2 - k1, L/D 5", "-", 0.835139, Spheroid.Sway(5.0) - Spheroid.Surge(5.0), 1e-6, Tol.Absolute),
                new Row("L 1 m, D 0.2 m, 1 m/s", "N m", 2.98577, Spheroid.MunkMomentNM(rho, 1.0, Samples.SpheroidVolume(1.0, 0.2), 5.0, ten), 2e-6, Tol.Relative),
                new Row("L 0.1 m, D 0.02 m, 0.5 m/s", "N m", 7.46443e-4, Spheroid.MunkMomentNM(rho, 0.5, Samples.SpheroidVolume(0.1, 0.02), 5.0, ten), 2e-6, Tol.Relative),
                new Row("half immersed, from the mass matrix of the walk", "N m", 3.73222e-4, fromMasses, 5e-5, Tol.Relative),
            ]);
    }

    private static double StripYaw(HullForm hull, int strips)
    {
        double dx = hull.LengthM / strips;
        double sum = 0.0;
        for (int i = 0; i < strips; i++)
        {
            double x = (((i + 0.5) / strips) - 0.5) * hull.LengthM;
            double c = hull.SectionAt(x).HalfHeightM;
            sum += 2.0 * SectionAddedMass.Sway(0.0) * c * c * x * x * dx;
        }

        return sum;
    }
}
