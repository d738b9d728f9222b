using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Validation.CastChecks;

/// <summary>Spools alone and with a lure that draws line.</summary>
public static class SpoolLaws
{
    private const double Straight = double.PositiveInfinity;

    [PublishedCheck]
    public static Check WoundLineOnASpool()
    {
        double mu = 200.0 / 9e6, solid = Math.Sqrt(4.0 * mu / (970.0 * Math.PI));
        double length = WoundLine.Capacity(0.012, 0.017, 0.022, 0.75, solid);
        var wound = new WoundLine(0.017, 0.022, 0.75, solid, mu, length);
        var spool = new FreeSpool(new SpoolSpec(1e-6, length, 0.022, 0.75), 0.0, 0.017, mu, solid, 0.0);
        return new Check("K1", "Mass, inertia and length of wound braid",
            "derived: hollow cylinder", "Digits of the worked figures.",
            [
                new Row("mass", "g", 7.29077, 1e3 * wound.MassKg(0.0), 1e-6, Tol.Relative),
                new Row("inertia", "kg m2", 1.578452e-6, wound.InertiaKgM2(0.0), 1e-6, Tol.Relative),
                new Row("inertia of a full spool in a cast, less the bare one", "kg m2", 1.578452e-6, spool.InertiaKgM2 - 1e-6, 1e-6, Tol.Relative),
                new Row("length of 200 denier line", "m", 328.085, length, 2e-6, Tol.Relative),
            ]);
    }

    [PublishedCheck]
    public static Check StartUp()
    {
        const double m = 0.010, inertia = 1.5e-6, radius = 0.017, v0 = 30.0, l0 = 0.5;
        double v1 = v0 * Math.Sqrt(m / (m + (inertia / (radius * radius))));
        Bench.Throw At(double h, double until)
        {
            var flight = Bench.Launch(Bench.Nothing, Spool(inertia, radius, 0.0, 0.0), m, 0.0, 0.0, 0.0, Straight, 0.0);
            flight.Start(l0, 0.0, v0, Math.PI / 2.0);
            flight.Run(h, until);
            return flight;
        }

        double Exact(double t) => Math.Sqrt((l0 * l0) + (v1 * v1 * t * t));
        return new Check("K2", "Start-up of a free spool by a lure that flies across its overhang: r^2 = l0^2 + v1^2 t^2",
            "derived (energy of lure and spool, no losses); v1 = v0 sqrt(m/(m + I/R^2)). A sudden coupling would leave 19.749 m/s",
            "The line is stiff, not rigid: its stretch of at most 1e-4 m and the step's second order (ladder) leave 5e-4.",
            [
                new Row("distance after 10 ms", "m", Exact(0.010), At(1.25e-4, 0.010).Distance, 5e-4, Tol.Relative),
                new Row("distance after 50 ms", "m", Exact(0.050), At(1.25e-4, 0.050).Distance, 5e-4, Tol.Relative),
                new Row("distance after 200 ms", "m", Exact(0.200), At(1.25e-4, 0.200).Distance, 5e-4, Tol.Relative),
                new Row("speed after 1 s", "m/s", v1, At(1.25e-4, 1.0).Speed, 5e-4, Tol.Relative),
            ],
            new Ladder("1/dt, 1/s", "distance after 50 ms, relative",
                [.. new[] { 2e-3, 1e-3, 5e-4, 2.5e-4 }.Select(h => (1.0 / h, Math.Abs((At(h, 0.050).Distance / Exact(0.050)) - 1.0)))],
                0.9, "order 1, of the late dashpot; 0.1 for the next term. Below 0.25 ms the stretch of the line, 1e-4, is what is left"));
    }

    [PublishedCheck]
    public static Check BrakedRun()
    {
        const double m = 0.010, inertia = 1.5e-6, radius = 0.017, c = 1e-5;
        double v1 = 19.74943, tau = 0.439;
        var reel = Spool(inertia, radius, c, 0.0);
        var flight = Bench.Launch(Bench.Nothing, reel, m, 0.0, 0.0, 0.0, Straight, 0.0);
        flight.Start(0.5, 0.0, v1, 0.0);
        reel.SpeedMS = v1;
        flight.Run(2.5e-4, 0.4);
        double exact = v1 * Math.Exp(-0.4 / tau), paid = v1 * tau * (1.0 - Math.Exp(-0.4 / tau));
        return new Check("K2b", "Lure and spool slowed by a magnetic brake alone",
            "derived: v = v1 exp(-t (c/R^2)/(m + I/R^2))", "tau is printed with three digits (0.1 %); the step adds 1e-6.",
            [
                new Row("speed after 0.4 s", "m/s", exact, flight.Speed, 2e-3, Tol.Relative),
                new Row("line out after 0.4 s", "m", paid, reel.PaidM, 2e-3, Tol.Relative),
            ]);
    }

