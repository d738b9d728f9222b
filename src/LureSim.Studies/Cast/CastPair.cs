using MathNet.Numerics.Statistics;

namespace LureSim.Studies.Cast;

/// <summary>Two set-ups compared, whatever else is listed: nothing but their own draws enters.</summary>
/// <param name="From">Label of the first.</param>
/// <param name="To">Label of the second.</param>
/// <param name="GainM">Distance gained from the first to the second, m: mean over the draws that finished in both, so that it is the difference of their
/// means; negative when the second falls shorter.</param>
/// <param name="GainsM">Band of the gain over the draws, both set-ups with the same luck.</param>
/// <param name="Ratios">Gain over the scatter of the difference of one cast with each, in each draw; positive on the side of their median gain,
/// which one wild draw does not turn as it turns a mean.</param>
public sealed record CastPair(string From, string To, double GainM, Spread GainsM, IReadOnlyList<double> Ratios)
{
    /// <summary>Chance that the gain shows (<see cref="NoticeRule"/>), 0 to 1.</summary>
    public double Share { get; } = NoticeRule.Share(Ratios);

    /// <summary>The verdict.</summary>
    public NoticeVerdict Verdict => NoticeRule.Verdict(Share);

    /// <summary>Fewest casts with each that show it with a chance of two thirds; infinite when hardly any number does.</summary>
    public double Casts => NoticeRule.Casts(Ratios);

    /// <summary>Compares two set-ups; null when one has no cast or no draw finished in both.</summary>
    /// <param name="from">First.</param>
    /// <param name="to">Second.</param>
    public static CastPair? Between(CastCase from, CastCase to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        (CastDraw From, CastDraw To)[] draws = from.Cast is null || to.Cast is null ? [] : [.. from.Known.Zip(to.Known).Where(d => d.First.Finished && d.Second.Finished)];
        if (draws.Length == 0)
        {
            return null;
        }

        double[] gains = [.. draws.Select(d => d.To.MeanM - d.From.MeanM)];
        double side = gains.Median() < 0.0 ? -1.0 : 1.0;
        return new(from.Label, to.Label, gains.Average(), Spread.Of(gains), [.. draws.Select(d => side * Ratio(d.From, d.To))]);
    }

    // Casts without scatter and without a gain show nothing.
    private static double Ratio(CastDraw from, CastDraw to)
    {
        double gain = to.MeanM - from.MeanM;
        return gain == 0.0 ? 0.0 : gain / Math.Sqrt((from.SigmaM * from.SigmaM) + (to.SigmaM * to.SigmaM));
    }
}
