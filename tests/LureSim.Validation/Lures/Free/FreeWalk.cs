using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.Lures.Free;

/// <summary>The hull in six degrees of freedom on its way: rolled, coasting, towed, and held level beside the planar hull.</summary>
public static class FreeWalk
{
    // Invented round walker of 110 mm; with its weight on the axis it floats level and has no upright.
    private static readonly LureSpec Round = new(LureShape.Cigar, 0.110, 0.0205, 0.0205, 0.018, 0.0506, 0.0, [], []);

    /// <summary>N6.</summary>
    [PublishedCheck]
    public static Check RollDoesNotMatter()
    {
        FreeHull hull = FreeBench.Hull(Round);
        (double way, double apart, double nose) = (0.0, 0.0, 0.0);
        FreeLure upright = Rolled(hull, 0.0), over = Rolled(hull, 115.0);
        var trail = new List<Vec3>();
        FreeBench.Run(upright, 5e-4, 3.0, Twitches(upright), _ => trail.Add(upright.Now.Place(hull.Nose)));
        int i = 0;
        Vec3 last = over.Now.Place(hull.Nose);
        FreeBench.Run(over, 5e-4, 3.0, Twitches(over), _ =>
        {
            Vec3 now = over.Now.Place(hull.Nose);
            way += (now - last).Length;
            apart = Math.Max(apart, (now - trail[i]).Length);
            nose = Math.Max(nose, Math.Abs(now.Y));
            last = now;
            i++;
        });
        return new Check(
            "N6", "A round hull with weight and tie on its axis walks 3 s the same way however it is rolled", "Symmetry",
            "Rounding, which a walk makes grow: a millionth of the hull's length per second.",
            [
                new("nose, started upright and rolled by 115 deg, farthest apart", "m", 0.0, apart, 3e-7, Tol.Absolute),
                BandRow.Of("way of the nose", "m", 0.5, 10.0, way),
                BandRow.Of("farthest to the side", "m", 0.01, 1.0, nose),
            ]);
    }

    /// <summary>N7.</summary>
    [PublishedCheck]
    public static Check SurgeDecays()
    {
        FreeHull hull = FreeBench.Hull(Round);
        const double u0 = 0.5, seconds = 1.0;
        double k = hull.AxialDragKgM / (hull.MassKg + hull.SurgeAddedKg), expected = u0 / (1.0 + (k * u0 * seconds));
        return new Check(
            "N7", "A hull that coasts", "closed form of m u' = -k u2: u0/(1 + k u0 t)",
            "Held level: the step, with drag at the extrapolated speed, is exact on this law; the float is solved to 1e-9 or so. Free: the drag acts at the centre of what is under water, 4 mm under the axis, and the hull "
                + "dips its nose by a hundredth of a radian; what goes under and rises takes a thousandth of the speed.",
            [
                new("speed after 1 s, held level, 5 ms", "m/s", expected, Coast(hull, 5e-3, true, u0, seconds), 1e-7, Tol.Relative),
                new("speed after 1 s, free in six", "m/s", expected, Coast(hull, 5e-4, false, u0, seconds), 2e-3, Tol.Relative),
            ]);
    }

    /// <summary>N8.</summary>
    [PublishedCheck]
    public static Check TowCriterion()
    {
        var rows = new List<Row>();
        foreach (string file in new[] { "large-walker.toml", "small-walker.toml" })
        {
            Setup setup = Shipped.Read(Shipped.Named(file)).Setup;
            FreeMotionState straight = Towed(setup.Lure, 2.0, 0.0, 20.0).Lure.Now;
            double neutral = Samples.Root(chi => Margin(setup.Lure, chi, straight), 0.01, 1.9);
            foreach (double off in new[] { -0.25, -0.12, 0.12, 0.25 })
            {
                double sheer = Towed(setup.Lure, neutral + off, 0.1, 40.0).SheerDeg;
                rows.Add(new(
                    $"{file}: {Math.Abs(off):F2} {(off > 0.0 ? "above" : "below")} the neutral share {neutral:F2}: {(off > 0.0 ? "comes straight" : "sheers")} (run: {sheer:F1} deg)",
                    "yes = 1", 1.0, (sheer < 0.5) == (off > 0.0) ? 1.0 : 0.0, 0.0, Tol.Absolute));
            }
        }

        return new Check(
            "N8", "Steady pull on an elastic line in six degrees of freedom: linear criterion against runs", "x_tie > Nv/Yv (T1, T3), at the attitude in which the hull is towed",
            "The run must sheer below the neutral share and come straight above it; nearer than 0.12 the pitchfork is too slow for 40 s.", rows);
    }

