using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;

namespace LureSim.Validation.Lures.Free;

/// <summary>What a hull in six degrees of freedom must keep when nothing takes it.</summary>
public static class FreeImpulse
{
    private const double Depth = 1000.0;

    /// <summary>N4.</summary>
    [PublishedCheck]
    public static Check DeepBody()
    {
        LureSpec round = FreeBench.Bare(Samples.HalfSpheroid(0.1, 0.02)) with { TieXM = 0.0 };
        LureSpec heavyTop = round with
        {
            MassKg = 0.99 * Samples.Water.DensityKgM3 * Samples.SpheroidVolume(0.1, 0.02),
            Ballast = [new BallastSpec(0.004, -0.012, -0.003)],
        };
        Kept spin = Tumble(FreeBench.Hull(round), 1e-4, true), top = Tumble(FreeBench.Hull(heavyTop), 1e-4, false);
        FreeHull ladder = FreeBench.Hull(round);
        double[] steps = [0.4, 0.2, 0.1, 0.05];
        return new Check(
            "N4", "A body tumbling in deep water without drag, 2 s at 0.1 ms",
            "Kirchhoff's equations, Lamb, Hydrodynamics, arts 120 to 124: impulse, its moment and energy are kept; with weight and buoyancy on, energy, the impulse along the surface and its moment about the vertical",
            "Second order in the step: 1e-3 at 0.1 ms for a body that turns three times a second.",
            [
                new("round body, weight lifted off: impulse, change", "-", 0.0, spin.Linear, 1e-3, Tol.Absolute),
                new("its moment, change", "-", 0.0, spin.Angular, 1e-3, Tol.Absolute),
                new("its energy, change", "-", 0.0, spin.Energy, 1e-3, Tol.Absolute),
                new("ballast low and aft, with weight: impulse along the surface, change", "-", 0.0, top.Linear, 1e-3, Tol.Absolute),
                new("moment about the vertical, change", "-", 0.0, top.Angular, 1e-3, Tol.Absolute),
                new("energy, change over the kinetic energy at the start", "-", 0.0, top.Energy, 1e-3, Tol.Absolute),
            ],
            new("dt, ms", "impulse of the round body, change", [.. steps.Select(ms => (ms, Tumble(ladder, 1e-3 * ms, true).Linear))],
                1.9, "order 2 of BDF2; 0.1 for the next term"));
    }

    /// <summary>N5.</summary>
    [PublishedCheck]
    public static Check ImpulseLaw()
    {
        FreeHull hull = FreeBench.Hull(FreeBench.Bare(Samples.HalfSpheroid(0.11, 0.02)));
        (double given, double along, double side, double turns) = Coast(hull, 1e-4);
        double[] steps = [1.0, 0.5, 0.25, 0.125];
        return new Check(
            "N5", "One oblique pull, then no line and no drag, hull held level",
            "Ideal fluid: momentum of body and added mass is what the line gave, along the line, whatever the hull does (Lamb, Hydrodynamics, art. 119)",
            "Second order in the step: 1e-4 of the impulse at 0.1 ms.",
            [
                new("momentum along the pull over the impulse given, worst of 3 s", "-", 1.0, along / given, 1e-4, Tol.Absolute),
                new("momentum across the pull, worst of 3 s", "-", 0.0, side / given, 1e-4, Tol.Absolute),
                BandRow.Of("way of the heading meanwhile, turns", "-", 1.0, 50.0, turns),
            ],
            new("dt, ms", "momentum across the pull over the impulse", [.. steps.Select(ms => (ms, Of(Coast(hull, 1e-3 * ms))))], 1.9, "order 2 of BDF2; 0.1 for the next term"));
    }

    private readonly record struct Kept(double Linear, double Angular, double Energy);

    private static Kept Tumble(FreeHull hull, double dt, bool lifted)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        var start = new FreeMotionState(new Vec3(0.0, 0.0, -Depth), rest.Frame.Turned(new Vec3(0.4, 0.3, 0.2)), new Vec3(0.4, 0.2, -0.1), new Vec3(6.0, 9.0, 14.0));
        var lure = new FreeLure(hull, start, 0.0);
        lure.Forces.Set(start);
        double residual = FreeBench.Gravity * ((Samples.Water.DensityKgM3 * lure.Forces.VolumeM3) - hull.MassKg);
        var pull = new Vec3(0.0, 0.0, -residual);
        (Vec3 p0, Vec3 h0) = FreeBench.Impulse(hull, start);
        double kinetic = FreeBench.Kinetic(hull, start), energy0 = lifted ? kinetic : lure.HeldJ, linear = 0.0, angular = 0.0, energy = 0.0;
        Vec3 Flat(Vec3 v) => lifted ? v : new Vec3(v.X, v.Y, 0.0);
        Vec3 Upright(Vec3 v) => lifted ? v : new Vec3(0.0, 0.0, v.Z);
        FreeBench.Run(lure, dt, 2.0, lifted ? (_, _) => pull : null, _ =>
        {
            (Vec3 p, Vec3 h) = FreeBench.Impulse(hull, lure.Now);
            linear = Math.Max(linear, Flat(p - p0).Length / p0.Length);
            angular = Math.Max(angular, Upright(About(h, p) - About(h0, p0)).Length / About(h0, p0).Length);
            energy = Math.Max(energy, Math.Abs((lifted ? FreeBench.Kinetic(hull, lure.Now) : lure.HeldJ) - energy0) / kinetic);
        });
        return new Kept(linear, angular, energy);

        // About the place of the start: the depth is only there to be deep.
        static Vec3 About(Vec3 h, Vec3 p) => h - Vec3.Cross(new Vec3(0.0, 0.0, -Depth), p);
    }

    private static double Of((double Given, double Along, double Side, double Turns) c) => c.Side / c.Given;

    /// <summary>Half a sine squared of 0.1 s at 40 deg off the bow; then 3 s alone.</summary>
    private static (double Given, double Along, double Side, double Turns) Coast(FreeHull hull, double dt)
    {
        const double seconds = 0.1, force = 1.6, bearing = 70.0 * Math.PI / 180.0;
        var along = new Vec3(Math.Cos(bearing), Math.Sin(bearing), 0.0);
        var across = new Vec3(-along.Y, along.X, 0.0);
        var lure = new FreeLure(hull, hull.AtRest(0.0, 0.0, 0.0), 0.0) { IsLevelled = true };
        double given = 0.5 * force * seconds, worst = given, side = 0.0, heading = 0.0, way = 0.0;
        FreeBench.Run(lure, dt, 3.0 + seconds, (t, _) => t >= seconds ? Vec3.Zero : force * Math.Pow(Math.Sin(Math.PI * t / seconds), 2) * along, t =>
        {
            way += Math.Abs(lure.Pose.HeadingRad - heading);
            heading = lure.Pose.HeadingRad;
            if (t >= seconds)
            {
                Vec3 p = FreeBench.Impulse(hull, lure.Now).Linear;
                worst = Math.Abs(Vec3.Dot(p, along) - given) > Math.Abs(worst - given) ? Vec3.Dot(p, along) : worst;
                side = Math.Max(side, Math.Abs(Vec3.Dot(p, across)));
            }
        });
        return (given, worst, side, way / (2.0 * Math.PI));
    }
}
