using LureSim.Model.Lures;
using LureSim.Numerics;
using LureSim.Scenarios;

namespace LureSim.Validation.Invariants;

/// <summary>The means of a walk must not depend on step and mesh.</summary>
public static class StepIndependence
{
    private const double WarmUp = 18.0, End = 30.0;

    [PublishedCheck]
    public static Check DefaultScenario()
    {
        Means shown = Walk(60, "0.5 ms"), study = Walk(40, "0.5 ms"), finest = Walk(120, "0.25 ms");
        return new(
            "I3", "Default scenario: half the step, twice the nodes (24 twitches after 18 s of warm-up)",
            "Required of any discretisation",
            "5 %, of which 2 % is the doubt of a mean over 24 twitches. Studies of rhythm run on 40 segments; there the glide, the small difference of two wide arcs, has a bound of 10 %.",
            [
                .. Rows("60 segments (shown runs), step 0.25 ms instead of 0.5", shown, Walk(60, "0.25 ms"), 0.05),
                .. Rows("120 segments instead of 60", shown, finest, 0.05),
                .. Rows("40 segments (studies), step 0.25 ms instead of 0.5", study, Walk(40, "0.25 ms"), 0.05),
                .. Rows("60 segments instead of 40", study, shown, 0.10),
            ],
            new("N", "mean glide against 120 segments, m",
                [(20, Math.Abs(Walk(20, "0.5 ms").Glide - finest.Glide)), (40, Math.Abs(study.Glide - finest.Glide)), (60, Math.Abs(shown.Glide - finest.Glide))],
                1.0, "no order is known for a walk of snaps and a film that lets go node by node; each mean is in doubt by 2 %, more than half of what is left at 60, so order 1 is asked"));
    }

    private static IEnumerable<Row> Rows(string name, Means a, Means b, double glideTolerance)
    {
        yield return new($"{name}: mean glide", "m", a.Glide, b.Glide, glideTolerance, Tol.Relative);
        yield return new($"{name}: mean advance", "m", a.Advance, b.Advance, 0.05, Tol.Relative);
        yield return new($"{name}: mean impulse at the nose", "N s", a.Impulse, b.Impulse, 0.05, Tol.Relative);
    }

    /// <summary>Means per twitch after warm-up; the angler backs away, so advance is travel toward a tip that leaves at the same rate.</summary>
    private static Means Walk(int segments, string step)
    {
        Scenario spec = Shipped.Read(Shipped.Default, "solver.step=" + step);
        var bench = new WalkBench(spec, 0.0, segments);
        double period = 1.0 / spec.Retrieve!.CadencePerS, impulse = 0.0, next = WarmUp;
        var places = new List<Vec3>();
        bench.Run(End, dt =>
        {
            impulse += bench.Time > WarmUp + 1e-9 ? dt * bench.Step.TieForce.Length : 0.0;
            if (bench.Time > next - 1e-9)
            {
                places.Add(new Vec3(((PlanarLure)bench.Step.Lure).Now.X, ((PlanarLure)bench.Step.Lure).Now.Y, 0.0));
                next += period;
            }
        });
        int twitches = places.Count - 1;
        double glide = places.Zip(places.Skip(1), (a, b) => Math.Abs(b.Y - a.Y)).Average();
        return new(glide, (places[0].X - places[^1].X) / twitches, impulse / twitches);
    }

    private sealed record Means(double Glide, double Advance, double Impulse);
}
