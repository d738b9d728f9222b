using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Lures;

/// <summary>One step of the walking hull against the equations of motion solved by hand; sway and yaw are coupled strongly.</summary>
public sealed class WalkingHullTests
{
    private const double M11 = 0.02, M22 = 0.03, M23 = 3e-4, M33 = 2e-5, Arm = 0.05, NoseMass = 0.007, NoseStiffness = 4.0, NoseDamping = 0.1;
    private const double Det = (M22 * M33) - (M23 * M23), Dt = 1e-3;
    private static readonly Bdf2 Euler = Bdf2.BackwardEuler(Dt);

    // From rest, where nothing drags: (m22 v' + m23 r', m23 v' + m33 r') = (F, a F) solved by Cramer's rule.
    [Theory]
    [InlineData(0.0)]
    [InlineData(1.1)]
    [InlineData(Math.PI)]
    public void A_side_force_at_the_tie_turns_the_hull_by_its_arm(double heading)
    {
        const double f = 0.4;
        HullState next = FromRest(heading, new Vec3(-f * Math.Sin(heading), f * Math.Cos(heading), 0.0), 0.0, Vec3.Zero);
        Assert.Equal(0.0, next.U, 1e-15);
        Assert.Equal(Dt * f * (M33 - (M23 * Arm)) / Det, next.V, 1e-12);
        Assert.Equal(Dt * f * ((M22 * Arm) - M23) / Det, next.R, 1e-10);

        // The line's pull acts at the same place.
        HullState pulled = FromRest(heading, Vec3.Zero, 0.0, new Vec3(-f * Math.Sin(heading), f * Math.Cos(heading), 0.0));
        Assert.Equal(next.V, pulled.V, 1e-12);
        Assert.Equal(next.R, pulled.R, 1e-10);
    }

    [Fact]
    public void A_force_along_the_hull_a_moment_and_a_lift_each_move_their_own_way()
    {
        HullState next = FromRest(0.0, new Vec3(0.3, 0.0, 0.2), 1e-3, Vec3.Zero);
        Assert.Equal(Dt * 0.3 / M11, next.U, 1e-12);
        Assert.Equal(-Dt * 1e-3 * M23 / Det, next.V, 1e-12);
        Assert.Equal(Dt * 1e-3 * M22 / Det, next.R, 1e-12);
        double w = Dt * 0.2 / (NoseMass + (Dt * NoseDamping) + (Dt * Dt * NoseStiffness));
        Assert.Equal(w, next.W, 1e-12);
        Assert.Equal(Dt * w, next.Zeta, 1e-15);
    }

    // What the tie tells the line, v = free + q W F, is what the hull then does.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.8)]
    public void The_tie_yields_to_the_line_as_it_said_it_would(double heading)
    {
        var hull = new WalkingHull(Hull(M23));
        var now = new HullState(0.0, 0.0, heading, 0.3, -0.2, 4.0, 1e-3, 0.05);
        LineEnd said = hull.Begin(Euler, now, now, now, new Vec3(0.01, 0.02, 0.03), 1e-4);
        var force = new Vec3(0.5, -0.7, 0.2);
        HullState next = hull.Finish(Euler, force);

        // Both in the axes of the guess, in which the step holds the hull.
        Vec3 expected = said.FreeVelocity + (Dt * said.Yield(force));
        double lateral = next.V + (Arm * next.R);
        (double s, double c) = Math.SinCos(heading);
        Assert.Equal(expected.X, (next.U * c) - (lateral * s), 1e-12);
        Assert.Equal(expected.Y, (next.U * s) + (lateral * c), 1e-12);
        Assert.Equal(expected.Z, next.W, 1e-12);
    }

    // Free turning on the spot: m11 u' = r m23 r + r m22 v, and so on (Newman 1977, sec. 4.13): accelerations from the guess by hand.
    [Fact]
    public void Coriolis_terms_are_those_of_a_turning_body_that_carries_water()
    {
        const double u = 0.3, v = -0.2, r = 5.0;
        var hull = new WalkingHull(Hull(M23));
        var now = new HullState(0.0, 0.0, 0.0, u, v, r, 0.0, 0.0);
        hull.Begin(Euler, now, now, now, Vec3.Zero, 0.0);
        HullState next = hull.Finish(Euler, Vec3.Zero);
        double x = r * ((M22 * v) + (M23 * r)), y = -r * M11 * u, n = (-(M22 - M11) * u * v) - (M23 * u * r);
        Assert.Equal(u + (Dt * x / M11), next.U, 1e-12);
        Assert.Equal(v + (Dt * ((M33 * y) - (M23 * n)) / Det), next.V, 1e-12);
        Assert.Equal(r + (Dt * ((M22 * n) - (M23 * y)) / Det), next.R, 1e-10);
    }

