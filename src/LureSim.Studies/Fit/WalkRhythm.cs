using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Fit;

/// <summary>How often a lure on a film turns to and fro: the rhythm whose harmonics hold most of its heading, or of its path across where no heading was seen
/// (least squares over a grid of rhythms, for uneven times; the idea is that of Lomb 1976, from memory).</summary>
internal static class WalkRhythm
{
    // Places of the grid per 1/span, which is how sharply a film of that length tells a rhythm; then twice ten times as fine about the best.
    private const double PerSpan = 8.0;

    private const int Finer = 10, Finenesses = 2;

    /// <summary>Turns to and fro per second.</summary>
    /// <param name="samples">Film, at least a dozen pictures.</param>
    public static double Of(WalkSamples samples)
    {
        (double[] times, double[] values) = Signal(samples);
        double step = 1.0 / (PerSpan * samples.SpanS), slowest = Math.Max(0.5 * RetrieveKeys.Cadence.Low, 1.0 / samples.SpanS);

        // Between two pictures it must not turn by more than a quarter of its round.
        double[] apart = [.. times.Zip(times.Skip(1), (a, b) => b - a).Order()];
        double fastest = Math.Min(0.5 * RetrieveKeys.Cadence.High, 0.25 / apart[apart.Length / 2]);
        return Near(times, values, Best(times, values, slowest, Math.Max(fastest, slowest), step), step);
    }

    /// <summary>The same next to one that is known well, as of a part of the same film.</summary>
    /// <param name="samples">Film.</param>
    /// <param name="turnsPerS">Turns to and fro per second.</param>
    public static double Near(WalkSamples samples, double turnsPerS)
    {
        (double[] times, double[] values) = Signal(samples);
        return Near(times, values, turnsPerS, 1.0 / (PerSpan * samples.SpanS));
    }

    /// <summary>Share of the signal that a rhythm and its harmonics hold.</summary>
    /// <param name="samples">Film.</param>
    /// <param name="turnsPerS">Turns to and fro per second.</param>
    public static double Share(WalkSamples samples, double turnsPerS)
    {
        (double[] times, double[] values) = Signal(samples);
        return new Harmonics(times, 1.0 / turnsPerS).Share(values);
    }

    private static double Near(double[] times, double[] values, double best, double step)
    {
        for (int k = 0; k < Finenesses; k++)
        {
            best = Best(times, values, best - step, best + step, step / Finer);
            step /= Finer;
        }

        return best;
    }

    private static double Best(double[] times, double[] values, double from, double to, double step)
    {
        double best = from, most = double.NegativeInfinity;
        for (int i = 0; from + (i * step) <= to; i++)
        {
            double power = Power(times, values, from + (i * step));
            (best, most) = power > most ? (from + (i * step), power) : (best, most);
        }

        return best;
    }

    // What the first harmonic takes from the sum of squares: two sums and the two-by-two matrix of cosine and sine about their means.
    private static double Power(double[] times, double[] values, double perS)
    {
        int n = times.Length;
        double mean = values.Average(), meanCos = 0.0, meanSin = 0.0, cc = 0.0, cs = 0.0, ss = 0.0, vc = 0.0, vs = 0.0;
        var wave = new (double Sin, double Cos)[n];
        for (int i = 0; i < n; i++)
        {
            wave[i] = Math.SinCos(2.0 * Math.PI * perS * times[i]);
            (meanCos, meanSin) = (meanCos + (wave[i].Cos / n), meanSin + (wave[i].Sin / n));
        }

        for (int i = 0; i < n; i++)
        {
            double c = wave[i].Cos - meanCos, s = wave[i].Sin - meanSin, v = values[i] - mean;
            (cc, cs, ss, vc, vs) = (cc + (c * c), cs + (c * s), ss + (s * s), vc + (v * c), vs + (v * s));
        }

        double det = (cc * ss) - (cs * cs);
        return det > 1e-9 * n * n ? ((ss * vc * vc) - (2.0 * cs * vc * vs) + (cc * vs * vs)) / det : 0.0;
    }

    // Headings off the straight way from the first to the last picture, or places across it.
    private static (double[] Times, double[] Values) Signal(WalkSamples samples)
    {
        int n = samples.PlaceTimeS.Length, few = Math.Max(1, n / 4);
        double dx = samples.XM[^few..].Average() - samples.XM[..few].Average(), dy = samples.YM[^few..].Average() - samples.YM[..few].Average();
        double direction = Math.Atan2(dy, dx);
        return samples.HeadingTimeS.Length >= n / 2
            ? (samples.HeadingTimeS, WalkFigures.OffTheWay(samples, direction))
            : (samples.PlaceTimeS, [.. samples.XM.Zip(samples.YM, (x, y) => (Math.Cos(direction) * y) - (Math.Sin(direction) * x))]);
    }
}
