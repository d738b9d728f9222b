using LureSim.Studies.Cast;

namespace LureSim.Studies.Tests.Cast;

public sealed class NoticeRuleTests
{
    private const int Repeats = 20_000;

    // The test itself, made with drawn casts: how often the two means differ by more than 1.96 of their scatter, on the side of the gain.
    [Theory]
    [InlineData(1.5, 2.0, 2.0, 10)]
    [InlineData(1.5, 2.0, 2.0, 30)]
    [InlineData(0.6, 1.0, 3.0, 25)]
    [InlineData(0.0, 2.0, 1.0, 20)]
    [InlineData(-1.0, 2.0, 2.0, 15)]
    public void The_chance_is_that_of_a_test_of_two_means_made_with_drawn_casts(double gain, double sigmaA, double sigmaB, int casts)
    {
        double ratio = gain / Math.Sqrt((sigmaA * sigmaA) + (sigmaB * sigmaB));
        double drawn = Shown(gain, sigmaA, sigmaB, casts, (_, _) => Math.Sqrt(((sigmaA * sigmaA) + (sigmaB * sigmaB)) / casts), 1.959964);

        // Four standard errors of the drawing.
        Assert.Equal(drawn, NoticeRule.Power(ratio, casts), 4.0 * Math.Sqrt(0.25 / Repeats));
    }

    // Who does not know the scatter must take it from the same casts (Student's test): that costs a few per cent at ten casts, not a verdict.
    [Theory]
    [InlineData(10, 0.06)]
    [InlineData(30, 0.025)]
    public void A_test_that_takes_the_scatter_from_the_casts_shows_little_less(int casts, double cost)
    {
        const double sigma = 2.0;
        double critical = MathNet.Numerics.Distributions.StudentT.InvCDF(0.0, 1.0, (2 * casts) - 2, 0.975), ratio = 1.96 / Math.Sqrt(casts);
        double drawn = Shown(ratio * sigma * Math.Sqrt(2.0), sigma, sigma, casts, (a, b) => Math.Sqrt((a + b) / casts), critical);
        Assert.InRange(NoticeRule.Power(ratio, casts) - drawn, -0.01, cost);
    }

    [Fact]
    public void A_wrong_critical_value_would_be_seen() =>
        Assert.True(Math.Abs(Shown(1.5, 2.0, 2.0, 10, (_, _) => Math.Sqrt(0.8), 1.645) - NoticeRule.Power(1.5 / Math.Sqrt(8.0), 10)) > 0.05);

    [Fact]
    public void The_share_is_the_mean_over_draws_and_over_ten_to_thirty_casts()
    {
        double[] ratios = [0.8, 0.2, -0.5];
        double[] all = [.. from n in Enumerable.Range(10, 21) from r in ratios select NoticeRule.Power(r, n)];
        Assert.Equal(all.Average(), NoticeRule.Share(ratios), 1e-12);
        Assert.Equal((10, 30), (NoticeRule.FewestCasts, NoticeRule.MostCasts));
    }

    [Theory]
    [InlineData(0.0, NoticeVerdict.WillNot)]
    [InlineData(1.0 / 3.0, NoticeVerdict.WillNot)]
    [InlineData(0.34, NoticeVerdict.May)]
    [InlineData(0.66, NoticeVerdict.May)]
    [InlineData(2.0 / 3.0, NoticeVerdict.Will)]
    [InlineData(1.0, NoticeVerdict.Will)]
    public void Nothing_under_two_thirds_either_way_is_flat(double share, NoticeVerdict verdict) => Assert.Equal(verdict, NoticeRule.Verdict(share));

    // Draws of all kinds: what will be noticed takes no more casts than people make, and what takes more than they make will not surely be noticed.
    [Fact]
    public void The_casts_needed_and_the_verdict_come_from_one_rule()
    {
        var random = new Random(7);
        var seen = new HashSet<NoticeVerdict>();
        for (int i = 0; i < 300; i++)
        {
            double middle = random.NextDouble(), wide = random.NextDouble();
            double[] ratios = [.. Enumerable.Range(0, 20).Select(_ => middle + (wide * (random.NextDouble() - 0.5)))];
            double casts = NoticeRule.Casts(ratios);
            NoticeVerdict verdict = NoticeRule.Verdict(NoticeRule.Share(ratios));
            seen.Add(verdict);
            Assert.False(verdict == NoticeVerdict.Will && casts > NoticeRule.MostCasts);
            Assert.True(double.IsInfinity(casts) || NoticeRule.Share(ratios, (int)casts) >= NoticeRule.Sure);
            Assert.True(casts <= 2.0 || NoticeRule.Share(ratios, (int)Math.Min(casts, 1000.0) - 1) < NoticeRule.Sure);
        }

        Assert.Equal(3, seen.Count);
        Assert.True(double.IsInfinity(NoticeRule.Casts([0.0])));
    }

    private static double Shown(double gain, double sigmaA, double sigmaB, int casts, Func<double, double, double> error, double critical)
    {
        var random = new Random(1);
        int shown = 0;
        for (int i = 0; i < Repeats; i++)
        {
            ((double meanA, double varianceA), (double meanB, double varianceB)) = (Casts(random, 30.0, sigmaA, casts), Casts(random, 30.0 + gain, sigmaB, casts));
            shown += meanB - meanA > critical * error(varianceA, varianceB) ? 1 : 0;
        }

        return (double)shown / Repeats;
    }

    // Mean and variance of casts from a normal distribution (Box and Muller 1958, from memory).
    private static (double Mean, double Variance) Casts(Random random, double mean, double sigma, int casts)
    {
        double sum = 0.0, squares = 0.0;
        for (int i = 0; i < casts; i++)
        {
            double x = sigma * Math.Sqrt(-2.0 * Math.Log(1.0 - random.NextDouble())) * Math.Cos(2.0 * Math.PI * random.NextDouble());
            (sum, squares) = (sum + x, squares + (x * x));
        }

        return (mean + (sum / casts), (squares - (sum * sum / casts)) / (casts - 1));
    }
}
