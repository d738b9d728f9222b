using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.Lures.Free;

/// <summary>The hull in six degrees of freedom left alone, and thrown about.</summary>
public static class FreeAfloat
{
    private static readonly LureSpec Cigar = new(LureShape.Cigar, 0.110, 0.0205, 0.0205, 0.018, 0.0506, 0.0, [], []);

    private static readonly HookSpec[] Trebles = [new(0.0012, 0.01, -0.010, 6e-5, 0.15e-6), new(0.0012, -0.05, -0.002, 6e-5, 0.15e-6)];

    private static readonly LureSpec Hollow = new(
        LureShape.Hollow, 0.06, 0.026, 0.020, 0.012, 0.028, 0.0, [new BallastSpec(0.004, -0.01, -0.006)], [new HookSpec(0.003, -0.015, 0.005, 2e-4, 0.38e-6)]);

    /// <summary>N12.</summary>
    [PublishedCheck]
    public static Check StaysWhereItFloats()
    {
        (string Name, LureSpec Lure)[] lures =
        [
            ("round", Tail(0.0)), ("round", Tail(-0.008)), ("round", Tail(-0.030)), ("round", Tail(-0.035)), ("round", Tail(-0.041)),
            ("round, on end", Tail(-0.045) with { Ballast = [new BallastSpec(0.008, -0.048, -0.0005)] }),
            ("two hooks", Hooked(0.0)), ("two hooks", Hooked(-0.026)), ("two hooks", Hooked(-0.030)), ("two hooks", Hooked(-0.035)),
            ("flat hollow", Hollow with { Ballast = [new BallastSpec(0.004, 0.008, -0.006)] }), ("flat hollow", Hollow), ("flat hollow", Hollow with { Ballast = [new BallastSpec(0.004, -0.02, -0.006)] }),
            ("hollow, top heavy", new LureSpec(LureShape.Hollow, 0.06, 0.022, 0.026, 0.012, 0.028, 0.0, [new BallastSpec(0.004, -0.01, 0.0006)], [])),
            ("narrow and deep", new LureSpec(LureShape.Spheroid, 0.1, 0.012, 0.024, 0.0075, 0.04, 0.0, [], [])),
        ];
        var rows = new List<Row>();
        foreach ((string name, LureSpec lure) in lures)
        {
            FreeHull hull = FreeBench.Hull(lure);
            Attitude a = hull.Float.State.Attitude;
            (double height, double angle) = Strays(hull);
            string lies = FormattableString.Invariant($"{name}, trim {Deg(a.TrimRad):F0} deg, heel {Deg(a.HeelRad):F0} deg");
            rows.Add(new Row(lies + ": height of G, largest change", "mm", 0.0, 1e3 * height, 0.02, Tol.Absolute));
            rows.Add(new Row(lies + ": attitude", "deg", 0.0, Deg(angle), 0.04, Tol.Absolute));
        }

        return new Check(
            "N12", "Left alone for 4 s the hull in six degrees of freedom stays where the float solver puts it", "Two programs: exact cuts at 61 strips or more a piece (H1 to H5), and 39 elliptic cylinders",
            "39 cylinders of up to 4.4 mm in place of a hull that tapers: order 2, 0.006 mm and 0.013 deg for the round hull, 0.008 mm and 0.035 deg for the flat one, 0.018 mm on end where the "
                + "water cuts a single cylinder; with 80 nodes a quarter of it (measured once). The swing doubles the shift.",
            rows);
    }

