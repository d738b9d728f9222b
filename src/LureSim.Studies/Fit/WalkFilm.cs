using MathNet.Numerics.Distributions;

namespace LureSim.Studies.Fit;

/// <summary>A film of a walk, reduced to its figures, each with one standard deviation.</summary>
/// <param name="RhythmPerS">Twitches per second: twice the turns to and fro.</param>
/// <param name="Pairs">Pairs of twitches on it.</param>
/// <param name="Figures">Figures.</param>
/// <param name="AdvanceSigmaM">Error of the advance, m.</param>
/// <param name="WidthSigmaM">Of the width, m.</param>
/// <param name="SwingSigmaRad">Of the swing, rad.</param>
internal sealed record WalkFilm(double RhythmPerS, double Pairs, WalkFigures Figures, double AdvanceSigmaM, double WidthSigmaM, double SwingSigmaRad)
{
    /// <summary>Fewest pairs of twitches: with less there is no scatter to judge an error by.</summary>
    public const int FewestPairs = 3;

    // A film that ends a little before the third pair is one of three.
    private const double Nearly = 0.15;

    private const int PicturesPerPair = 6;
    private const double LeastSwingRad = 20.0 * Math.PI / 180.0, LeastShare = 0.5, SameRhythm = 0.12, MostSideShare = 2.0, Tenth = 0.9;

    /// <summary>Reduces a film.</summary>
    /// <param name="samples">Film.</param>
    /// <param name="cadencePerS">Twitches per second as counted; null where only the film tells.</param>
    /// <param name="placeErrorM">How well a place was read, m.</param>
    /// <param name="angleErrorRad">How well a heading was read, rad.</param>
    /// <returns>The film, or why it is none of a walk.</returns>
    public static (WalkFilm? Film, string? Refusal) Of(WalkSamples samples, double? cadencePerS, double placeErrorM, double angleErrorRad)
    {
        if (samples.PlaceTimeS.Length < FewestPairs * PicturesPerPair)
        {
            return (null, FormattableString.Invariant($"{samples.PlaceTimeS.Length} pictures show where it is; at least {FewestPairs * PicturesPerPair} are due, {PicturesPerPair} to each pair of twitches"));
        }

        double turns = WalkRhythm.Of(samples), pairs = samples.SpanS * turns;
        if (pairs < FewestPairs - Nearly)
        {
            return (null, FormattableString.Invariant($"{pairs:F1} pairs of twitches; at least {FewestPairs} are due, or nothing tells how alike they are"));
        }

        if (samples.PlaceTimeS.Length < PicturesPerPair * pairs)
        {
            return (null, FormattableString.Invariant($"{samples.PlaceTimeS.Length / pairs:F1} pictures to a pair of twitches; at least {PicturesPerPair} are due"));
        }

        WalkFigures figures = WalkFigures.Of(samples, 0.5 / turns);
        if (NoWalk(samples, turns, figures, cadencePerS) is string reason)
        {
            return (null, reason);
        }

        return (WithErrors(samples, turns, pairs, figures, placeErrorM, angleErrorRad), null);
    }

    // The words for a film that shows no walk from side to side.
    private static string? NoWalk(WalkSamples samples, double turns, WalkFigures figures, double? cadencePerS)
    {
        double share = WalkRhythm.Share(samples, turns);
        if (share < LeastShare)
        {
            return FormattableString.Invariant($"it does not alternate: no rhythm holds more than {100.0 * share:F0} % of how it turns; a film of a walk from side to side is due");
        }

        if (figures.SwingRad < LeastSwingRad)
        {
            return FormattableString.Invariant($"it does not alternate: its heading swings by {figures.SwingRad * 180.0 / Math.PI:F0} deg, and a walk by more than {LeastSwingRad * 180.0 / Math.PI:F0}");
        }

        double twitches = cadencePerS ?? 2.0 * turns;
        if (Math.Abs((2.0 * turns) - twitches) > SameRhythm * twitches)
        {
            return FormattableString.Invariant($"it does not alternate: {twitches:F2} twitches a second are said, and it turns to and fro {turns:F2} times a second where {0.5 * twitches:F2} would be to each side in turn");
        }

        return figures.SurgeSideShare > MostSideShare
            ? "it does not alternate: it is pulled once for each turn to and fro, where a walk takes two pulls; it keeps to one side"
            : null;
    }

    // The jackknife that leaves out one pair of twitches after the other (Tukey 1958, from memory) sees how unlike they are and how well places were read, in one;
    // few pairs know their scatter badly, so it is widened to what Student's law has in 80 of 100. It is never less than what errors of reading leave.
    private static WalkFilm WithErrors(WalkSamples samples, double turns, double pairs, WalkFigures figures, double placeErrorM, double angleErrorRad)
    {
        double from = samples.PlaceTimeS[0];
        int n = Math.Max(FewestPairs, (int)Math.Round(pairs));
        WalkFigures[] without =
        [
            .. Enumerable.Range(0, n).Select(k => samples.Where(t => Math.Clamp((int)((t - from) * n / samples.SpanS), 0, n - 1) != k)).Select(s => WalkFigures.Of(s, 0.5 / WalkRhythm.Near(s, turns))),
        ];
        double wider = StudentT.InvCDF(0.0, 1.0, n - 1, Tenth) / Normal.InvCDF(0.0, 1.0, Tenth);
        double Scatter(Func<WalkFigures, double> of)
        {
            double mean = without.Average(of);
            return wider * Math.Sqrt((n - 1.0) / n * without.Sum(w => (of(w) - mean) * (of(w) - mean)));
        }

        var places = new Harmonics(samples.PlaceTimeS, 1.0 / turns);
        double advance = 0.5 * placeErrorM * Math.Sqrt(places.Variance(1)), width = 2.0 * placeErrorM * Math.Sqrt(places.Variance(2));
        double swing = 2.0 * angleErrorRad * Math.Sqrt(2.0 / Math.Max(1, samples.HeadingTimeS.Length));
        return new(
            2.0 * turns, pairs, figures, Math.Max(advance, Scatter(w => w.AdvanceM)), Math.Max(width, Scatter(w => w.WidthM)),
            double.IsNaN(figures.SwingRad) ? double.NaN : Math.Max(swing, Scatter(w => w.SwingRad)));
    }
}
