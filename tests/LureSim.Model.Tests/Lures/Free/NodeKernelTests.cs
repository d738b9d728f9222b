using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Lures.Free;

/// <summary>Sections, weights and end corrections of the hull in six degrees of freedom.</summary>
public sealed class NodeKernelTests
{
    private const double Rho = 1000.0, Lid = 0.7;

    private static readonly HullForm Oval = new StationHull(0.1, [new(-0.05, 0.006, 0.009), new(0.0, 0.013, 0.008, -0.002), new(0.05, 0.004, 0.004, 0.001)]);

    // Every section at every level from dry to 4 radii deep, rolled, pitched and on its back.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.8, 0.4)]
    [InlineData(2.5, -1.2)]
    [InlineData(-1.9, 1.5)]
    public void Added_mass_is_that_of_the_sections(double roll, double pitch)
    {
        var nodes = new HullNodes(Oval);
        Vec3 up = new Attitude(0.0, pitch, roll).Up;
        double tilt = Math.Sqrt((up.Y * up.Y) + (up.Z * up.Z)), ny = up.Y / tilt, nz = up.Z / tilt;
        for (double height = -0.07; height < 0.07; height += 0.0009)
        {
            NodeAddedMass added = At(nodes, height, up, 0.0, Vec3.Zero);
            for (int j = 0; j < HullNodes.Count; j++)
            {
                HullSection s = Oval.SectionAt(nodes.X[j]);
                double half = s.HalfExtentM(ny, nz), across = s.HalfExtentM(nz, -ny);
                double t = s.RelativeLevel(ny, nz, -(height + (nodes.X[j] * up.X)) / tilt), lid = t < 1.0 ? Lid : 1.0 - ((1.0 - Lid) / (t * t));
                Assert.Equal(Rho * lid * half * half * SectionAddedMass.Sway(t), added.Sway[j], 1e-6 * Rho * half * half);
                Assert.Equal(Rho * across * across * SectionAddedMass.Heave(t), added.Heave[j], 1e-6 * Rho * across * across);
            }
        }
    }

    // Rates against differences of the same motion: heave, roll, pitch and all at once. Sections that pass a corner within the difference are left out.
    [Theory]
    [InlineData(0.3, 0.0, 0.0)]
    [InlineData(0.0, 7.0, 0.0)]
    [InlineData(0.0, 0.0, -5.0)]
    [InlineData(-0.4, 3.0, 6.0)]
    public void Rates_are_the_slopes_of_the_added_mass(double lift, double rollRate, double pitchRate)
    {
        var nodes = new HullNodes(Oval);
        const double dt = 1e-6;
        foreach (double height in new[] { -0.02, -0.006, -0.001, 0.0, 0.004, 0.009 })
        {
            var frame = new Frame3(new Vec3(1.0, 0.0, 0.0), new Vec3(0.0, 1.0, 0.0), new Vec3(0.0, 0.0, 1.0));
            frame = frame.Turned(new Vec3(0.7, 0.0, 0.0)).Turned(new Vec3(0.0, 0.3, 0.0));
            var rate = new Vec3(rollRate, pitchRate, 2.0);
            NodeAddedMass now = At(nodes, height, frame.Up, lift, Vec3.Cross(frame.Up, rate));
            NodeAddedMass after = At(nodes, height + (dt * lift), frame.Turned(dt * rate).Up, 0.0, Vec3.Zero);
            NodeAddedMass before = At(nodes, height - (dt * lift), frame.Turned(-dt * rate).Up, 0.0, Vec3.Zero);
            for (int j = 1; j < HullNodes.Count - 1; j++)
            {
                double size = Rho * now.HalfBreadth2[j] * 50.0;
                Assert.Equal((after.Sway[j] - before.Sway[j]) / (2.0 * dt), now.SwayRate[j], 2e-3 * size);
                Assert.Equal((after.Heave[j] - before.Heave[j]) / (2.0 * dt), now.HeaveRate[j], 2e-3 * size);
            }
        }
    }

