using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Validation.Lures.Free;

/// <summary>The hull in six degrees of freedom with roll, pitch and heave held, beside the planar hull.</summary>
public static class FreeLevelled
{
    // Alike at both ends, ballast under the middle: floats level, G at mid-length.
    private static readonly LureSpec Level = new(
        LureShape.Cigar, 0.110, 0.0205, 0.0205, 0.0165, 0.0506, 0.0, [new BallastSpec(0.006, 0.0, -0.0066)],
        [new HookSpec(0.0012, 0.035, -0.008, 6e-5, 0.15e-6, 3e-5), new HookSpec(0.0012, -0.035, -0.008, 6e-5, 0.15e-6, 3e-5)]);

    /// <summary>N11.</summary>
    [PublishedCheck]
    public static Check HeldLevel()
    {
        FreeHull free = FreeBench.Hull(Level);
        WalkHull own = WalkHullBuilder.Build(Level, Samples.Water), same = FromNodes(own);
        (double apart, double turned, double way) = Walk(free, same, 1e-4);
        double[] steps = [0.8, 0.4, 0.2, 0.1];
        return new Check(
            "N11", "Roll, pitch and heave held: the hull in six degrees of freedom beside the planar walk, 5 s of a scripted pull",
            "The planar equations (T1, I2), two programs; coefficients of the planar hull taken from the sections of the other",
            "Both steps are of order 2 with different guesses: at 0.1 ms 1e-5 m, which a walk has made larger. Own sums of the planar hull: it spreads the end "
                + "correction evenly over the immersed sections, the other over the length (2 to 3 % of the added mass); 21 equal strips against 40 in drag; 64 strips behind x0.",
            [
                new("noses, farthest apart", "m", 0.0, apart, 1e-5, Tol.Absolute),
                new("headings, farthest apart", "rad", 0.0, turned, 1e-4, Tol.Absolute),
                BandRow.Of("way of the nose", "m", 1.0, 10.0, way),
                new("M22, own sums", "g", 1e3 * same.M22, 1e3 * own.M22, 0.02, Tol.Relative),
                new("M33, own sums", "kg m2", same.M33, own.M33, 0.03, Tol.Relative),
                new("cross-flow drag over speed, own sums", "kg/m", same.StripDragKgM.Sum(), own.StripDragKgM.Sum(), 0.01, Tol.Relative),
                new("shed at the stern over both speeds, own sums", "kg/m", same.ShedAhead.AtKgM, own.ShedAhead.AtKgM, 2e-3, Tol.Relative),
                new("its moment over both speeds, own sums", "kg", same.ShedAhead.BehindKg, own.ShedAhead.BehindKg, 0.02, Tol.Relative),
            ],
            new("dt, ms", "noses apart, m", [.. steps.Select(ms => (ms, Walk(free, same, 1e-3 * ms).Apart))], 1.8, "order 2 of both steps, whose guesses differ; 0.2 for the next term"));
    }

    /// <summary>Coefficients of the planar hull as the sections give them at rest.</summary>
    private static WalkHull FromNodes(WalkHull own)
    {
        FreeHull hull = FreeBench.Hull(Level), plain = FreeBench.Hull(Level with { SternShedding = 0.0 });
        HullNodes nodes = hull.Water.Nodes;
        var forces = new FreeForces(hull);
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        forces.Set(rest);
        var cut = new NodeCut(nodes);
        cut.Set(rest.Water);
        double[] drag = [.. Enumerable.Range(0, HullNodes.Count).Select(j =>
            hull.Water.DragKgM3 * cut.HalfHeight[j] * (1.0 + Math.Clamp(cut.Level[j], -1.0, 1.0)) * nodes.Width[j])];
        return own with
        {
            M22 = forces.Mass[1, 1],
            M23 = forces.Mass[1, 5],
            M33 = forces.Mass[5, 5],
            StripXM = nodes.X,
            StripDragKgM = drag,
            ShedAhead = Shed(hull, plain, rest, 1.0, hull.Tail.XM),
            ShedAstern = Shed(hull, plain, rest, -1.0, hull.Head.XM),
        };
    }

    /// <summary>What the stern adds to the forces of a hull without it, at unit speeds.</summary>
    private static SternShedding Shed(FreeHull hull, FreeHull plain, FreeMotionState rest, double u, double place)
    {
        (double At, double Moment) By(double v, double r)
        {
            FreeMotionState s = rest with { Velocity = new Vec3(u, v, 0.0), Rate = new Vec3(0.0, 0.0, r) };
            FreeForces with = new(hull), without = new(plain);
            with.Set(s);
            without.Set(s);
            return (with.Drag[1, 1] - without.Drag[1, 1], with.Force[5] - without.Force[5]);
        }

        (double at, double drift) = By(1.0, 0.0);
        return new SternShedding(place, at, drift / u, By(0.0, 1.0).Moment / u);
    }

    private static (double Apart, double Turned, double Way) Walk(FreeHull free, WalkHull planar, double dt)
    {
        const double heading = 0.3;
        var walk = new PlanarLure(new WalkingHull(planar), new HullState(0.0, 0.0, heading, 0.0, 0.0, 0.0, 0.0, 0.0));
        Vec3 tie = walk.Tie, last = walk.Pose.Nose;
        var level = new FreeLure(free, free.AtRest(tie.X, tie.Y, heading), heading) { IsLevelled = true };
        double apart = 0.0, turned = 0.0, way = 0.0;
        for (int i = 0; i < (int)Math.Round(5.0 / dt); i++)
        {
            Bdf2 step = i == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            Step(walk, step, (i + 1) * dt);
            Step(level, step, (i + 1) * dt);
            Vec3 a = walk.Pose.Nose, b = level.Pose.Nose;
            apart = Math.Max(apart, Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2)));
            turned = Math.Max(turned, Math.Abs(walk.Pose.HeadingRad - level.Pose.HeadingRad));
            way += (a - last).Length;
            last = a;
        }

        return (apart, turned, way);
    }

    private static void Step(ILineEnd lure, Bdf2 step, double t)
    {
        lure.Guess(step);
        lure.Begin(step, Pull(t, lure.Tie), Vec3.Zero);
        lure.Finish(step, Vec3.Zero);
        lure.Commit();
    }

    /// <summary>A twitch of 0.25 m a second on a spring of 20 N/m toward a point 4 m ahead that comes no nearer.</summary>
    private static Vec3 Pull(double t, Vec3 tie)
    {
        double phase = t - Math.Floor(t), stroke = 0.25 * Math.Clamp(phase / 0.15, 0.0, 1.0) * (phase < 0.15 ? 1.0 : Math.Clamp(1.0 - ((phase - 0.15) / 0.2), 0.0, 1.0));
        var way = new Vec3(4.0 + stroke - tie.X, -tie.Y, 0.0);
        double tension = 20.0 * (way.Length - (4.02 - (0.3 * Math.Floor(t))));
        return tension > 0.0 ? (tension / way.Length) * way : Vec3.Zero;
    }
}
