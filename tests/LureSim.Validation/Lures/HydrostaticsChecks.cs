using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Validation.Lures;

/// <summary>Float and stability of bodies with closed forms.</summary>
public static class HydrostaticsChecks
{
    private const double Radius = 0.01;
    private const double Long = 0.1;

    /// <summary>H1.</summary>
    [PublishedCheck]
    public static Check FloatingLog()
    {
        (double sg, double draft, double bm)[] table =
        [
            (0.1, 0.15648, 0.814077), (0.2, 0.25407, 0.700317), (0.3, 0.34015, 0.601735), (0.4, 0.42113, 0.510841), (0.5, 0.5, 0.424413),
            (0.6, 0.57887, 0.340560), (0.7, 0.65985, 0.257886), (0.8, 0.74593, 0.175079), (0.9, 0.84352, 0.090453),
        ];
        var rows = new List<Row>();
        foreach ((double sg, double draft, double bm) in table)
        {
            FloatingBody log = Samples.Body(Samples.Cylinder(Long, Radius), Math.PI * Radius * Radius * Long, sg);
            FloatState s = FloatBalance.Heave(log, 0.0, 0.0);
            rows.Add(new Row($"draft / D, specific gravity {sg}", "-", draft, (Radius - s.Attitude.HeightM) / (2.0 * Radius), 6e-6, Tol.Absolute));
            rows.Add(new Row($"BM / R, specific gravity {sg}", "-", bm, s.Immersion.BmTransM / Radius, 6e-7, Tol.Absolute));
            rows.Add(new Row($"GM / R with G on the axis, {sg}", "-", 0.0, FloatBalance.MetacentricHeightM(log, s, s.Immersion.BmTransM) / Radius, 1e-9, Tol.Absolute));
        }

        var oval = new StationHull(Long, [new(-0.05, 0.012, 0.007), new(0.05, 0.012, 0.007)]);
        FloatState half = FloatBalance.Heave(Samples.Body(oval, Math.PI * 0.012 * 0.007 * Long, 0.5), 0.0, 0.0);
        rows.Add(new Row("BM of a half-immersed ellipse, 4 a2/(3 pi b)", "m", 4.0 * 0.012 * 0.012 / (3.0 * Math.PI * 0.007), half.Immersion.BmTransM, 1e-8, Tol.Relative));
        rows.Add(new Row("its B under water, 4 b/(3 pi)", "m", 4.0 * 0.007 / (3.0 * Math.PI), -half.Attitude.HeightOf(half.Immersion.Centre), 1e-8, Tol.Relative));
        return new Check(
            "H1", "Circular log, axis level", "closed form (circle segment), standard; recomputed",
            "Digits of the table; the cut is exact, so no discretisation enters.", rows);
    }

    /// <summary>H2.</summary>
    [PublishedCheck]
    public static Check HalfImmersedSpheroid()
    {
        LureSpec lure = Samples.HalfSpheroid(0.1, 0.02);
        FloatReport f = FloatSolver.Solve(lure, Samples.Water);
        HullForm hull = HullShape.Create(lure);
        Immersion i = Immersion.Of(hull, default);
        double volume = Samples.SpheroidVolume(0.1, 0.02) / 2.0;
        int[] counts = [6, 12, 24, 48];
        return new Check(
            "H2", "Half-immersed prolate spheroid", "closed form: V = pi L D2/12, BM = 3 D/16 across, 3 L2/(16 D) lengthwise; derived",
            "201 strips bunched toward the ends, error of order N^-3: 2e-7; float solved to 1e-12.",
            [
                new Row("displaced volume", "cm3", 1e6 * volume, 1e6 * f.DisplacedVolumeM3, 1e-9, Tol.Relative),
                new Row("BM across", "mm", 3.75, 1e3 * i.BmTransM, 1e-6, Tol.Relative),
                new Row("BM lengthwise", "mm", 93.75, 1e3 * i.BmLongM, 1e-6, Tol.Relative),
                new Row("B under water", "mm", 3.75, -1e3 * i.Centre.Z, 1e-6, Tol.Relative),
                new Row("GM across (G on the axis)", "mm", 0.0, 1e3 * f.GmTransverseM, 1e-5, Tol.Absolute),
                new Row("trim", "rad", 0.0, f.TrimRad, 1e-8, Tol.Absolute),
            ],
            new Ladder("N", "BM lengthwise, relative", [.. counts.Select(n => ((double)n, Math.Abs((Immersion.Of(hull, default, n).BmLongM / 0.09375) - 1.0)))],
                2.9, "order 3 of Fejer's rule on a beam that ends like a root; 0.1 for the next term"));
    }

