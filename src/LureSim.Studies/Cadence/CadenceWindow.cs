using LureSim.Model.Retrieve;

namespace LureSim.Studies.Cadence;

/// <summary>One stretch of rhythms that walk.</summary>
/// <param name="FromPerS">Lower edge, twitches per second.</param>
/// <param name="ToPerS">Upper edge, twitches per second.</param>
/// <param name="FromIsRangeEnd">The lower edge is only the end of the rhythms tried.</param>
/// <param name="ToIsRangeEnd">The upper edge is only the end of the rhythms tried.</param>
/// <param name="Below">Pattern just below; null at the end of the range or where runs failed.</param>
/// <param name="Above">Pattern just above.</param>
/// <param name="LockShare">Mean share of starts that alternate, over the sampled rhythms inside.</param>
public sealed record CadenceWindow(
    double FromPerS, double ToPerS, bool FromIsRangeEnd, bool ToIsRangeEnd, WalkPattern? Below, WalkPattern? Above, double LockShare)
{
    // Measured on one lure (docs/cadence.md): from its slow edge at 0.94 to at least 1.1 a second a walk lasts, but none sets in from a fast hand.
    private const double HandRoom = 0.2;

    /// <summary>Upper over lower edge.</summary>
    public double Ratio => ToPerS / FromPerS;

    /// <summary>Whether a rhythm lies inside, edges included.</summary>
    /// <param name="perS">Rhythm.</param>
    public bool Contains(double perS) => perS >= FromPerS && perS <= ToPerS;

    /// <summary>Whether a rhythm lies so close above a slow edge that a walk may not set in, or be lost later than the runs end: it may hang on how fast the
    /// hand took up line before. Not above an edge where the lure turns on the spot or over, whose line is slack.</summary>
    /// <param name="perS">Rhythm.</param>
    public bool MayHangOnHand(double perS) =>
        Below is WalkPattern.Tracking or WalkPattern.OneSided or WalkPattern.Irregular or WalkPattern.Diving
        && Contains(perS) && perS <= (1.0 + HandRoom) * FromPerS;

    /// <summary>Finds the windows; an edge is the middle between the last rhythm that walks and the first that does not.</summary>
    /// <param name="points">Sampled rhythms, rising.</param>
    public static List<CadenceWindow> Find(IReadOnlyList<RhythmPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var windows = new List<CadenceWindow>();
        for (int i = 0; i < points.Count; i++)
        {
            if (!points[i].Walks)
            {
                continue;
            }

            int last = i;
            while (last + 1 < points.Count && points[last + 1].Walks)
            {
                last++;
            }

            windows.Add(Make(points, i, last));
            i = last;
        }

        return windows;
    }

    private static CadenceWindow Make(IReadOnlyList<RhythmPoint> points, int first, int last)
    {
        bool lowest = first == 0, highest = last == points.Count - 1;
        return new(
            lowest ? points[first].PerS : 0.5 * (points[first - 1].PerS + points[first].PerS),
            highest ? points[last].PerS : 0.5 * (points[last].PerS + points[last + 1].PerS),
            lowest,
            highest,
            lowest ? null : points[first - 1].Pattern,
            highest ? null : points[last + 1].Pattern,
            points.Skip(first).Take(last - first + 1).Average(p => p.LockShare));
    }
}