    /// <summary>N13.</summary>
    [PublishedCheck]
    public static Check NoEnergyFromNothing()
    {
        Thrown[] thrown =
        [
            new("round", Tail(-0.0099)), new("two hooks", Hooked(-0.006)), new("tail down", Tail(-0.035)),
            new("on end", Tail(-0.045) with { Ballast = [new BallastSpec(0.008, -0.045, 0.0)] }), new("flat hollow", Hollow),
            new("nothing drags", FreeBench.Bare(Tail(-0.0099))),
            .. new[] { "slanted-walker.toml", "steep-walker.toml" }.Select(f => new Thrown(f, Shipped.Read(Shipped.Named(f)).Setup.Lure)),
        ];
        var rows = new List<Row>();
        foreach (Thrown t in thrown)
        {
            (double open, double least) = Account(t, 2.5e-4);
            rows.Add(new(t.Name + ": account open, mean of 6 starts", "-", 0.0, open, 2e-3, Tol.Absolute));
            rows.Add(new(t.Name + ": least power into the water", "W", 0.0, Math.Min(0.0, least), 1e-9, Tol.Absolute));
        }

        double[] steps = [1.0, 0.5, 0.25];
        return new Check(
            "N13", "Thrown, rolled and dunked: energy of hull and water over 4 s", "Kinetic and potential energy lost = work of drag, waves, and of what goes under and comes out (Archimedes; von Karman 1929)",
            "Starts at 1 m/s, 20 rad/s, any attitude, 3 cm over or under; 0.25 ms. Sections that touch the water have corners, so that single starts are open by up to three times the mean.",
            rows,
            new("dt, ms", "account of the first three, mean", [.. steps.Select(ms => (ms, thrown[..3].Average(t => Account(t, 1e-3 * ms).Open)))],
                0.9, "order 2 of the step where all is smooth, 1 through corners"));
    }

    /// <summary>A lure that is thrown about.</summary>
    /// <param name="Name">Name.</param>
    /// <param name="Lure">Lure.</param>
    private sealed record Thrown(string Name, LureSpec Lure);

    private static LureSpec Tail(double ballastX) => Cigar with { Ballast = [new BallastSpec(0.008, ballastX, -0.0066)] };

    private static LureSpec Hooked(double ballastX) => Tail(ballastX) with { MassKg = 0.0165, Hooks = [.. Trebles] };

    private static double Deg(double rad) => rad * 180.0 / Math.PI;

    private static (double HeightM, double AngleRad) Strays(FreeHull hull)
    {
        FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
        var lure = new FreeLure(hull, rest, 0.0);
        double height = 0.0, angle = 0.0;
        FreeBench.Run(lure, 1e-3, 4.0, null, _ =>
        {
            height = Math.Max(height, Math.Abs(lure.Now.Place(hull.Centre).Z - rest.Place(hull.Centre).Z));
            angle = Math.Max(angle, (lure.Now.Frame.Up - rest.Frame.Up).Length);
        });
        return (height, angle);
    }

    /// <summary>Share of the energy lost that no drag accounts for, mean size over the starts; least power of drag.</summary>
    private static (double Open, double LeastW) Account(Thrown thrown, double dt)
    {
        FreeHull hull = FreeBench.Hull(thrown.Lure);
        var random = new Random(5);
        double sum = 0.0, least = double.MaxValue;
        const int starts = 6;
        for (int k = 0; k < starts; k++)
        {
            FreeMotionState start = Start(random, hull);
            var lure = new FreeLure(hull, start, 0.0);
            var forces = new FreeForces(hull);
            forces.Set(start);
            double before = lure.HeldJ, lost = 0.0, was = forces.WaterPower(start);
            FreeBench.Run(lure, dt, 4.0, null, _ =>
            {
                double power = -lure.PowerW(0.0);
                lost += 0.5 * dt * (was + power);
                was = power;
                least = Math.Min(least, power);
            });
            double after = lure.HeldJ;
            sum += Math.Abs((before - after - lost) / (before - after)) / starts;
        }

        return (sum, least);
    }

    private static FreeMotionState Start(Random random, FreeHull hull)
    {
        double U(double size) => size * ((2.0 * random.NextDouble()) - 1.0);
        var turn = new Vec3(U(3.0), U(1.5), U(3.0));
        return new FreeMotionState(
            new Vec3(0.0, 0.0, U(0.03)), hull.AtRest(0.0, 0.0, 0.0).Frame.Turned(turn), new Vec3(U(1.0), U(1.0), U(1.0)), new Vec3(U(20.0), U(20.0), U(20.0)));
    }
}