    /// <summary>H3.</summary>
    [PublishedCheck]
    public static Check SquareBeams()
    {
        (double s, double gm)[] table = [(0.1, 0.38333), (0.2, 0.016667), (0.25, -0.041667), (0.5, -0.083333), (0.75, -0.013889), (0.8, 0.0041667)];
        List<Row> rows = [.. table.Select(p => new Row($"GM / side, specific gravity {p.s}", "-", p.gm, BeamGm(1.0, p.s), 6e-6, Tol.Absolute))];
        rows.Add(new Row("cube, specific gravity 0.8: BM / side", "-", 0.104, Beam(1.0, 0.8).State.Immersion.BmTransM, 5e-4, Tol.Absolute));
        rows.Add(new Row("lower neutral specific gravity", "-", 0.211325, Samples.Root(s => -BeamGm(1.0, s), 0.1, 0.5), 1e-6, Tol.Absolute));
        rows.Add(new Row("upper neutral specific gravity", "-", 0.788675, Samples.Root(s => BeamGm(1.0, s), 0.5, 0.95), 1e-6, Tol.Absolute));
        rows.Add(new Row("neutral breadth / depth at 0.5", "-", 1.224745, Samples.Root(b => BeamGm(b, 0.5), 0.5, 2.0), 1e-6, Tol.Absolute));
        return new Check(
            "H3", "Square and rectangular beams", "fluid-mechanics texts (from memory), recomputed; the cube of 0.8 as in a published exercise",
            "Digits of the table; polygon sections are cut exactly.", rows);
    }

    /// <summary>H4.</summary>
    [PublishedCheck]
    public static Check UprightCylinderAndCone() => new(
        "H4", "Upright cylinder and cone at the edge of stability", "fluid-mechanics texts (from memory)",
        "The surface is held a millionth of a radian off the sections, which moves the neutral point by less than 1e-5.",
        [
            new Row("cylinder, neutral D/H at 0.5", "-", 1.414214, NeutralCylinder(0.5), 1e-5, Tol.Relative),
            new Row("cylinder, neutral D/H at 0.8", "-", Math.Sqrt(8.0 * 0.8 * 0.2), NeutralCylinder(0.8), 1e-5, Tol.Relative),
            new Row("cone of 30 deg, neutral specific gravity", "-", 0.421875, NeutralCone(30.0), 1e-4, Tol.Relative),
            new Row("cone of 45 deg, neutral specific gravity", "-", 0.125, NeutralCone(45.0), 1e-4, Tol.Relative),
        ]);

    /// <summary>H5.</summary>
    [PublishedCheck]
    public static Check WorkedPontoons()
    {
        const double depth = 4.0;
        var first = new FloatingBody(new BoxHull(20.0, 9.0, depth), 200e3, new Vec3(0.0, 0.0, 5.6 - (0.5 * depth)), 1025.0);
        FloatState a = FloatBalance.Heave(first, 0.0, 0.0);
        double keelA = a.Attitude.HeightM - (0.5 * depth);
        var second = new FloatingBody(new BoxHull(7.0, 3.0, depth), 30e3, Vec3.Zero, 980.0);
        FloatState b = FloatBalance.Heave(second, 0.0, 0.0);
        double kb = b.Immersion.Centre.Z + (0.5 * depth);
        return new Check(
            "H5", "Two worked pontoons", "published exercises with numbers (loaded pontoon of 200 t; pontoon of 30 t), read in stored copies",
            "First: last printed digit. Second: its source rounds early, 0.6 %.",
            [
                new Row("200 t: displaced volume", "m3", 195.12, a.Immersion.VolumeM3, 0.005, Tol.Absolute),
                new Row("200 t: draft", "m", 1.08, -keelA, 0.005, Tol.Absolute),
                new Row("200 t: KB", "m", 0.54, a.Immersion.Centre.Z + (0.5 * depth), 0.005, Tol.Absolute),
                new Row("200 t: BM", "m", 6.23, a.Immersion.BmTransM, 0.005, Tol.Absolute),
                new Row("200 t: GM", "m", 1.17, FloatBalance.MetacentricHeightM(first, a, a.Immersion.BmTransM), 0.005, Tol.Absolute),
                new Row("30 t: draft", "m", 1.45, (0.5 * depth) - b.Attitude.HeightM, 0.006, Tol.Relative),
                new Row("30 t: BM", "m", 0.517, b.Immersion.BmTransM, 0.006, Tol.Relative),
                new Row("30 t: B over the base", "m", 0.725, kb, 0.006, Tol.Relative),
                new Row("30 t: neutral G over the base", "m", 1.242, kb + b.Immersion.BmTransM, 0.006, Tol.Relative),
            ]);
    }

