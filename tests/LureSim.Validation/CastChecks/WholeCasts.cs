using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Validation.CastChecks;

/// <summary>Whole casts against bounds and their own energy account.</summary>
public static class WholeCasts
{
    [PublishedCheck]
    public static Check FlexibleGain()
    {
        var rows = new List<Row>();
        foreach ((double power, double grams) in new[] { (1.5, 5.0), (3.0, 10.0), (3.0, 18.0), (4.5, 18.0), (9.0, 28.0), (40.0, 18.0) })
        {
            rows.Add(new Row($"launch speed over rigid launch speed, {power} N rod, {grams} g", "-", 1.0, Gain(power, 1e-3 * grams), 1.0, Tol.Band));
        }

        return new Check("B8c", "What bending adds in whole casts: launch speed over hand speed + butt speed x (L + overhang), highest values each; never above 2",
            "bound of a linear rod with one mode, butt turned up suddenly: Chopra, Dynamics of Structures, sec. 4.5 (from memory)",
            "An upper bound: only staying below it is claimed. A rod as good as rigid (40 N) stands above 1 too: the lure on its overhang swings ahead of the tip.", rows);
    }

    [PublishedCheck]
    public static Check EnergyAccount()
    {
        var rows = new List<Row>();
        foreach (ReelKind kind in (ReelKind[])[ReelKind.Fixed, ReelKind.Revolving])
        {
            rows.Add(new Row($"work of the hands that the account does not explain, {kind} spool", "-", 0.0, Residual(kind, 5e-4, 0.5), 1e-4, Tol.Absolute));
        }

        return new Check("P8", "Energy account of a whole cast: hands = rod, lure, line, spool, air, brakes",
            "conservation of energy", "Booked at midpoints, exact for linear loads; the rest falls with the step (ladder).", rows,
            new Ladder("1/dt, 1/s", "residual, fixed spool, less that of a step of 1/32 ms: each new node of the line leaves some 1e-7 that no step takes away",
                [.. new[] { 1e-3, 5e-4, 2.5e-4 }.Select(h => (1.0 / h, Math.Abs(Residual(ReelKind.Fixed, h, 0.5) - Residual(ReelKind.Fixed, 3.125e-5, 0.5))))],
                0.9, "order 1, of the late dashpot; 0.1 for the next term"));
    }

    [PublishedCheck]
    public static Check PractisedAdult()
    {
        CastResult result = CastRunner.Run(Case(4.5, 0.0177, ReelKind.Fixed), new CastTask()).Demand();
        return new Check("P5", "Practised adult, 5/8 oz lure, 7 ft rod: launch speed and hand torque against what people can do",
            "speed: inverse bounds of a 74.56 m cast with a 7.5 g plug, 27 to about 45 m/s for champions (derived, see P4); beginners and practised "
            + "casters stay below. Torque: shoulder flexion of men 46.9 N m turning, 89.9 N m static (abstract seen); wrist 12.2 N m (Delp, Grierson, Buchanan 1996)",
            "Bands of the sources: from a wrist alone to a shoulder that turns. The hands' torque at rest is a guess, 40 N m.",
            [
                new Row("launch speed", "m/s", 32.5, result.LaunchSpeedMS, 12.5, Tol.Band),
                new Row("largest torque of the hands before release", "N m", 29.55, result.PeakHandTorqueNm, 17.35, Tol.Band),
            ]);
    }

    // Dense lures, so that the launch is not the air's; a fixed spool, so that no spool is spun up.
    [PublishedCheck]
    public static Check MassLaw()
    {
        var rows = new List<Row>();
        foreach (CastingStyle style in (CastingStyle[])[CastingStyle.OneHanded, CastingStyle.TwoHanded])
        {
            double[] kg = [0.002, 0.005, 0.010, 0.020, 0.040], speed = [.. kg.Select(m => Launched(style, m))];
            double effective = Enumerable.Range(1, 200).Select(i => 1e-3 * i).MinBy(mass => Off(kg, speed, mass));
            rows.Add(new Row($"largest deviation of launch speed from v ~ (m + M)^-1/2, 2 to 40 g, {style}", "-", 0.0, Off(kg, speed, effective), 0.05, Tol.Absolute));
            rows.Add(new Row($"slope of log v over log m from 10 to 40 g, {style}", "-", -0.15, Math.Log(speed[4] / speed[2]) / Math.Log(4.0), 0.10, Tol.Band));
        }

        return new Check("P11", "Launch speed against the mass of the lure: what is thrown and what throws it share an energy that hardly depends on the mass",
            "Overarm throws: a factor of 60 in mass lowers the speed by 2.4, a slope of -0.21; energy of object, hand and forearm nearly constant (Am. J. Phys. 72, 2004, doi 10.1119/1.1634964, abstract seen)",
            "5 %: the law is that of a throw, not of a rod, which stores energy and has waves of its own. The slope is a band around that of throws, -0.05 to -0.25: a rod's tip is a lighter hand.", rows);
    }

    private static double Launched(CastingStyle style, double kg)
    {
        Setup setup = Case(3.0, kg, ReelKind.Fixed);
        double size = Math.Cbrt(kg / 0.010);
        return CastRunner.Run(
            setup with
            {
                Hands = CastingStyles.Hands(style, 1.0),
                Lure = setup.Lure with { Shape = LureShape.Drop, LengthM = 0.045 * size, DiameterM = 0.014 * size, HeightM = 0.014 * size, TieXM = 0.0225 * size, Flight = new(0.1) },
            },
            new CastTask()).Demand().LaunchSpeedMS;
    }

    // Largest relative deviation from the law through the mean of v sqrt(m + M).
    private static double Off(double[] kg, double[] speed, double mass)
    {
        double[] product = [.. kg.Zip(speed, (m, v) => v * Math.Sqrt(m + mass))];
        return product.Max(p => Math.Abs((p / product.Average()) - 1.0));
    }

    // Highest hand and butt speed before the launch, seen at every step.
    private static double Gain(double power, double kg)
    {
        Setup setup = Case(power, kg, ReelKind.Fixed);
        var task = new CastTask();
        double hand = 0.0, butt = 0.0;
        CastResult result = CastRunner.Run(setup, task, observer: view =>
        {
            hand = view.IsFlight ? hand : Math.Max(hand, view.HandSpeedMS);
            butt = view.IsFlight ? butt : Math.Max(butt, view.ButtRateRadS);
        }).Demand();
        return result.LaunchSpeedMS / (hand + (butt * (setup.Rod.FreeLengthM + task.OverhangM)));
    }

    private static double Residual(ReelKind kind, double h, double spacing)
    {
        var task = new CastTask { Release = new ReleaseSpec(ReleaseMode.AtTime, 0.26), Solver = new CastSolverSpec(h, 2.0 * h, spacing) };
        return CastRunner.Run(Case(4.5, 0.018, kind), task).Demand().Energy.Residual;
    }

    private static Setup Case(double power, double kg, ReelKind kind)
    {
        var line = new LineSpec(LineMaterial.Braid, 0.235e-3, 3.33e-5, 970.0, 50e9 * 3.44e-8, 0.002, 0.0, SurfaceFilm.Wetted, 200.0);
        var lure = new LureSpec(LureShape.Cigar, 0.1, 0.022, 0.022, kg, 0.05, 0.0, [], []);
        return new Setup(
            "cast", new WaterSpec(), new AirSpec(), new AnglerSpec(), new HandsSpec(), new RodSpec(2.1336, 0.3, power, 0.054),
            new ReelSpec(kind, 7.1, 0.034, 50.0).With(line), line, null, lure);
    }
}
