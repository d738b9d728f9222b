using LureSim.Model.Lures;
using LureSim.Model.Pool;

namespace LureSim.Reports.Tests.Support;

/// <summary>A pool test drawn by hand: it sheers when slow, turns on a circle, and swings like pendulums.</summary>
internal static class MadeUpPool
{
    public static PoolResult Result()
    {
        TowRow[] tow =
        [
            new(0.15, TowCourse.Sheers, 18.2, -18.2, 0.4, -0.3, 3.1, -1.2, 0.002, 0.0031, true),
            new(0.3, TowCourse.Sheers, 9.4, 9.4, 1.5, 0.2, 3.4, 2.1, 0.003, 0.011, false),
            new(0.8, TowCourse.Straight, 0.2, -0.2, 0.1, 0.0, 4.9, -0.0, 0.005, 0.07, true),
        ];
        return new(
            new LureSpec(LureShape.Cigar, 0.11, 0.0205, 0.0205, 0.018, 0.051, 0, [], []), new PoolTask { SpeedsMS = [0.15, 0.3, 0.8] }, 3.0, 0.0,
            [.. tow], Push(), new CoastResult(4.2, 0.16), Swing(20.0, 0.5, 1.2), Swing(-0.004, 0.36, 6.0), Swing(-4.0, 0.33, 5.0));
    }

    /// <summary>One that never turns, stands too steep to roll and is too stiff in the water to bob.</summary>
    public static PoolResult Stiff()
    {
        PoolResult p = Result();
        double[] t = Times(1.0);
        return p with
        {
            Push = p.Push with { TurnM = null, TurnedDeg = -6.0, OffsetM = 1e-4, HeadingDeg = [.. p.Push.HeadingDeg.Select(h => 3.0 - (6.0 * (h - 3.0) / (57.3 * 1.2)))] },
            Coast = new CoastResult(null, null),
            Roll = new SwingResult(0.0, null, null, [], []),
            Heave = new SwingResult(-0.004, null, null, [.. t], [.. t.Select(s => -0.004 * Math.Exp(-8.0 * s))]),
            Tow = [.. p.Tow.Select(r => r with { Course = TowCourse.Dives })],
        };
    }

    private static double[] Times(double end) => [.. Enumerable.Range(0, 101).Select(i => end * i / 100.0)];

    private static SwingResult Swing(double release, double period, double decay)
    {
        double[] t = Times(1.5);
        return new(release, period, 1.0 - Math.Exp(-decay * period), [.. t], [.. t.Select(s => release * Math.Exp(-decay * s) * Math.Cos(2.0 * Math.PI * s / period))]);
    }

    private static PushResult Push()
    {
        double[] t = Times(2.0), turn = [.. t.Select(s => 0.6 * s)];
        return new(
            0.24, 68.0, 0.19, [.. t], [.. turn.Select(a => 0.3 * Math.Sin(a))], [.. turn.Select(a => 0.3 * (1.0 - Math.Cos(a)))], [.. turn.Select(a => 3.0 + (57.3 * a))]);
    }
}
