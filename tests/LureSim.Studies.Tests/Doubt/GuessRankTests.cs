using LureSim.Studies.Doubt;
using LureSim.Studies.Sampling;

namespace LureSim.Studies.Tests.Doubt;

public class GuessRankTests
{
    [Fact]
    public void A_made_up_model_is_seen_through()
    {
        GuessRank[][] ranks = GuessRank.Of(3, 3, Samples(1000));

        // rises = 3 s + w, s and w uniform on 0..1: rho between rank of s and the sum is close to Pearson's 3/sqrt(10) = 0.949.
        Assert.Equal(3.0 / Math.Sqrt(10.0), ranks[0][0].Rho, 0.02);
        Assert.Equal(1.0 / Math.Sqrt(10.0), ranks[1][0].Rho, 3.0 / Math.Sqrt(1000.0));
        Assert.InRange(ranks[2][0].Weight, 0.0, 3.0 / Math.Sqrt(1000.0));

        // Thirds of a uniform law have means 1/6 and 5/6: the sum shifts by 3 (1/6 - 1/2) = -1 and +1.
        Assert.Equal(-1.0, ranks[0][0].LowShift, 0.06);
        Assert.Equal(1.0, ranks[0][0].HighShift, 0.06);
    }

    [Fact]
    public void A_fall_is_a_rank_of_minus_one_and_a_constant_has_none()
    {
        GuessRank[][] ranks = GuessRank.Of(3, 3, Samples(200));
        Assert.Equal(-1.0, ranks[0][1].Rho, 1e-12);
        Assert.Equal(1.0, ranks[0][1].Weight, 1e-12);
        Assert.All(ranks, e => Assert.Equal(0.0, e[2].Rho));
    }

    [Fact]
    public void Chance_falls_with_the_number_of_runs()
    {
        Assert.Equal(1.96 / Math.Sqrt(98.0), GuessRank.ByChance(99), 1e-12);
        Assert.Equal(1.0, GuessRank.ByChance(1));
    }

    [Fact]
    public void A_guess_or_a_figure_that_some_runs_lack_is_ranked_on_the_others()
    {
        List<DoubtSample> samples =
        [
            .. Samples(200),
            .. Samples(100).Select(s => s with { Guesses = [double.NaN, s.Guesses[1], s.Guesses[2]] }),
            .. Samples(50).Select(s => s with { Figures = [double.NaN, double.NaN, 4.0] }),
            new([0.5, 0.5, 0.5], "", null),
        ];
        Assert.Equal(-1.0, GuessRank.Of(3, 3, samples)[0][1].Rho, 1e-12);
    }

    [Fact]
    public void The_mean_over_points_keeps_magnitudes()
    {
        var sum = new RankMean();
        sum.Add(GuessRank.Of(1, 1, [.. Line(1.0)]));
        sum.Add(GuessRank.Of(1, 1, [.. Line(-1.0)]));
        GuessRank mean = sum.Result()[0][0];
        Assert.Equal(0.0, mean.Rho, 1e-12);
        Assert.Equal(1.0, mean.Weight, 1e-12);

        static IEnumerable<DoubtSample> Line(double slope) => Enumerable.Range(0, 12).Select(i => new DoubtSample([i], "", [slope * i]));
    }

    private static List<DoubtSample> Samples(int count)
    {
        var design = new LatinHypercube(count, 11);
        return
        [
            .. Enumerable.Range(0, count).Select(i =>
            {
                double[] u = [design.Share(i, 0), design.Share(i, 1), design.Share(i, 2)];
                return new DoubtSample(u, "walks", [(3.0 * u[0]) + u[1], Math.Exp(-u[0]), 4.0]);
            }),
        ];
    }
}
