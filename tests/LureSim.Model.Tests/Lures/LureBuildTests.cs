using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

/// <summary>Solid bodies, walls, coats and ballast in place of wood, against closed forms.</summary>
public sealed class LureBuildTests
{
    private const double A = 0.05, B = 0.012, C = 0.009, M = 0.02;

    private static readonly LureSpec Ellipsoid = new(LureShape.Spheroid, 2 * A, 2 * B, 2 * C, M, A, 0.0, [], []) { Build = new(LureBuild.Solid) };

    // m/5 (a2 + b2) and its sisters, exact (any mechanics text); the rule along the body is exact for the parabola of the section's area.
    [Fact]
    public void A_solid_ellipsoid_has_the_inertia_of_the_textbook()
    {
        LureMass m = LureMass.Of(Ellipsoid, HullShape.Create(Ellipsoid));
        Assert.Equal(M / 5 * ((A * A) + (B * B)), m.YawInertiaKgM2, 1e-9 * M * A * A);
        Assert.Equal(M / 5 * ((A * A) + (C * C)), m.PitchInertiaKgM2, 1e-9 * M * A * A);
        Assert.Equal(M / 5 * ((B * B) + (C * C)), m.RollInertiaKgM2, 1e-9 * M * A * A);
    }

    [Fact]
    public void The_inertia_of_a_solid_cigar_settles_as_panels_grow()
    {
        LureSpec cigar = Ellipsoid with { Shape = LureShape.Cigar };
        HullForm hull = HullShape.Create(cigar);
        double fine = LureMass.Of(cigar, hull, 3201).YawInertiaKgM2;
        double[] off = [.. new[] { 5, 11, 21, 41, 81 }.Select(n => Math.Abs((LureMass.Of(cigar, hull, n).YawInertiaKgM2 / fine) - 1.0))];
        for (int i = 1; i < off.Length; i++)
        {
            Assert.True(off[i] < 0.5 * off[i - 1], string.Join(' ', off));
        }
    }

    // A thin spherical shell, 2/3 m r2, by panels of the same walk along the body; the midpoint rule is of order 2.
    [Fact]
    public void The_inertia_of_a_thin_sphere_settles_as_panels_grow()
    {
        LureSpec ball = new(LureShape.Spheroid, 0.04, 0.04, 0.04, M, 0.02, 0.0, [], []);
        HullForm hull = HullShape.Create(ball);
        double exact = 2.0 / 3.0 * M * 0.02 * 0.02;
        double[] off = [.. new[] { 25, 50, 100, 200 }.Select(n => Math.Abs((LureMass.Of(ball, hull, n).YawInertiaKgM2 / exact) - 1.0))];
        for (int i = 1; i < off.Length; i++)
        {
            Assert.InRange(off[i - 1] / off[i], 3.5, 4.5);
        }
    }

    [Fact]
    public void Sections_of_an_ellipsoid_give_its_inertia_the_better_the_more_there_are()
    {
        double exact = M / 5 * ((A * A) + (B * B)), last = double.PositiveInfinity;
        foreach (int n in (int[])[9, 17, 33, 65])
        {
            HullStation[] stations = [.. Enumerable.Range(0, n).Select(i => -Math.Cos(Math.PI * i / (n - 1))).Select(s => new HullStation(A * s, B * Math.Sqrt(Math.Max(0, 1 - (s * s))), C * Math.Sqrt(Math.Max(0, 1 - (s * s)))))];
            LureSpec lure = Ellipsoid with { Shape = LureShape.Stations, Stations = [.. stations] };
            double off = Math.Abs((LureMass.Of(lure, HullShape.Create(lure)).YawInertiaKgM2 / exact) - 1.0);
            Assert.True(off < 0.4 * last);
            last = off;
        }
    }

    // Of one mass: what lies on the skin has more inertia than what fills the body, and a coat lies between.
    [Fact]
    public void A_coat_lies_between_solid_and_shell()
    {
        HullForm hull = HullShape.Create(Ellipsoid);
        double solid = LureMass.Of(Ellipsoid, hull).YawInertiaKgM2;
        double coated = LureMass.Of(Ellipsoid with { Build = new(LureBuild.Solid, CoatThicknessM: 0.0005) }, hull).YawInertiaKgM2;
        double shell = LureMass.Of(Ellipsoid with { Build = new() }, hull).YawInertiaKgM2;
        Assert.True(solid < coated && coated < shell);
        Assert.InRange(shell / solid, 1.03, 1.35);
    }

