using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Studies.Fit;

/// <summary>What a walk comes to, whenever its pulls are and wherever its axes lie.</summary>
/// <param name="AdvanceM">Way along the mean direction per twitch, m.</param>
/// <param name="WidthM">Path of the middle across that direction, from outermost to outermost point, m.</param>
/// <param name="SwingRad">Heading from side to side, rad; NaN where none was seen.</param>
/// <param name="SurgeSideShare">Surge along the way once per pair of twitches over that once per twitch: small where both sides are alike.</param>
internal sealed record WalkFigures(double AdvanceM, double WidthM, double SwingRad, double SurgeSideShare)
{
    /// <summary>
    /// Figures of samples at a known rhythm. The advance is that of a retrieve's summary; width and swing are of the whole pair of twitches, since a film
    /// does not show when a hand pulled: a summary, which counts from pull to pull, has them a few percent smaller. A lure that does not alternate has
    /// figures too: little of it recurs with every second twitch.
    /// </summary>
    /// <param name="samples">Samples, more than ten places.</param>
    /// <param name="twitchS">Time of a twitch, s.</param>
    public static WalkFigures Of(WalkSamples samples, double twitchS)
    {
        double pair = 2.0 * twitchS;
        var places = new Harmonics(samples.PlaceTimeS, pair);
        Vector<double> x = places.Of(samples.XM), y = places.Of(samples.YM);
        double way = Math.Sqrt((x[1] * x[1]) + (y[1] * y[1]));
        (double cos, double sin) = way > 0.0 ? (x[1] / way, y[1] / way) : (1.0, 0.0);
        Vector<double> along = (cos * x) + (sin * y), across = (cos * y) - (sin * x);
        double swing = double.NaN;
        if (samples.HeadingTimeS.Length > 2 + (2 * Harmonics.Count))
        {
            swing = Harmonics.Range(new Harmonics(samples.HeadingTimeS, pair).Of(OffTheWay(samples, Math.Atan2(sin, cos))));
        }

        return new(0.5 * way, Harmonics.Range(across), swing, Harmonics.Size(along, 1) / Math.Max(Harmonics.Size(along, 2), 1e-9));
    }

    /// <summary>Headings off a direction, rad, -pi to pi.</summary>
    /// <param name="samples">Samples.</param>
    /// <param name="directionRad">Direction, rad.</param>
    public static double[] OffTheWay(WalkSamples samples, double directionRad) =>
        [.. samples.HeadingRad.Select(h => Math.IEEERemainder(h - directionRad, 2.0 * Math.PI))];
}
