using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Media;
using LureSim.Model.Pool;
using LureSim.Scenarios;
using LureSim.Validation.Invariants;

namespace LureSim.Validation.Lures;

/// <summary>The walk margin of the shipped lures against whole tows of the same lures.</summary>
public static class StraightTowChecks
{
    private static readonly MarginTask Task = new();

    /// <summary>T4.</summary>
    [PublishedCheck]
    public static Check Margin()
    {
        var rows = new List<Row>();
        foreach (string file in new[] { "large-walker.toml", "small-walker.toml" })
        {
            (LureSpec lure, WaterState water, PoolTask pool) = Shipped(file);
            double critical = MarginRun.Run(lure, water, Task).Demand().CriticalShedding!.Value;
            rows.Add(BandRow.Of($"{file}: critical share, planar criterion +- 0.15", "-", PlanarNeutral(lure, water) - 0.15, PlanarNeutral(lure, water) + 0.15, critical));
            foreach (double off in new[] { -0.06, 0.06 })
            {
                TowRow row = Towed(lure with { SternShedding = critical + off }, water, pool with { SpeedsMS = [Task.SpeedMS], TowDistanceM = 60.0 });
                rows.Add(new($"{file}: {Math.Abs(off):F2} {(off > 0.0 ? "above: straight" : "below: not")} (run: {row.SheerDeg:F1} deg)", "yes = 1", 1.0,
                    (row.SheerDeg < 0.5) == (off > 0.0) ? 1.0 : 0.0, 0.0, Tol.Absolute));
            }
        }

        foreach (string file in new[] { "large-walker.toml", "small-walker.toml", "slanted-walker.toml", "steep-walker.toml", "hollow-weedless.toml" })
        {
            (LureSpec lure, WaterState water, PoolTask pool) = Shipped(file);
            TowBalance tow = MarginRun.Towed(lure, water, Task).Tow!;
            TowRow row = Towed(lure, water, pool with { SpeedsMS = [Task.SpeedMS] });
            rows.Add(new($"{file}: trim of the tow", "deg", row.TrimDeg, tow.TrimRad * 180.0 / Math.PI, 0.05, Tol.Absolute));
            rows.Add(new($"{file}: pull of the tow", "N", row.PullN, tow.PullN, 2e-3, Tol.Relative));
        }

        return new Check(
            "T4", "Straight tow in six degrees of freedom: steady state and roots against whole tows", "the question of T1; runs of `pool` of the same lures, planar criterion of T3",
            "Runs: 8 m at 0.3 m/s end within a thousandth of their steady pull; the sign of growth must be that of the run 0.06 beside the critical share, nearer the pitchfork is too slow for 60 m. Planar against free: roll and pitch move the critical share by less than 0.15.",
            rows);
    }

    private static (LureSpec Lure, WaterState Water, PoolTask Pool) Shipped(string file)
    {
        ScenarioResult read = ScenarioSource.Read(Invariants.Shipped.Named(file), null, Activities.Pool);
        return (read.Setup!.Lure, WaterModel.Evaluate(read.Setup.Water), read.Pool!);
    }

    private static TowRow Towed(LureSpec lure, WaterState water, PoolTask task) => PoolRun.Run(lure, water, task).Demand().Tow[0];

    private static double PlanarNeutral(LureSpec lure, WaterState water) => Samples.Root(chi => SternChecks.Margin(lure, water, chi), 0.05, 1.2);
}
