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
