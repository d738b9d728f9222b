using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class FloatSolverTests
{
    [Fact]
    public void Weight_equals_displaced_water_and_B_stands_over_G()
    {
        foreach (LureSpec lure in new[] { TestLures.Cigar(), TestLures.Pencil(), TestLures.Hollow() })
        {
            FloatReport f = FloatSolver.Solve(lure, TestLures.Water);
            Assert.Equal(f.MassKg, 1000.0 * f.DisplacedVolumeM3, 1e-9 * f.MassKg);
            double ahead = ((f.CentreOfBuoyancyXM - f.CentreOfGravityXM) * Math.Cos(f.TrimRad))
                - ((f.CentreOfBuoyancyZM - f.CentreOfGravityZM) * Math.Sin(f.TrimRad));
            Assert.Equal(0.0, ahead, 1e-9);
            Assert.Equal(0.0, f.HeelRad);
        }
    }

    // Central difference of GZ and of the trim moment against GM from the waterplane: two independent ways.
    [Fact]
    public void Metacentric_heights_are_slopes_of_the_righting_arms()
    {
        LureSpec lure = TestLures.Hollow() with { Hooks = [] };
        var hull = HullShape.Create(lure);
        LureMass mass = LureMass.Of(lure, hull);
        var body = new FloatingBody(hull, mass.MassKg, mass.Centre, 1000.0);
        FloatReport f = FloatSolver.Solve(lure, TestLures.Water);
        double slope = Difference(p => FloatBalance.RightingArmM(body, FloatBalance.Heave(body, f.TrimRad, p)));

        // Heel turns about the hull's own axis: its horizontal part is cos trim.
        Assert.Equal(f.GmTransverseM * Math.Cos(f.TrimRad), slope, 1e-5 * f.GmTransverseM);
        double lengthwise = -Difference(t => ArmAhead(body, f.TrimRad + t));
        Assert.Equal(f.GmLongitudinalM, lengthwise, 1e-4 * f.GmLongitudinalM);
    }

    [Fact]
    public void Round_body_has_a_sine_as_righting_arm()
    {
        FloatReport f = FloatSolver.Solve(TestLures.Cigar(), TestLures.Water);
        RightingCurve curve = FloatSolver.Righting(TestLures.Cigar(), TestLures.Water);
        double arm = f.GmTransverseM * Math.Cos(f.TrimRad);
        for (int i = 0; i < curve.ArmM.Count; i++)
        {
            Assert.Equal(arm * Math.Sin(curve.HeelRad[i]), curve.ArmM[i], 1e-9);
        }
    }

    [Fact]
    public void Weight_at_the_tail_stands_it_upright()
    {
        LureSpec lure = TestLures.Cigar() with { Ballast = [new BallastSpec(0.010, -0.045, 0.0)] };
        FloatReport f = FloatSolver.Solve(lure, TestLures.Water);
        Assert.Equal(0.5 * Math.PI, f.TrimRad, 1e-5);
        Assert.Contains(f.Notes, n => n.Contains("planar hull", StringComparison.Ordinal));
        Assert.True(f.NoseHeightM > 0.03);
    }

    [Fact]
    public void Ballast_on_the_back_turns_it_over()
    {
        LureSpec lure = TestLures.Cigar() with { Ballast = [new BallastSpec(0.006, -0.0099, 0.0066)] };
        FloatReport f = FloatSolver.Solve(lure, TestLures.Water);
        Assert.Equal(Math.PI, f.HeelRad, 1e-6);
        FloatReport right = FloatSolver.Solve(TestLures.Cigar(), TestLures.Water);
        Assert.Equal(right.TrimRad, f.TrimRad, 1e-6);
        Assert.Equal(right.GmTransverseM, f.GmTransverseM, 1e-8);
    }

    // Breadth over depth of a half-sunk ellipse below 1 makes it unstable: it must lie over to its broad side.
    [Fact]
    public void Narrow_deep_section_lies_on_its_side()
    {
        LureSpec lure = new(LureShape.Spheroid, 0.1, 0.012, 0.024, 0.0075, 0.04, 0.0, [], []);
        FloatReport f = FloatSolver.Solve(lure, TestLures.Water);
        Assert.Equal(0.5 * Math.PI, f.HeelRad, 1e-6);
        Assert.True(f.GmTransverseM > 0.0);
    }

    [Fact]
    public void Mirrored_ballast_mirrors_trim()
    {
        FloatReport aft = FloatSolver.Solve(TestLures.Cigar(), TestLures.Water);
        FloatReport fore = FloatSolver.Solve(
            TestLures.Cigar() with { Ballast = [new BallastSpec(0.006, 0.0099, -0.0066)] }, TestLures.Water);
        Assert.Equal(-aft.TrimRad, fore.TrimRad, 1e-9);
    }

    [Fact]
    public void Hook_steel_carries_part_of_its_weight()
    {
        LureSpec with = TestLures.Pencil();
        LureSpec without = with with { Hooks = [.. with.Hooks.Select(h => h with { SteelVolumeM3 = 0.0 })] };
        double a = FloatSolver.Solve(with, TestLures.Water).StationDraftM[10];
        double b = FloatSolver.Solve(without, TestLures.Water).StationDraftM[10];
        Assert.True(a < b);
    }

    [Fact]
    public void Too_heavy_says_that_it_sinks()
    {
        var e = Assert.Throws<ArgumentException>(
            () => FloatSolver.Solve(TestLures.Cigar() with { MassKg = 0.027 }, TestLures.Water));
        Assert.Contains("sinks", e.Message, StringComparison.Ordinal);
        FloatSolver.Solve(TestLures.Cigar() with { MassKg = 0.0255 }, TestLures.Water);
    }

    private static double ArmAhead(FloatingBody body, double trim)
    {
        FloatState s = FloatBalance.Heave(body, trim, 0.0);
        return Numerics.Vec3.Dot(s.Immersion.Centre - body.CentreOfGravity, s.Attitude.Forward);
    }

    private static double Difference(Func<double, double> f) => (f(1e-4) - f(-1e-4)) / 2e-4;
}
