using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.Lures;

/// <summary>The side force of the stern against slender-body theory and ships, and what it does to a steady pull.</summary>
public static class SternChecks
{
    private const double Speed = 0.5;

    /// <summary>A6.</summary>
    [PublishedCheck]
    public static Check HopkinsSlope()
    {
        // x0 from the nose 0.378 + 0.527 x1/L, x1 the steepest closing of the stern: the tail point of a spheroid.
        const double fromNose = 0.378 + 0.527, s = (2.0 * fromNose) - 1.0, diameter = 0.02, length = 0.1;
        LureSpec lure = Samples.HalfSpheroid(length, diameter) with { SternShedding = 1.0, SternPlace = fromNose - 0.5, CrossFlowCd = 0.0 };
        WalkHull hull = WalkHullBuilder.Build(lure, Samples.Water);
        double section = 0.25 * Math.PI * diameter * diameter, load = 0.5 * Samples.Water.DensityKgM3 * 0.835139 * section;
        double slope = load * (1.0 - (s * s)) * Speed;

        // Moment about the middle: Munk's of the whole, less the load behind x0, by the integral of x d((1 - s^2))/dx.
        double lost = Integral(s, 1.0) * 0.5 * length;
        double moment = Speed * load * ((2.0 / 3.0 * length) - lost);
        double ahead = hull.ShedAhead.XM * hull.ShedAhead.AtKgM * Speed;
        double turning = ((hull.M22 - hull.M11) * Speed) + ahead - (hull.ShedAhead.BehindKg * Speed);
        return new Check(
            "A6", "Side force and turning moment of a half-immersed spheroid that sheds its cross-flow at the stern",
            "Hopkins 1951, NACA RM A51C14 (from memory): potential load 2 q alpha (k2 - k1) dS/dx up to x0; k2 - k1 at L/D 5 from A5; half the double body",
            "Five digits of k2 - k1; 64 strips behind x0 add 1e-4, the 201 strips of the mass matrix 5e-5.",
            [
                new("side force over drift speed, 0.5 m/s", "N s/m", slope, new WalkingHull(hull).Drag(Speed, 1e-9, 0.0).Sway, 1e-4, Tol.Relative),
                new("moment over drift speed, away from the line", "N s", moment, turning, 3e-4, Tol.Relative),
            ]);
    }

    /// <summary>A7.</summary>
    [PublishedCheck]
    public static Check ClarkeIsAnUpperBound()
    {
        var rows = new List<Row>();
        foreach (string file in new[] { "large-walker.toml", "small-walker.toml" })
        {
            Setup spec = Shipped.Read(Shipped.Named(file)).Setup;
            LureSpec lure = spec.Lure with { SternShedding = 1.0 };
            FloatingLure f = FloatingLure.Float(lure, Samples.Water);
            WettedForm form = WettedForm.Of(f);
            double t = form.DraftM / form.LengthM, block = f.State.Immersion.VolumeM3 / (form.LengthM * form.BreadthM * form.DraftM);
            double clarke = Math.PI * t * t * (1.0 + (0.40 * block * form.BreadthM / form.DraftM)) * 0.5 * Samples.Water.DensityKgM3 * form.LengthM * form.LengthM;
            double shed = WalkHullBuilder.Build(lure, Samples.Water).ShedAhead.AtKgM;
            rows.Add(BandRow.Of($"{file}: side force over that of a ship of the same measures", "-", 0.1, 1.0, shed / clarke));
        }

        return new Check(
            "A7", "A hull without keel or flat tail sheds less than a ship",
            "Clarke, Gedling, Hine 1982: -Yv' = pi (T/L)^2 (1 + 0.40 Cb B/T), over 1/2 rho L^2 U (from memory)",
            "An upper bound; a tenth of it as the lower end of the row is ours, only to see that the force is there.", rows);
    }

    /// <summary>T3.</summary>
    [PublishedCheck]
    public static Check TowCriterion()
    {
        var rows = new List<Row>();
        foreach (string file in new[] { "large-walker.toml", "small-walker.toml" })
        {
            Scenario spec = Shipped.Read(
                Shipped.Named(file), "retrieve.stroke=0 cm", "retrieve.take_up_speed=0.5 m/s", "retrieve.hold_distance=true", "retrieve.duration=50 s",
                "retrieve.warm_up=33 s", "retrieve.hull=planar", "solver.nodes=20", "solver.step=1 ms");
            WaterState water = WaterModel.Evaluate(spec.Setup.Water);
            double neutral = Samples.Root(chi => Margin(spec.Setup.Lure, water, chi), 0.05, 1.2);
            rows.Add(new($"{file}: margin at the neutral share {neutral:F3}", "L", 0.0, Margin(spec.Setup.Lure, water, neutral), 1e-9, Tol.Absolute));
            foreach (double off in new[] { -0.2, -0.08, 0.08, 0.2, 0.75 - neutral, 1.25 - neutral })
            {
                double sheer = (spec with { Setup = spec.Setup with { Lure = spec.Setup.Lure with { SternShedding = neutral + off } } }).Run().Summary.SheerDeg;
                rows.Add(new(
                    $"{file}: {Math.Abs(off):F2} {(off > 0.0 ? "above: comes straight" : "below: sheers")} (run: {sheer:F1} deg)", "yes = 1", 1.0,
                    (sheer < 0.5) == (off > 0.0) ? 1.0 : 0.0, 0.0, Tol.Absolute));
            }
        }

        return new Check(
            "T3", "Steady pull: linear criterion against whole runs with line and rod, planar hull (in six degrees of freedom: N8)",
            "x_tie > Nv/Yv (static criterion of T1) with hooks, Munk moment and stern; common practice, no source: reeled on a tight line a walker comes straight",
            "The run must sheer below the neutral share and come straight above it. Within 0.08 of it the pitchfork is too slow to settle in 50 s.", rows);
    }

    /// <summary>Tie arm less Nv/Yv over the length: positive where a straight pull is stable. Hooks drag in proportion to drift at speed.</summary>
    internal static double Margin(LureSpec lure, WaterState water, double chi)
    {
        WalkHull h = WalkHullBuilder.Build(lure with { SternShedding = chi }, water);
        double yv = h.HookDragKgM.Sum() + h.ShedAhead.AtKgM;
        double nv = (h.M22 - h.M11) - h.ShedAhead.BehindKg + (h.ShedAhead.AtKgM * h.ShedAhead.XM) + h.HookDragKgM.Zip(h.HookXM, (k, x) => k * x).Sum();
        return (h.TieArmM - (nv / yv)) / h.LengthM;
    }

    /// <summary>Integral of s d(1 - s^2) from low to high: the moment of the load that is missing, in half-lengths.</summary>
    private static double Integral(double low, double high) => 2.0 / 3.0 * ((high * high * high) - (low * low * low));
}