    [Fact]
    public void Weights_add_up_polynomials_and_root_like_ends()
    {
        var nodes = new HullNodes(HullShape.Create(TestLures.Cigar() with { Shape = LureShape.Spheroid }));
        double Sum(Func<double, double> f) => nodes.X.Zip(nodes.Width, (x, w) => w * f(x / 0.055)).Sum() / 0.055;
        Assert.Equal(2.0, Sum(_ => 1.0), 1e-14);
        Assert.Equal(2.0 / 3.0, Sum(s => s * s), 1e-14);
        Assert.Equal(2.0 / 13.0, Sum(s => Math.Pow(s, 12)), 1e-14);
        Assert.Equal(0.0, Sum(s => Math.Pow(s, 7)), 1e-14);
        Assert.Equal(0.5 * Math.PI, Sum(s => Math.Sqrt(Math.Max(0.0, 1.0 - (s * s)))), 1e-4);
    }

    // Mass k2 and inertia J of the spheroid's strips, whatever the place of the ballast.
    [Fact]
    public void End_correction_has_the_spheroids_mass_and_inertia()
    {
        var nodes = new HullNodes(HullShape.Create(TestLures.Cigar() with { Shape = LureShape.Spheroid }));
        double[] k = EndCorrection.Of(nodes, 0.110, 5.0);
        double Sum(Func<int, double> f) => Enumerable.Range(0, HullNodes.Count).Sum(j => nodes.Width[j] * nodes.Breadth2[j] * f(j));
        Assert.Equal(Spheroid.Sway(5.0), Sum(j => k[j]) / Sum(_ => 1.0), 1e-12);
        Assert.Equal(Spheroid.YawOverStrips(5.0), Sum(j => k[j] * nodes.X[j] * nodes.X[j]) / Sum(j => nodes.X[j] * nodes.X[j]), 1e-12);
    }

    // Fitted to what is under water at rest it gave the dry nose of a tail-down hull nothing, and a hull on end billions.
    [Theory]
    [InlineData(-0.02)]
    [InlineData(-0.035)]
    [InlineData(-0.048)]
    public void A_tail_down_hull_keeps_its_nose(double ballastX)
    {
        FreeHull hull = FreeBodies.Hull(FreeBodies.TailDown(ballastX));
        double[] k = hull.Water.AddedKgM3;
        Assert.All(k, v => Assert.InRange(v, 0.0, 1300.0));
        for (int j = 0; j < HullNodes.Count; j++)
        {
            Assert.Equal(k[j], k[^(j + 1)], 1e-6);
        }

        Assert.InRange(k[25], 600.0, 1300.0);
    }

    [Fact]
    public void A_hull_that_stands_on_end_falls_like_any_other()
    {
        FreeHull hull = FreeBodies.Hull(TestLures.Cigar() with { Ballast = [new BallastSpec(0.008, -0.045, 0.0)] });
        FreeMotionState start = hull.AtRest(0.0, 0.0, 0.0);
        FreeMotionState end = FreeBodies.After(hull, start with { Frame = start.Frame.Turned(new Vec3(0.0, 1.0, 0.0)), Velocity = new Vec3(0.2, 0.3, 0.1) }, 1e-3, 1000);
        Assert.InRange(end.Velocity.Length + (0.01 * end.Rate.Length), 0.0, 1.0);
        Assert.InRange(end.Origin.Z, -0.1, 0.1);
    }

    private static NodeAddedMass At(HullNodes nodes, double height, Vec3 up, double lift, Vec3 upRate)
    {
        var water = new NodeWater(nodes, Rho, 9.81, Lid, 0.0, 0.0, 0.0);
        var axes = new WaterAxes(height, up);
        var cut = new NodeCut(nodes);
        cut.Set(axes);
        var added = new NodeAddedMass(water, cut);
        added.Set(axes, lift, upRate);
        return added;
    }
}
