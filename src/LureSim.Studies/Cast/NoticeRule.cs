using MathNet.Numerics.Distributions;

namespace LureSim.Studies.Cast;

/// <summary>What is said about a gain.</summary>
public enum NoticeVerdict
{
    /// <summary>It will not be noticed: a chance of one third or less.</summary>
    WillNot,

    /// <summary>It may be noticed.</summary>
    May,

    /// <summary>It will be noticed: a chance of two thirds or more.</summary>
    Will,
}

/// <summary>Whether a gain in distance will be noticed among casts that scatter.</summary>
/// <remarks>
/// Somebody makes n casts with each of two set-ups and compares the means by the usual test at 5 % two-sided error. With a true gain g, and sigma the
/// scatter of the difference of one cast with each, the test shows the gain on its side with the chance Phi(sqrt(n) g/sigma - 1.96) (power of a test of
/// two means with known scatter; Cohen 1988, Statistical Power Analysis for the Behavioral Sciences, chapter 2, from memory). n is
/// <see cref="FewestCasts"/> to <see cref="MostCasts"/>, each as likely: what people make with two rods before they judge (common practice, no source).
/// The mean of the chance over n and over the draws of the guesses is the share; neither word without "may" stands on less than two thirds.
/// </remarks>
public static class NoticeRule
{
    /// <summary>Fewest casts with each of two set-ups before somebody judges.</summary>
    public const int FewestCasts = 10;

    /// <summary>Most casts with each of two set-ups before somebody judges.</summary>
    public const int MostCasts = 30;

    /// <summary>Share from which a gain will be noticed; as much on the other side is needed to say that it will not.</summary>
    public const double Sure = 2.0 / 3.0;

    /// <summary>Largest number of casts that <see cref="Casts"/> looks at.</summary>
    public const int LastCasts = 999;

    // 97.5 % of a normal distribution lie below.
    private const double Critical = 1.9599639845400545;

    /// <summary>Chance that n casts with each show a gain on its own side.</summary>
    /// <param name="ratio">g/sigma: true gain over the scatter of the difference of one cast with each; negative for a gain on the other side.</param>
    /// <param name="casts">n, at least 1.</param>
    public static double Power(double ratio, int casts) => Normal.CDF(0.0, 1.0, (ratio * Math.Sqrt(casts)) - Critical);

    /// <summary>Mean chance over the draws of the guesses, 0 to 1.</summary>
    /// <param name="ratios">g/sigma of each draw, at least one.</param>
    /// <param name="casts">n, at least 1.</param>
    public static double Share(IReadOnlyList<double> ratios, int casts)
    {
        ArgumentNullException.ThrowIfNull(ratios);
        double sum = 0.0;
        foreach (double ratio in ratios)
        {
            sum += Power(ratio, casts);
        }

        return sum / ratios.Count;
    }

    /// <summary>Mean chance over the draws and over the casts that people make, 0 to 1.</summary>
    /// <param name="ratios">g/sigma of each draw, at least one.</param>
    public static double Share(IReadOnlyList<double> ratios)
    {
        double sum = 0.0;
        for (int n = FewestCasts; n <= MostCasts; n++)
        {
            sum += Share(ratios, n);
        }

        return sum / (MostCasts - FewestCasts + 1);
    }

    /// <summary>The verdict of a share.</summary>
    /// <param name="share">0 to 1.</param>
    public static NoticeVerdict Verdict(double share) => share >= Sure ? NoticeVerdict.Will : share <= 1.0 - Sure ? NoticeVerdict.WillNot : NoticeVerdict.May;

    /// <summary>Fewest casts with each whose chance comes to two thirds; infinite when no number up to <see cref="LastCasts"/> does.</summary>
    /// <param name="ratios">g/sigma of each draw, at least one.</param>
    /// <remarks>At most <see cref="MostCasts"/> where the verdict is <see cref="NoticeVerdict.Will"/>: a mean of two thirds has a term of two thirds.</remarks>
    public static double Casts(IReadOnlyList<double> ratios)
    {
        for (int n = 2; n <= LastCasts; n++)
        {
            if (Share(ratios, n) >= Sure)
            {
                return n;
            }
        }

        return double.PositiveInfinity;
    }
}
