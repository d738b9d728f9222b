using LureSim.Studies.Cadence;

namespace LureSim.Studies.Maps;

/// <summary>
/// The take-up speed with which the hand begins at a point of a map: that of the points around it, by the rule of <see cref="HandSeed"/>. Around means the nearest known
/// point in each of four quadrants, as far as it is not more than twice as far away as the nearest of all.
/// </summary>
internal static class MapHand
{
    private const double Reach = 2.0;

    /// <summary>The speed for one start, m/s; null where nothing is known.</summary>
    /// <param name="known">Points to take a hand from.</param>
    /// <param name="run">Point and start.</param>
    /// <param name="fastestMS">Fastest take-up of this hand, m/s.</param>
    public static double? At(IEnumerable<KeyValuePair<(int I, int J), RhythmPoint>> known, MapRun run, double fastestMS)
    {
        (double Far, RhythmPoint Point)[] around = Around(known, run);
        if (around.Length == 0 || around[0].Far == 0.0)
        {
            return around.Length == 0 ? null : HandSeed.SpeedMS(around[0].Point, fastestMS);
        }

        // At the edge of walking the hand of the walk: does it last? Between other changes, either.
        (double Far, RhythmPoint Point)[] walking = [.. around.Where(a => a.Point.Walks)];
        RhythmPoint nearest = around[0].Point;
        RhythmPoint? other = Array.Find(around, a => a.Point.Pattern != nearest.Pattern).Point;
        return walking.Length > 0 ? Mean(walking, fastestMS)
            : other is null ? Mean(around, fastestMS)
            : HandSeed.SpeedMS(HandSeed.HasFirst(run.Start) ? nearest : other, fastestMS);
    }

    private static (double Far, RhythmPoint Point)[] Around(IEnumerable<KeyValuePair<(int I, int J), RhythmPoint>> known, MapRun run)
    {
        var best = new (double Far, int I, int J, RhythmPoint Point)?[4];
        foreach (((int i, int j), RhythmPoint point) in known)
        {
            int di = i - run.I, dj = j - run.J, quadrant = Quadrant(di, dj);
            (double Far, int I, int J, RhythmPoint Point) here = (Math.Sqrt((di * di) + (dj * dj)), i, j, point);
            if (point.Pattern is not null && (best[quadrant] is not { } old || (here.Far, i, j).CompareTo((old.Far, old.I, old.J)) < 0))
            {
                best[quadrant] = here;
            }
        }

        (double Far, int I, int J, RhythmPoint Point)[] found = [.. best.Where(b => b is not null).Select(b => b!.Value).OrderBy(b => (b.Far, b.I, b.J))];
        return [.. found.Where(f => f.Far <= Reach * found[0].Far).Select(f => (f.Far, f.Point))];
    }

    // Each axis belongs to one quadrant, so that two neighbours on a row are in two.
    private static int Quadrant(int di, int dj) => di > 0 && dj >= 0 ? 0 : dj > 0 ? 1 : di < 0 ? 2 : 3;

    private static double Mean((double Far, RhythmPoint Point)[] points, double fastestMS) =>
        points.Sum(p => HandSeed.SpeedMS(p.Point, fastestMS) / p.Far) / points.Sum(p => 1.0 / p.Far);
}