    // 1 g of lead of 11340 kg/m3 in wood of 400: the wood of 1/11340 of that volume is gone, so 1 g acts as 1 - 400/11340.
    [Fact]
    public void Ballast_takes_the_place_of_wood()
    {
        const double wood = 400.0, lead = 0.004, x = -0.02, z = -0.004;
        LureSpec lure = LureWeight.Weighed(Ellipsoid with { Ballast = [new(lead, x, z)], Build = new(LureBuild.Solid, wood) });
        double volume = 4.0 / 3.0 * Math.PI * A * B * C, hole = lead / 11340.0;
        double mass = (wood * (volume - hole)) + lead;
        Assert.Equal(mass, lure.MassKg, 1e-9 * mass);
        LureMass m = LureMass.Of(lure, HullShape.Create(lure));
        double acts = lead - (wood * hole);
        Assert.Equal(acts * x / mass, m.Centre.X, 1e-9);
        Assert.Equal(acts * z / mass, m.Centre.Z, 1e-9);
        Assert.Equal(mass, m.MassKg, 1e-12);
    }

    // Cylinder with flat ends: the whole less pi (R-w)2 (L - 2w), exact; a flat end falls into a slice, so the error goes with the slice.
    [Fact]
    public void The_wall_of_a_can_settles_as_slices_grow()
    {
        const double r = 0.01, length = 0.08, w = 0.0015;
        var can = new StationHull(length, [new(-0.5 * length, r, r), new(0.5 * length, r, r)]);
        double inner = Math.PI * (r - w) * (r - w) * (length - (2 * w));
        double exact = (Math.PI * r * r * length) - inner, last = double.PositiveInfinity;
        foreach (int panels in (int[])[201, 801, 3201])
        {
            double off = Math.Abs((LureWeight.LayerM3(can, w, panels) / exact) - 1.0);
            Assert.True(off < 0.5 * last && off < 0.02);
            last = off;
        }

        Assert.Equal(Math.PI * r * r * length, LureWeight.LayerM3(can, 1.1 * r), 1e-9);
    }

    // Sphere: 4/3 pi (R3 - (R-w)3), exact.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.1)]
    [InlineData(0.4)]
    public void The_wall_of_a_ball_is_that_of_the_textbook(double share)
    {
        const double r = 0.02;
        var ball = new NamedHull(LureShape.Spheroid, 2 * r, 2 * r, 2 * r);
        double exact = 4.0 / 3.0 * Math.PI * r * r * r * (1.0 - Math.Pow(1.0 - share, 3));
        Assert.Equal(1.0, LureWeight.LayerM3(ball, share * r) / exact, 5e-3);
    }

    [Fact]
    public void A_moulded_body_weighs_wall_coat_and_ballast()
    {
        LureSpec lure = Ellipsoid with { Ballast = [new(0.003, 0.0, 0.0)], Build = new(LureBuild.Shell, 1050.0, 0.0015, 0.0001, 1200.0) };
        HullForm hull = HullShape.Create(lure);
        double coat = LureWeight.LayerM3(hull, 0.0001), wall = LureWeight.LayerM3(hull, 0.0016) - coat;
        Assert.Equal((1050.0 * wall) + (1200.0 * coat) + 0.003, LureWeight.MassKg(lure, hull), 1e-12);
        Assert.InRange(LureWeight.MassKg(lure, hull), 0.5 * 1050.0 * 0.0015 * hull.SurfaceM2(), (1.1 * 1050.0 * 0.0015 * hull.SurfaceM2()) + 0.004);
    }

    [Fact]
    public void What_cannot_be_built_is_refused()
    {
        LureSpec full = Ellipsoid with { MassKg = 0.5, Ballast = [new(0.3, 0.0, 0.0)] };
        Assert.Contains("more room", Assert.Throws<ArgumentException>(() => LureMass.Of(full, HullShape.Create(full))).Message, StringComparison.Ordinal);
        Assert.Contains("more room", Assert.Throws<ArgumentException>(() => LureWeight.Weighed(full with { Build = new(LureBuild.Solid, 400.0) })).Message, StringComparison.Ordinal);
        Assert.Contains("wall", Assert.Throws<ArgumentException>(() => LureWeight.Weighed(Ellipsoid with { Build = new(LureBuild.Shell, 1050.0) })).Message, StringComparison.Ordinal);
        Assert.Equal(Ellipsoid, LureWeight.Weighed(Ellipsoid));
    }
}