    private static FreeLure Rolled(FreeHull hull, double deg)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.3);
        return new FreeLure(hull, rest with { Frame = rest.Frame.Turned(new Vec3(deg * Math.PI / 180.0, 0.0, 0.0)) }, 0.3);
    }

    /// <summary>One twitch a second: a tip 4 m ahead and 0.8 m up draws 0.25 m in 0.15 s on a spring of 20 N/m, gives it back and takes up 0.3 m.</summary>
    private static Func<double, Vec3, Vec3> Twitches(FreeLure lure) => (t, tie) =>
    {
        double phase = t - Math.Floor(t), stroke = 0.25 * Math.Clamp(phase / 0.15, 0.0, 1.0) * (phase < 0.15 ? 1.0 : Math.Clamp(1.0 - ((phase - 0.15) / 0.2), 0.0, 1.0));
        var way = new Vec3(4.0 + stroke - tie.X, -tie.Y, 0.8 - tie.Z);
        double tension = 20.0 * (way.Length - (4.02 - (0.3 * Math.Floor(t))));
        return tension > 0.0 ? (tension / way.Length) * way : Vec3.Zero;
    };

    private static double Coast(FreeHull hull, double dt, bool level, double u0, double seconds)
    {
        var lure = new FreeLure(hull, hull.AtRest(0.0, 0.0, 0.0) with { Velocity = new Vec3(u0, 0.0, 0.0) }, 0.0) { IsLevelled = level };
        FreeBench.Run(lure, dt, seconds);
        return lure.Pose.SurgeMS;
    }

    /// <summary>Towed by 3 m of elastic line toward +x at 0.5 m/s; mean angle of hull off the line's way over the last quarter.</summary>
    private static (FreeLure Lure, double SheerDeg) Towed(LureSpec spec, double chi, double heading, double seconds)
    {
        FreeHull hull = FreeBench.Hull(spec with { SternShedding = chi });
        FreeMotionState rest = hull.AtRest(0.0, 0.0, heading);
        double height = rest.Place(hull.Tie).Z, sum = 0.0;
        int count = 0;
        var lure = new FreeLure(hull, rest with { Velocity = new Vec3(0.5, 0.0, 0.0) }, heading);
        Vec3 last = rest.Place(hull.Tie);
        const double dt = 1e-3;
        FreeBench.Run(lure, dt, seconds, (t, tie) =>
        {
            var way = new Vec3(3.0 + (0.5 * t) - tie.X, -tie.Y, height - tie.Z);
            double stretch = way.Length - 3.0, rate = (0.5 - ((tie.X - last.X) / dt)) * way.X / way.Length;
            last = lure.Now.Place(hull.Tie);
            double tension = Math.Max(0.0, (20.0 * stretch) + (0.5 * rate));
            return (tension / way.Length) * way;
        }, t =>
        {
            if (t > 0.75 * seconds)
            {
                sum += Math.Abs(lure.Pose.HeadingRad);
                count++;
            }
        });
        return (lure, sum / count * 180.0 / Math.PI);
    }

    /// <summary>Tie less Nv/Yv over the length in body axes at a steady tow: positive where it is stable.</summary>
    private static double Margin(LureSpec spec, double chi, in FreeMotionState s)
    {
        var forces = new FreeForces(FreeBench.Hull(spec with { SternShedding = chi }));
        (double y, double n) = Across(forces, s, 1e-4);
        (double y0, double n0) = Across(forces, s, -1e-4);
        return (spec.TieXM - ((n - n0) / (y - y0))) / spec.LengthM;
    }

    private static (double Side, double Yaw) Across(FreeForces forces, in FreeMotionState s, double v)
    {
        forces.Set(s with { Velocity = s.Velocity + new Vec3(0.0, v, 0.0) });
        double[] nu = [s.Velocity.X, s.Velocity.Y + v, s.Velocity.Z, s.Rate.X, s.Rate.Y, s.Rate.Z], drag = new double[6];
        forces.Drag.Multiply(nu, drag);
        return (forces.Force[1] - drag[1], forces.Force[5] - drag[5]);
    }
}