    /// <summary>H6.</summary>
    [PublishedCheck]
    public static Check SmallMotionPeriods()
    {
        const double g = 9.80665;
        double rho = Samples.Water.DensityKgM3;
        FloatingBody log = Samples.Body(Samples.Cylinder(Long, Radius), Math.PI * Radius * Radius * Long, 0.5, 0.0, -0.003);
        FloatState s = FloatBalance.Heave(log, 0.0, 0.0);
        double stiffness = rho * g * s.Immersion.WaterplaneAreaM2;
        double added = rho * Radius * Radius * Long * SectionAddedMass.Heave(0.0);
        double gm = FloatBalance.MetacentricHeightM(log, s, s.Immersion.BmTransM);
        return new Check(
            "H6", "Heave and roll periods of a half-immersed cylinder, D 20 mm", "derived from Archimedes and A4",
            "Five digits.",
            [
                new Row("heave with added mass", "s", 0.25147, 2.0 * Math.PI * Math.Sqrt((log.MassKg + added) / stiffness), 6e-6, Tol.Absolute),
                new Row("heave without", "s", 0.17781, 2.0 * Math.PI * Math.Sqrt(log.MassKg / stiffness), 6e-6, Tol.Absolute),
                new Row("roll, G 3 mm low, radius of gyration 7 mm", "s", 0.25642, 2.0 * Math.PI * Math.Sqrt(0.007 * 0.007 / (g * gm)), 6e-6, Tol.Absolute),
            ]);
    }

    private static (FloatingBody Body, FloatState State) Beam(double breadth, double specificGravity)
    {
        FloatingBody body = Samples.Body(new BoxHull(10.0, breadth, 1.0), 10.0 * breadth, specificGravity);
        return (body, FloatBalance.Heave(body, 0.0, 0.0, 41));
    }

    private static double BeamGm(double breadth, double specificGravity)
    {
        (FloatingBody body, FloatState state) = Beam(breadth, specificGravity);
        return FloatBalance.MetacentricHeightM(body, state, state.Immersion.BmTransM);
    }

    private static double NeutralCylinder(double specificGravity) => Samples.Root(
        ratio =>
        {
            double r = 0.5 * ratio * Long;
            FloatingBody can = Samples.Body(Samples.Cylinder(Long, r), Math.PI * r * r * Long, specificGravity);
            return UprightGm(can);
        },
        0.5,
        2.5);

    private static double NeutralCone(double halfAngleDeg)
    {
        double r = Long * Math.Tan(halfAngleDeg * Math.PI / 180.0);
        var cone = new StationHull(Long, [new(-0.5 * Long, 0.0, 0.0), new(0.5 * Long, r, r)]);
        double volume = Math.PI * r * r * Long / 3.0;
        return Samples.Root(s => UprightGm(Samples.Body(cone, volume, s, 0.25 * Long)), 0.02, 0.9);
    }

    private static double UprightGm(FloatingBody body)
    {
        FloatState s = FloatBalance.Heave(body, 0.5 * Math.PI, 0.0, 81);
        return FloatBalance.MetacentricHeightM(body, s, s.Immersion.BmLongM);
    }
}
