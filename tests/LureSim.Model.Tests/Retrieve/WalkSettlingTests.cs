using LureSim.Model.Retrieve;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Made-up walks: a period of two that stands still has settled; what drifts, scatters or hangs on a threshold has not.</summary>
public sealed class WalkSettlingTests
{
    private const double MassKg = 0.02, LengthM = 0.1, TakeUp = 0.3, Middle = 44.0;

    /// <summary>A walk of 80 deg to either side; the change of each number per twitch, or what is added at a twitch.</summary>
    private static TwitchEnd[] Walk(
        int twitches = 20, double takeUpShare = 0.0, double slackM = 0.0, double widthM = 0.0, double headingDeg = 0.0, double width0M = 0.1, Func<int, double>? scatterDeg = null) =>
    [
        .. Enumerable.Range(0, twitches).Select(k =>
        {
            double e = ((k % 2 == 0 ? 80.0 : -80.0) + (headingDeg * k) + (scatterDeg?.Invoke(k) ?? 0.0)) * Math.PI / 180.0;
            return new TwitchEnd(new TwitchRecord(k, e, 160.0 * Math.PI / 180.0, 1.0, 0.2, 0.1, 0) { WidthM = width0M + (widthM * k) }, 0.1 + (slackM * k), TakeUp * (1.0 + (takeUpShare * k)));
        }),
    ];

    private static bool Settled(TwitchEnd[] walk, double middle = Middle) => WalkSettling.IsSettled(walk, middle, MassKg, LengthM);

    [Fact]
    public void A_walk_that_comes_back_every_second_twitch_has_settled() => Assert.True(Settled(Walk()));

    [Fact]
    public void Eight_twitches_are_needed()
    {
        Assert.True(Settled(Walk(8)));
        Assert.False(Settled(Walk(7)));
    }

    // 20 twitches are done, so their last eight lie 28 twitches before the middle at 44. Each drift stays within its tolerance at 0.9 of tolerance/28
    // a twitch, and not at 1.1; a return of every twitch to the one before last alone would see a 14th of the tolerance.
    [Theory]
    [InlineData(0.9, true)]
    [InlineData(1.1, false)]
    public void A_drift_counts_by_where_it_would_lead(double share, bool settled)
    {
        double perTwitch = share / 28.0;
        Assert.Equal(settled, Settled(Walk(slackM: 0.02 * perTwitch)));
        Assert.Equal(settled, Settled(Walk(widthM: 0.01 * perTwitch)));
        Assert.Equal(settled, Settled(Walk(headingDeg: 10.0 * perTwitch)));

        // 5 % of the mean of the eight, which lies at twitch 15.5.
        Assert.Equal(settled, Settled(Walk(takeUpShare: 0.05 * perTwitch / (1.0 - (0.05 * perTwitch * 15.5)))));
    }

    [Fact]
    public void A_drift_that_has_passed_the_middle_of_the_whole_run_counts_no_more()
    {
        Assert.False(Settled(Walk(takeUpShare: 0.01)));
        Assert.True(Settled(Walk(takeUpShare: 0.01), middle: 16.0));
    }

    [Fact]
    public void One_twitch_that_ends_elsewhere_is_enough_to_go_on()
    {
        Assert.True(Settled(Walk(scatterDeg: k => k == 15 ? 9.0 : 0.0), middle: 16.0));
        Assert.False(Settled(Walk(scatterDeg: k => k == 15 ? 11.0 : 0.0), middle: 16.0));
        Assert.False(Settled(Walk(scatterDeg: k => k == 12 ? -11.0 : 0.0), middle: 16.0));
    }

    // Period three under a rhythm of two.
    [Fact]
    public void A_walk_of_another_period_does_not_settle() => Assert.False(Settled(Walk(scatterDeg: k => k % 3 == 0 ? 20.0 : 0.0), middle: 16.0));

    [Fact]
    public void A_heading_that_has_turned_over_is_compared_around_the_circle() =>
        Assert.True(Settled(Walk(scatterDeg: k => k % 4 == 0 ? 360.0 : 0.0)));

    // A walk is at least half a hull wide: 5 cm here.
    [Theory]
    [InlineData(0.049, false)]
    [InlineData(0.059, false)]
    [InlineData(0.061, true)]
    [InlineData(0.041, true)]
    public void A_word_at_its_threshold_is_not_taken_early(double widthM, bool settled) => Assert.Equal(settled, Settled(Walk(width0M: widthM)));
}