    [PublishedCheck]
    public static Check SpinDown()
    {
        (double w, double turns) Run(double magnetic, double centrifugal)
        {
            const double radius = 0.017;
            FreeSpool reel = Spool(2e-6, radius, magnetic, centrifugal);
            reel.SpeedMS = 500.0 * radius;
            reel.Locked = false;
            for (int i = 0; i < 800; i++)
            {
                // Two passes, as in the step of the cast.
                reel.Free(2.5e-4);
                reel.Accel = reel.FreeAccel;
                reel.Free(2.5e-4);
                reel.Accel = reel.FreeAccel;
                reel.Advance(2.5e-4, 0.0);
            }

            return (reel.SpinRadS, reel.PaidM / (2.0 * Math.PI * radius));
        }

        (double magnetic, double magneticTurns) = Run(1e-5, 0.0);
        (double centrifugal, double centrifugalTurns) = Run(0.0, 2e-8);
        return new Check("K3", "Spool spun down by a magnetic (torque ~ speed) and a centrifugal brake (~ speed squared)",
            "derived: w0 exp(-ct/I) and w0/(1 + k w0 t/I); that eddy-current torque is linear at low speed: Smythe 1942, Wouterse 1991 (cited)",
            "Second order in the step: below 1e-6 at 0.25 ms.",
            [
                new Row("speed after 0.2 s, magnetic", "rad/s", 183.9397, magnetic, 5e-6, Tol.Relative),
                new Row("turns in 0.2 s, magnetic", "-", 15.91549 * (1.0 - Math.Exp(-1.0)), magneticTurns, 5e-6, Tol.Relative),
                new Row("speed after 0.2 s, centrifugal", "rad/s", 250.0, centrifugal, 5e-6, Tol.Relative),
                new Row("turns in 0.2 s, centrifugal", "-", 11.03178, centrifugalTurns, 5e-6, Tol.Relative),
            ]);
    }

    [PublishedCheck]
    public static Check FixedSpool()
    {
        const double m = 0.010, v0 = 30.0, h = 5e-4;
        var rows = new List<Row>();
        foreach ((double factor, double mu) in new[] { (1.0, 5e-5), (2.0, 5e-5), (1.2, 1e-4) })
        {
            var line = Bench.Nothing with { LinearDensityKgM = mu };
            var reel = new FixedSpool(new FixedSpoolSpec(factor, 0.0, 1.0), mu, 1e-6 * m, 0.02);
            var flight = Bench.Launch(line, reel, m, 0.0, 0.0, 0.0, Straight, 0.0);
            flight.Start(1e-6, 0.0, v0, 0.0);
            reel.SpeedMS = v0;
            flight.Run(h, 1.5);
            rows.Add(new Row($"speed after 1.5 s, K = {factor}, mu = {1e6 * mu} mg/m", "m/s",
                v0 * Math.Pow(m / (m + (mu * flight.Distance)), factor), flight.Speed, 1e-4, Tol.Relative));
        }

        return new Check("K5", "Lure slowed by picking line up from a fixed spool: v = v0 (m/(m + mu s))^K",
            "derived from T = K mu v^2 (K = 1: momentum alone; K above 1: over-end unwinding, Padfield, 1950s, from memory)",
            "The reel's pseudo-mass is a millionth of the lure here; the step of 0.5 ms and the line's stretch leave 1e-4.", rows);
    }

    // Lure and spool apart, the line so loose that it pulls neither: the brake that matches slows the surface of the spool as the air slows the lure.
    [PublishedCheck]
    public static Check MatchedBrake()
    {
        const double v0 = 30.0, m = 0.0113, k = 0.5 * 1.2 * 4.0e-4 / m, inertia = 2e-6, radius = 0.017;
        var rows = new List<Row>();
        foreach (BrakeLaw law in Enum.GetValues<BrakeLaw>())
        {
            var reel = new FreeSpool(new SpoolSpec(inertia, 75.0, 0.022, 0.75, law, 1.0, FrictionNm: 0.0, RingDragN: 0.0, ThumbPressN: 0.0), k, radius, 0.0, 1e-6, 0.0);
            reel.LetGo(v0);
            reel.SpeedMS = v0;
            double first = Slow(reel, 1), after = Slow(reel, 1999);
            rows.Add(new Row($"slowing at the launch, {law}", "m/s2", k * v0 * v0, (v0 - first) / 2.5e-4, 2e-3, Tol.Relative));
            if (law == BrakeLaw.Quadratic)
            {
                rows.Add(new Row("speed after 0.5 s of flight, quadratic", "m/s", v0 / (1.0 + (k * v0 * 0.5)), after, 1e-5, Tol.Relative));
            }
        }

        return new Check("K6", "A brake that matches the lure: spool and lure slow together without the line",
            "derived: m v' = -1/2 rho CdA v^2 and I w' = -c w^2 give the same v = v0/(1 + k v0 t), k = rho CdA/(2 m), when c = I R k",
            "The slowing at the launch is the mean over the first 0.25 ms (k v h = 2e-4); the speed is of second order.", rows);
    }

    private static double Slow(FreeSpool reel, int steps)
    {
        for (int i = 0; i < steps; i++)
        {
            for (int pass = 0; pass < 2; pass++)
            {
                reel.Free(2.5e-4);
                reel.Accel = reel.FreeAccel;
            }

            reel.Advance(2.5e-4, 0.0);
        }

        return reel.SpeedMS;
    }

    // No line but a thread without mass, no friction: the bare laws.
    private static FreeSpool Spool(double inertia, double radius, double magnetic, double centrifugal) => new(
        new SpoolSpec(
            inertia, 75.0, 0.022, 0.75, BrakeStrength: 0.0, MagneticNms: magnetic, CentrifugalNms2: centrifugal, FrictionNm: 0.0, RingDragN: 0.0, ThumbPressN: 0.0),
        0.0, radius, 0.0, 1e-6, 0.0);
}
