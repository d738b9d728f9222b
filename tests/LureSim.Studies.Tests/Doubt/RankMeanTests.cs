using LureSim.Studies.Doubt;

namespace LureSim.Studies.Tests.Doubt;

public sealed class RankMeanTests
{
    // Means of 0.5 and 0.1, 0.5 and 0.3, -2 and -4, 6 and 1.
    [Fact]
    public void Every_part_of_a_rank_is_the_mean_over_the_points()
    {
        var mean = new RankMean();
        mean.Add([[new(0.5, 0.5, -2.0, 6.0)]]);
        mean.Add([[new(0.1, 0.3, -4.0, 1.0)]]);
        GuessRank rank = Assert.Single(Assert.Single(mean.Result()));
        Assert.Equal(0.3, rank.Rho, 1e-15);
        Assert.Equal(0.4, rank.Weight, 1e-15);
        Assert.Equal(-3.0, rank.LowShift, 1e-15);
        Assert.Equal(3.5, rank.HighShift, 1e-15);
        Assert.Empty(new RankMean().Result());
    }
}