    // Two strips of 2 kg/m at +-0.04 m, a hook of 0.5 kg/m across and 0.25 along at -0.03 m, 3 kg/m along the axis: secants by hand.
    [Fact]
    public void Drag_is_the_sum_over_strips_and_hooks_at_their_own_speeds()
    {
        WalkHull plain = Hull(M23) with
        {
            StripXM = [-0.04, 0.04],
            StripDragKgM = [2.0, 2.0],
            AxialDragKgM = 3.0,
            HookXM = [-0.03],
            HookDragKgM = [0.5],
            HookAlongKgM = [0.25],
        };
        var hull = new WalkingHull(plain);
        const double u = -0.3, v = 0.1, r = 10.0;

        // Strips go sideways at -0.3 and 0.5 m/s, the hook at -0.2 and with the surge at sqrt(0.13).
        double hook = Math.Sqrt(0.13);
        (double surge, double sway, double coupling, double yaw) = hull.Drag(u, v, r);
        Assert.Equal((3.0 * 0.3) + (0.25 * hook), surge, 1e-14);
        Assert.Equal(0.6 + 1.0 + (0.5 * hook), sway, 1e-14);
        Assert.Equal((0.04 * 0.4) - (0.03 * 0.5 * hook), coupling, 1e-14);
        Assert.Equal((0.0016 * 1.6) + (0.0009 * 0.5 * hook), yaw, 1e-14);

        // Power: each part's drag coefficient times its speed cubed; the hook's force along its way, 0.25 u^2 + 0.5 w^2 times its speed.
        double power = (3.0 * 0.027) + (2.0 * 0.027) + (2.0 * 0.125) + (hook * ((0.25 * 0.09) + (0.5 * 0.04)));
        Assert.Equal(power, hull.Power(u, v, r), 1e-14);
    }

    // The stern sheds a0 |u| (v + r x0) at x0, and takes chi u (b0 v + b1 r) off the moment; moving astern that of the nose. Power by the two.
    [Theory]
    [InlineData(0.5, -0.04, 2.0, 0.03, -0.0015)]
    [InlineData(-0.5, 0.035, 1.5, 0.02, 0.001)]
    public void The_stern_in_use_sheds_at_its_own_place(double u, double x, double at, double behind, double moment)
    {
        var hull = new WalkingHull(Hull(M23) with { ShedAhead = new(-0.04, 2.0, 0.03, -0.0015), ShedAstern = new(0.035, 1.5, 0.02, 0.001) });
        const double v = 0.2, r = 3.0;
        (double surge, double sway, double coupling, double yaw) = hull.Drag(u, v, r);
        Assert.Equal(0.0, surge);
        Assert.Equal(0.5 * at, sway, 1e-15);
        Assert.Equal(0.5 * at * x, coupling, 1e-15);
        Assert.Equal(0.5 * at * x * x, yaw, 1e-15);
        double w = v + (r * x);
        Assert.Equal((0.5 * at * w * w) - (r * u * ((behind * v) + (moment * r))), hull.Power(u, v, r), 1e-14);
    }

    private static WalkHull Hull(double m23) => new(
        0.1, 0.018, M11, M22, m23, M33, Arm, 0.004, [], [], 0.0, [], [], NoseMass, NoseStiffness, NoseDamping, [], []);

    private static HullState FromRest(double heading, Vec3 tieForce, double moment, Vec3 pull)
    {
        var hull = new WalkingHull(Hull(M23));
        var now = new HullState(0.0, 0.0, heading, 0.0, 0.0, 0.0, 0.0, 0.0);
        hull.Begin(Euler, now, now, now, tieForce, moment);
        return hull.Finish(Euler, pull);
    }
}
