using LureSim.Model.Assembly;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Tests.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Assembly;

/// <summary>Distance from line to hangers, by plain geometry: a level lure with its nose along -x at the origin, hangers 30 mm behind it and 8 mm under the axis.</summary>
public sealed class HookClearanceTests
{
    private static readonly LureSpec Lure = TestLures.Cigar() with
    {
        TieXM = 0.055,
        Hooks = [new HookSpec(0.001, 0.025, -0.008, 0.0, 0.0)],
    };

    // Line ahead: the tie itself is nearest, sqrt(30^2 + 8^2) mm. Line back over the hull, 5 mm to the side: passes the hanger at sqrt(5^2 + 8^2) mm.
    // Line straight across from the tie: the tie again.
    [Theory]
    [InlineData(-1.0, 0.0, 0.0, 31.048)]
    [InlineData(1.0, 0.0, 5.0, 9.434)]
    [InlineData(0.0, 1.0, 0.0, 31.048)]
    public void The_nearest_point_of_the_line_counts(double alongM, double acrossM, double beside, double expectedMm)
    {
        double y = 1e-3 * beside;
        Assert.Equal(expectedMm, 1000.0 * Clearance(Lure, new Vec3(alongM, acrossM + y, 0.0), new Vec3(0.0, y, 0.0)), 1e-3);
    }

    [Fact]
    public void A_hook_at_the_tie_and_a_lure_without_hooks_leave_the_length_of_the_hull()
    {
        LureSpec atTie = Lure with { Hooks = [new HookSpec(0.001, 0.05, -0.005, 0.0, 0.0)] };
        Assert.Equal(Lure.LengthM, Clearance(atTie, new Vec3(-1.0, 0.0, 0.0), Vec3.Zero));
        Assert.Equal(Lure.LengthM, Clearance(Lure with { Hooks = [] }, new Vec3(-1.0, 0.0, 0.0), Vec3.Zero));
    }

    private static double Clearance(LureSpec lure, Vec3 tip, Vec3 tie)
    {
        var line = new LineState(1);
        (line.X[0], line.Y[0], line.Z[0]) = (tip.X, tip.Y, tip.Z);
        (line.X[1], line.Y[1], line.Z[1]) = (tie.X, tie.Y, tie.Z);

        // Nose at the origin and toward -x: body x is -x of the world, body y is -y. Centre of gravity in the middle of the length.
        var frame = new Frame3(new Vec3(-1.0, 0.0, 0.0), new Vec3(0.0, -1.0, 0.0), new Vec3(0.0, 0.0, 1.0));
        var pose = new HullPose(new Vec3(0.055, 0.0, 0.0), Math.PI, 0.0, 0.0, 0.0, 0.0, 0.0, Vec3.Zero, Vec3.Zero, frame, 0.7);
        return HookClearance.Of(line, 1, pose, lure, Vec3.Zero);
    }
}
