namespace LureSim.Model.Crawl;

/// <summary>Every number of a crawl, in the order of the files.</summary>
public static class CrawlFigures
{
    /// <summary>All.</summary>
    public static IReadOnlyList<Figure<CrawlResult>> All { get; } =
    [
        new("way_per_twitch_m", "way per twitch", "mean way toward the rod per whole twitch", c => c.Summary.WayPerTwitchM) { Headline = new("way per twitch", "cm", 100.0) },
        new("stroke_share", "way over stroke", "the same over the rigid stroke of the tip", c => c.Summary.StrokeShare),
        new("crawl_speed_m_s", "speed of the crawl", "way over time", c => c.Summary.SpeedMS) { Headline = new("speed of the crawl", "cm/s", 100.0) },
        new("time_to_opening_s", "time to the opening", "time until it comes to the opening; none where it does not", c => c.Summary.TimeToOpeningS),
        new("twitches_to_opening", "twitches to the opening", "twitches until then, the last one counted whole", c => c.Summary.TwitchesToOpening),
        new("way_m", "way", "way toward the rod until it comes to the opening or its time is over", c => c.Summary.WayM),
        new("lost_twitches", "twitches lost", "whole twitches that move it by less than a tenth of the stroke", c => c.Summary.LostTwitches),
        new("lure_weight_N", "weight on the plants", "weight of the lure with its hooks", c => c.Statics.WeightN),
        new("line_angle_deg", "line over the level", "angle of the straight line at the lure at the start", c => c.Statics.LineAngleRad * 180.0 / Math.PI),
        new("start_pull_N", "pull that starts it", "slow pull at the lure that starts it and keeps it going, by statics", c => c.Statics.PullN) { Headline = new("pull that starts it", "N", 1.0) },
        new("start_tip_pull_N", "the same at the tip", "the same at the rod tip where all line over plants lies on them", c => c.Statics.TipPullN),
        new("stretch_m", "stretch for it", "stretch of the line under those pulls", c => c.Statics.StretchM),
        new("rod_give_m", "rod bend for it", "way that the bending rod gives along the line under them", c => c.Statics.RodGiveM),
        new("least_stroke_m", "least slow stroke", "stroke that moves it from a tight line, pulled slowly; none where the rod points along the line", c => double.IsFinite(c.Statics.LeastStrokeM) ? c.Statics.LeastStrokeM : null),
        new("moving_pull_N", "pull while it moves", "mean pull at the lure while it moves", c => c.Summary.MovingPullN),
        new("nose_pull_peak_N", "lure pull, peak", "highest 5 ms mean pull at the lure", c => c.Summary.NosePullPeakN),
        new("tip_pull_peak_N", "rod tip pull, peak", "highest 5 ms mean pull at the rod tip", c => c.Summary.TipPullPeakN),
        new("pull_share", "pull that arrives", "highest pull at the lure over that at the tip, mean over the twitches", c => c.Summary.PullShare),
        new("plants_peak_N", "plants on the line, peak", "highest force of plants on the line, added up along it", c => c.Summary.PlantsPeakN),
        new("off_plants_share", "time off the plants", "share of time in which the plants carry nothing of it", c => c.Summary.OffShare),
        new("hop_m", "highest hop", "highest jump of its belly over the plants", c => c.Summary.HopM),
        new("mean_slack_m", "mean slack", "mean of line out less straight distance", c => c.Summary.MeanSlackM),
    ];

    /// <summary>An end as files name it.</summary>
    /// <param name="end">End.</param>
    public static string Name(CrawlEnd end) => end switch
    {
        CrawlEnd.Arrives => "arrives",
        CrawlEnd.Late => "late",
        _ => "stuck",
    };
}
