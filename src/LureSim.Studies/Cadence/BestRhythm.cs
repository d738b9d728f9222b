namespace LureSim.Studies.Cadence;

/// <summary>
/// The best rhythm: the one whose worst neighbour within a share of <see cref="CadencePlan.Room"/> still has the largest
/// regularity x glide width. Nobody twitches like a clock, so a rhythm at the brink of its window is not the best even where
/// the glide is widest there. Both neighbours must lie inside the same window. Where no window is that wide, the middle (in
/// ratio) of the widest window, without room.
/// </summary>
/// <param name="PerS">Rhythm, twitches per second.</param>
/// <param name="HasRoom">False where no window is wide enough for the room.</param>
public sealed record BestRhythm(double PerS, bool HasRoom)
{
    /// <summary>Best rhythms are multiples of this, 1/s: nobody counts finer.</summary>
    public const double StepPerS = 0.05;

    /// <summary>Finds it; null without a window.</summary>
    /// <param name="points">Sampled rhythms, rising.</param>
    /// <param name="windows">Windows of these points.</param>
    /// <param name="room">Share by which the rhythm may be missed.</param>
    public static BestRhythm? Find(IReadOnlyList<RhythmPoint> points, IReadOnlyList<CadenceWindow> windows, double room)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(windows);
        double best = double.NaN, score = 0.0;
        foreach (CadenceWindow window in windows)
        {
            (double[] at, double[] value) = Curve(points, window);
            double last = window.ToPerS / (1.0 + room);
            for (double k = Math.Ceiling(window.FromPerS / (1.0 - room) / StepPerS); k * StepPerS <= last; k++)
            {
                double perS = Math.Round(k * StepPerS, 2);
                double worst = Lowest(at, value, perS * (1.0 - room), perS * (1.0 + room));
                (best, score) = worst > score ? (perS, worst) : (best, score);
            }
        }

        CadenceWindow? widest = windows.MaxBy(w => w.Ratio);
        return !double.IsNaN(best) ? new(best, true)
            : widest is null ? null
            : new(Math.Round(Math.Sqrt(widest.FromPerS * widest.ToPerS), 3), false);
    }

    private static (double[] At, double[] Value) Curve(IReadOnlyList<RhythmPoint> points, CadenceWindow window)
    {
        RhythmPoint[] inside = [.. points.Where(p => window.Contains(p.PerS))];
        return ([.. inside.Select(p => p.PerS)], [.. inside.Select(p => p.Median(o => o.Regularity) * p.Median(o => o.GlideWidthM))]);
    }

    /// <summary>Lowest value of a broken line between two places; it is level beyond its ends.</summary>
    private static double Lowest(double[] at, double[] value, double from, double to)
    {
        double lowest = Math.Min(Interpolation.At(at, value, from), Interpolation.At(at, value, to));
        for (int i = 0; i < at.Length; i++)
        {
            lowest = at[i] > from && at[i] < to ? Math.Min(lowest, value[i]) : lowest;
        }

        return lowest;
    }
}
