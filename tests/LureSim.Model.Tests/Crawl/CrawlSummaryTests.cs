using LureSim.Model.Crawl;

namespace LureSim.Model.Tests.Crawl;

/// <summary>Figures from channels whose answers are known.</summary>
public sealed class CrawlSummaryTests
{
    // Twitches of 1 s, rows of 0.25 s; ways 0.2, 0.01 and 0.3 m.
    private static readonly double[] Way = [0, 0.1, 0.2, 0.2, 0.2, 0.21, 0.21, 0.21, 0.21, 0.41, 0.51, 0.51, 0.51];

    private static Series Channels(double[] way)
    {
        double[] time = [.. way.Select((_, i) => 0.25 * i)];
        double[] moving = [.. way.Select((w, i) => i > 0 && w > way[i - 1] ? 0.3 : 0.0)];
        Channel Of(string name, IEnumerable<double> values) => new(name, "", "", ValueList.Own(values.ToArray()));
        return new([
            Of("time_s", time), Of("way_m", way), Of("speed_m_s", moving), Of("nose_tension_N", moving.Select(v => 2.0 * v)), Of("tip_tension_N", moving.Select(v => 4.0 * v)),
            Of("clear_m", moving.Select(v => v > 0.0 ? 0.002 : -0.001)), Of("normal_N", moving.Select(v => v > 0.0 ? 0.0 : 0.1)), Of("plants_N", moving), Of("slack_m", moving.Select(_ => 0.1))]);
    }

    [Fact]
    public void Ways_lost_twitches_pulls_and_hops_are_read_off()
    {
        CrawlSummary s = CrawlSummary.Of(Channels(Way), new CrawlTask(StrokeM: 0.2), 1.0);
        Assert.Equal([0.2, 0.01, 0.3], s.Twitches.Select(t => Math.Round(t.WayM, 12)));
        Assert.Equal(0.17, s.WayPerTwitchM, 1e-12);
        Assert.Equal(0.85, s.StrokeShare, 1e-12);
        Assert.Equal(1, s.LostTwitches);
        Assert.Equal(0.17, s.SpeedMS, 1e-12);
        Assert.Equal(0.6, s.MovingPullN, 1e-12);
        Assert.Equal((0.6, 1.2, 0.5), (s.NosePullPeakN, s.TipPullPeakN, s.PullShare));
        Assert.Equal(5.0 / 12.0, s.OffShare, 1e-12);
        Assert.Equal(0.002, s.HopM);
        Assert.Null(s.TimeToOpeningS);
    }

    [Fact]
    public void Come_there_within_a_twitch_that_twitch_counts()
    {
        CrawlSummary s = CrawlSummary.Of(Channels(Way[..11]), new CrawlTask(StrokeM: 0.2, ToOpeningM: 0.5), 1.0);
        Assert.Equal(2.5, s.TimeToOpeningS);
        Assert.Equal(3, s.TwitchesToOpening);
        Assert.Equal(2, s.Twitches.Count);
    }

    [Fact]
    public void A_lure_that_never_moves_has_no_pull_that_moves_it()
    {
        CrawlSummary s = CrawlSummary.Of(Channels([0, 0, 0, 0, 0, 0]), new CrawlTask(), 1.0);
        Assert.Equal((0.0, 0.0, 1), (s.MovingPullN, s.WayPerTwitchM, s.LostTwitches));
    }
}
