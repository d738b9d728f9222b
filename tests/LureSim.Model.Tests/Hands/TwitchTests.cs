using LureSim.Model.Hands;

namespace LureSim.Model.Tests.Hands;

public sealed class TwitchTests
{
    // 0.15 + 0.15 s do not fit into a quarter of a second: both are squeezed by the same share to 80 % of it.
    [Fact]
    public void Pull_and_return_that_do_not_fit_fill_four_fifths_of_the_period()
    {
        var twitch = new Twitch(4.0, 0.15, 0.15, 1.0);
        Assert.Equal(0.25, twitch.PeriodS);
        Assert.Equal(0.1, twitch.PullS, 1e-15);
        Assert.Equal(0.1, twitch.ReturnS, 1e-15);
        var uneven = new Twitch(4.0, 0.1, 0.3, 1.0);
        Assert.Equal((0.05, 0.15), (Math.Round(uneven.PullS, 12), Math.Round(uneven.ReturnS, 12)));
        var fits = new Twitch(2.0, 0.1, 0.15, 1.0);
        Assert.Equal((0.1, 0.15), (fits.PullS, fits.ReturnS));
    }

    // Raised cosines: half way after half the time, there at pi/2 times the mean rate, at rest at every joint. Pull 0.1 s, return of 0.8 of the
    // stroke in 0.15 s, drift of the last 0.2 in 0.25 s.
    [Theory]
    [InlineData(0.0, 0.0, 0.0)]
    [InlineData(0.05, 0.5, 1.0 / 0.1)]
    [InlineData(0.1, 1.0, 0.0)]
    [InlineData(0.175, 0.6, -0.8 / 0.15)]
    [InlineData(0.25, 0.2, 0.0)]
    [InlineData(0.375, 0.1, -0.2 / 0.25)]
    [InlineData(0.5, 0.0, 0.0)]
    [InlineData(3.55, 0.5, 1.0 / 0.1)]
    public void Share_and_rate_are_raised_cosines_joined_at_rest(double time, double share, double meanRate)
    {
        var twitch = new Twitch(2.0, 0.1, 0.15, 0.8);
        foreach (double beside in new[] { -1e-9, 1e-9 })
        {
            (double s, double rate) = twitch.At(Math.Max(0.0, time + beside));
            Assert.Equal(share, s, 1e-7);
            Assert.Equal(0.5 * Math.PI * meanRate, rate, 1e-5);
        }
    }

    [Fact]
    public void The_rate_is_the_slope_of_the_share()
    {
        var twitch = new Twitch(3.0, 0.15, 0.2, 0.6);
        for (double t = 0.0013; t < 1.0; t += 0.0071)
        {
            double slope = (twitch.At(t + 1e-6).Share - twitch.At(t - 1e-6).Share) / 2e-6;

            // Beside a joint the curvature jumps by up to 400 /s2: 4e-4 over the difference.
            Assert.Equal(slope, twitch.At(t).Rate, 1e-3);
        }
    }

    [Theory]
    [InlineData(0.0, 0.1, 0.1)]
    [InlineData(2.0, -0.1, 0.1)]
    [InlineData(2.0, 0.1, 0.0)]
    public void Times_of_zero_are_refused(double cadence, double pull, double back) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Twitch(cadence, pull, back, 1.0));
}
