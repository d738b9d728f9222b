using LureSim.Studies.Doubt;

namespace LureSim.Studies.Tests.Doubt;

public sealed class EffectMeanTests
{
    // Means of 0.5 and 0.1, 0.5 and 0.3, -2 and -4, 6 and 1.
    [Fact]
    public void Every_part_of_an_effect_is_the_mean_over_the_points()
    {
        var mean = new EffectMean();
        mean.Add(Report(new(0.5, 0.5, -2.0, 6.0)));
        mean.Add(Report(new(0.1, 0.3, -4.0, 1.0)));
        GuessEffect effect = Assert.Single(Assert.Single(mean.Result()));
        Assert.Equal(0.3, effect.Rho, 1e-15);
        Assert.Equal(0.4, effect.Weight, 1e-15);
        Assert.Equal(-3.0, effect.LowShift, 1e-15);
        Assert.Equal(3.5, effect.HighShift, 1e-15);
        Assert.Empty(new EffectMean().Result());
    }

    private static DoubtReport Report(GuessEffect effect) => new(10, 0, [], [new("f", 1.0, 2.0, 3.0, 10)], ["g"], [[effect]]);
}
