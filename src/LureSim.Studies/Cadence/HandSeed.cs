namespace LureSim.Studies.Cadence;

/// <summary>
/// The take-up speed with which the hand begins a run: that of the rhythms near by whose walk has settled, as far as they are known. A hand that
/// gathers takes 10 to 30 s to find it by itself, longer than all else. The lure still starts anywhere.
/// </summary>
internal static class HandSeed
{
    /// <summary>The speed for one start, m/s; null where nothing is known.</summary>
    /// <param name="known">Rhythms to take a hand from, rising; the wanted one is among them when it was run ahead for its hand.</param>
    /// <param name="perS">Rhythm that is wanted.</param>
    /// <param name="start">Which start of the plan.</param>
    /// <param name="fastestMS">Fastest take-up of this hand, m/s.</param>
    public static double? At(IList<RhythmPoint> known, double perS, int start, double fastestMS)
    {
        RhythmPoint? slower = known.LastOrDefault(p => p.PerS <= perS && p.Pattern is not null), faster = known.FirstOrDefault(p => p.PerS >= perS && p.Pattern is not null);
        return (slower, faster) switch
        {
            (null, null) => null,
            (RhythmPoint one, null) => SpeedMS(one, fastestMS),
            (null, RhythmPoint one) => SpeedMS(one, fastestMS),
            (RhythmPoint a, RhythmPoint b) when a.Pattern == b.Pattern => Interpolation.At([a.PerS, b.PerS], [SpeedMS(a, fastestMS), SpeedMS(b, fastestMS)], perS),

            // At the edge of a window, the hand of the walk: does it last? Between other changes, either.
            (RhythmPoint a, RhythmPoint b) => SpeedMS(a.Walks || (!b.Walks && HasFirst(start)) ? a : b, fastestMS),
        };
    }

    /// <summary>Whether a start has the first of two hands: 0, 3, 4, 7, 8 ..., so that of the first two that are run (0 and 2) one each has it, of the six three.</summary>
    /// <param name="start">Which start of the plan.</param>
    public static bool HasFirst(int start) => start % 4 is 0 or 3;

    /// <summary>What the hand of a settled walk takes up, m/s: what the lure advances.</summary>
    /// <param name="point">Point that finished.</param>
    /// <param name="fastestMS">Fastest take-up of this hand, m/s.</param>
    public static double SpeedMS(RhythmPoint point, double fastestMS) => Math.Clamp(point.PerS * point.Median(o => o.AdvancePerTwitchM), 0.0, fastestMS);
}
