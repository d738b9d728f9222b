namespace LureSim.Model.Retrieve;

/// <summary>
/// Names the lure's answer to a rhythm from its twitches. Rules in this order, the first that fits; the thresholds sit in
/// gaps of a large map of runs (docs/retrieve.md): swing rarely lies between 20 and 50 deg, the share of flips rarely
/// between 0.2 and 0.9.
/// </summary>
public static class PatternFinder
{
    /// <summary>Fewer twitches than this are not judged: <see cref="WalkPattern.Irregular"/>.</summary>
    public const int FewestTwitches = 4;

    /// <summary>A pull counts as having reached the lure above this change of surge speed, m/s.</summary>
    public const double ReachedSpeedMS = 0.05;

    /// <summary>
    /// A walk is at least this wide, peak to peak of the centre of gravity over the hull's length. A hull pulled sideways at its nose turns about
    /// its centre of percussion, m33/(m22 a) behind the centre of gravity, 0.12 to 0.15 L for the shipped hulls: turning alone from square to
    /// square shifts the centre of gravity by up to 0.3 L. At half a length at least as much is travel as turning.
    /// </summary>
    public const double LeastWidthOverLength = 0.5;

    /// <summary>On a steady pull a lure comes straight below this angle off its line, deg: what the eye takes for straight. Sheer sets in
    /// as a pitchfork, so angles between 0 and this are rare (check T2).</summary>
    public const double StraightDeg = 5.0;

    private const double Degree = Math.PI / 180.0;

    /// <summary>Names the pattern.</summary>
    /// <param name="twitches">Twitches after warm-up.</param>
    /// <param name="surgeMassKg">m11 of the hull, kg.</param>
    /// <param name="lengthM">L of the hull, m.</param>
    public static WalkPattern Classify(IReadOnlyList<TwitchRecord> twitches, double surgeMassKg, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(twitches);
        int n = twitches.Count;
        if (n < FewestTwitches)
        {
            return WalkPattern.Irregular;
        }

        double reached = Share(twitches, t => t.ImpulseNs > ReachedSpeedMS * surgeMassKg);
        double back = twitches.Sum(t => t.BackCrossings) / (double)n;
        double swing = Median(twitches.Select(t => t.SwingRad));
        double away = twitches.Average(t => Math.Abs(t.EndHeadingRad));
        double side = Math.Abs(twitches.Average(t => Math.Sign(t.EndHeadingRad)));
        double flips = FlipShare(twitches);
        return reached < 0.1 ? WalkPattern.Still
            : back >= 0.1 ? WalkPattern.Spinning
            : swing < 20.0 * Degree ? WalkPattern.Tracking
            : reached < 0.85 ? WalkPattern.Skipping
            : away < 20.0 * Degree ? WalkPattern.Tracking
            : flips >= 0.9 ? Walked(twitches, lengthM)
            : flips <= 0.2 && side >= 0.6 ? WalkPattern.OneSided
            : WalkPattern.Irregular;
    }

    /// <summary>Names what a lure does on a steady pull: tracking when it comes straight, else one-sided, or irregular when it fishtails.</summary>
    /// <param name="sheerDeg">Mean size of the angle off the line, deg.</param>
    /// <param name="meanDeg">Mean angle off the line with its sign, deg.</param>
    public static WalkPattern ClassifyTow(double sheerDeg, double meanDeg) =>
        sheerDeg < StraightDeg ? WalkPattern.Tracking
        : Math.Abs(meanDeg) >= 0.6 * sheerDeg ? WalkPattern.OneSided
        : WalkPattern.Irregular;

    /// <summary>Share of twitches that end on the other side of the line than the one before, 0 to 1.</summary>
    /// <param name="twitches">Twitches, at least two.</param>
    public static double FlipShare(IReadOnlyList<TwitchRecord> twitches)
    {
        ArgumentNullException.ThrowIfNull(twitches);
        int flips = 0;
        for (int k = 1; k < twitches.Count; k++)
        {
            flips += twitches[k].EndHeadingRad * twitches[k - 1].EndHeadingRad < 0.0 ? 1 : 0;
        }

        return twitches.Count > 1 ? flips / (twitches.Count - 1.0) : 0.0;
    }

    /// <summary>Median; 0 for none.</summary>
    /// <param name="values">Values.</param>
    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        int n = sorted.Length;
        return n == 0 ? 0.0 : 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }

    private static WalkPattern Walked(IReadOnlyList<TwitchRecord> twitches, double lengthM) =>
        twitches.Average(t => t.WidthM) >= LeastWidthOverLength * lengthM ? WalkPattern.Alternating : WalkPattern.Turning;

    private static double Share(IReadOnlyList<TwitchRecord> twitches, Func<TwitchRecord, bool> test) =>
        twitches.Count(test) / (double)twitches.Count;
}
