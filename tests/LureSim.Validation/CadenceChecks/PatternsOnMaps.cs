using LureSim.Model.Retrieve;

namespace LureSim.Validation.CadenceChecks;

/// <summary>
/// The pattern finder on kicked and shaken systems whose periods are known: each kick is a twitch, the angle after it the heading off
/// the line, the turn since the last kick the swing; every pull reaches the lure.
/// </summary>
public static class PatternsOnMaps
{
    private const int Twitches = 48;

    [PublishedCheck]
    public static Check KickedRotor()
    {
        double[] near = Rotor(3.9, 0.02, 0.0), born = Rotor(4.1, Pair(4.1), 2.0 * Pair(4.1)), wide = Rotor(5.0, Pair(5.0), 2.0 * Pair(5.0));
        double[] sea = Rotor(7.0, 1.0, 0.3);
        double Mean(double[] e) => e.Average(Math.Abs);
        return new(
            "M1", "The pattern finder on a kicked rotor: period one, two, and the chaotic sea",
            "Chirikov's standard map; fixed point stable for K < 4 (textbook); pair beyond it from K sin a = 4 a, recomputed",
            "Names and shares are exact; a to its last printed digit.",
            [
                Named("K = 3.9, 1 deg off the fixed point", WalkPattern.Tracking, near),
                Named("K = 4.1, on the pair born at 4", WalkPattern.Alternating, born),
                new("mean angle of that pair", "rad", 0.383959, Mean(born), 1e-6, Tol.Absolute),
                Named("K = 5, on the pair", WalkPattern.Alternating, wide),
                new("mean angle of that pair", "rad", 1.131103, Mean(wide), 1e-6, Tol.Absolute),
                new("its share of flips", "-", 1.0, PatternFinder.FlipShare(Records(wide)), 0.0, Tol.Absolute),
                Named("K = 7, in the chaotic sea", WalkPattern.Irregular, sea),
            ]);
    }

    [PublishedCheck]
    public static Check BouncingBall()
    {
        double[] one = Ball(1.4), wobble = Ball(1.53), two = Ball(1.6), four = Ball(1.68);
        double Period(double[] e) => Enumerable.Range(1, 8).First(p => Enumerable.Range(0, e.Length - p).All(k => Math.Abs(e[k + p] - e[k]) < 1e-6));
        return new(
            "M2", "The pattern finder on a ball on a vibrating table: period one, two and four",
            "Period doubling at A omega^2/g = 1.526824 for restitution 0.5 (Luo and Han 1996, exact table motion, from memory; recomputed)",
            "Names and periods are exact. A wobble below 20 deg is tracking by definition, so the name changes a little after the doubling.",
            [
                new("period at 1.40", "impacts", 1, Period(one), 0.0, Tol.Absolute),
                Named("1.40", WalkPattern.Tracking, one),
                new("period at 1.53, past the doubling", "impacts", 2, Period(wobble), 0.0, Tol.Absolute),
                Named("1.53, wobble of 5 deg", WalkPattern.Tracking, wobble),
                new("period at 1.60", "impacts", 2, Period(two), 0.0, Tol.Absolute),
                Named("1.60", WalkPattern.Alternating, two),
                new("period at 1.68", "impacts", 4, Period(four), 0.0, Tol.Absolute),
                Named("1.68, sides alternate with two widths", WalkPattern.Alternating, four),
            ]);
    }

    private static Row Named(string where, WalkPattern expected, double[] angles) =>
        new($"{where}: {expected.ToString().ToLowerInvariant()}", "yes = 1", 1.0, PatternFinder.Classify(Records(angles), 1.0, 0.1) == expected ? 1.0 : 0.0, 0.0, Tol.Absolute);

    private static TwitchRecord[] Records(double[] angles) =>
        [.. angles.Select((e, k) => new TwitchRecord(k, e, Math.Abs(Wrap(e - angles[Math.Max(0, k - 1)])), 1.0, 0.2, 0.0, 0) { WidthM = 0.1 })];

    /// <summary>Angles off the fixed point (pi, 0) of x' = x + p', p' = p + K sin x.</summary>
    private static double[] Rotor(double k, double offset, double p)
    {
        double x = Math.PI + offset;
        var angles = new double[Twitches];
        for (int n = 0; n < Twitches; n++)
        {
            angles[n] = Wrap(x - Math.PI);
            p += k * Math.Sin(x);
            x += p;
        }

        return angles;
    }

    /// <summary>a of the pair pi +- a: K sin a = 4 a.</summary>
    private static double Pair(double k)
    {
        double low = 1e-3, high = Math.PI;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = k * Math.Sin(middle) > 4.0 * middle ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Phases of impact off the period-one phase, after 2,000 impacts; units omega = g = 1.</summary>
    private static double[] Ball(double gamma)
    {
        const double Restitution = 0.5;
        double phase = Math.Acos(Math.PI * (1.0 - Restitution) / ((1.0 + Restitution) * gamma));
        double t = phase + 0.01, v = Math.PI;
        var angles = new List<double>();
        for (int n = 0; n < 2000 + Twitches; n++)
        {
            double landed = Landing(t, v, gamma);
            v = ((1.0 + Restitution) * gamma * Math.Cos(landed)) - (Restitution * (v - (landed - t)));
            t = landed;
            angles.Add(Wrap(t - phase));
        }

        return [.. angles.Skip(2000)];
    }

    private static double Landing(double t, double v, double gamma)
    {
        double Height(double s) => (gamma * (Math.Sin(t) - Math.Sin(s))) + (v * (s - t)) - (0.5 * (s - t) * (s - t));
        double low = t + 1e-4;
        while (Height(low + 0.01) > 0.0)
        {
            low += 0.01;
        }

        double high = low + 0.01;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Height(middle) > 0.0 ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static double Wrap(double angle) => Math.IEEERemainder(angle, 2.0 * Math.PI);
}
