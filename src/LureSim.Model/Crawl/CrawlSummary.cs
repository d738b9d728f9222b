namespace LureSim.Model.Crawl;

/// <summary>What becomes of a crawl.</summary>
public enum CrawlEnd
{
    /// <summary>It comes to the opening.</summary>
    Arrives,

    /// <summary>It moves, but its time is over before.</summary>
    Late,

    /// <summary>Most twitches are lost: it hardly moves.</summary>
    Stuck,
}

/// <summary>The figures of a crawl. Forces at the lure and the rod tip are means over the output step.</summary>
public sealed record CrawlSummary
{
    /// <summary>A twitch that moves the lure by less than this share of the stroke is lost.</summary>
    public const double LostShare = 0.1;

    /// <summary>Faster than this it counts as moving, m/s: twenty times the creep of a lure that is held.</summary>
    public const double MovingMS = 0.01;

    /// <summary>What became of it.</summary>
    public CrawlEnd End => TimeToOpeningS is not null ? CrawlEnd.Arrives : 2 * LostTwitches > Twitches.Count ? CrawlEnd.Stuck : CrawlEnd.Late;

    /// <summary>Time until the lure came to the opening, s; null where it did not.</summary>
    public required double? TimeToOpeningS { get; init; }

    /// <summary>Twitches until then, the last one counted whole; null likewise.</summary>
    public required int? TwitchesToOpening { get; init; }

    /// <summary>Way in all, m.</summary>
    public required double WayM { get; init; }

    /// <summary>Mean way per whole twitch, m.</summary>
    public required double WayPerTwitchM { get; init; }

    /// <summary>The same over the stroke.</summary>
    public required double StrokeShare { get; init; }

    /// <summary>Way over time, m/s.</summary>
    public required double SpeedMS { get; init; }

    /// <summary>Whole twitches that were lost: see <see cref="LostShare"/>.</summary>
    public required int LostTwitches { get; init; }

    /// <summary>Mean pull at the lure while it moves, N.</summary>
    public required double MovingPullN { get; init; }

    /// <summary>Highest pull at the lure, N.</summary>
    public required double NosePullPeakN { get; init; }

    /// <summary>Highest pull at the rod tip, N.</summary>
    public required double TipPullPeakN { get; init; }

    /// <summary>Mean over the twitches of the highest pull at the lure over the highest at the tip.</summary>
    public required double PullShare { get; init; }

    /// <summary>Highest force of plants on the line, added up along it, N.</summary>
    public required double PlantsPeakN { get; init; }

    /// <summary>Share of time in which the plants carry nothing of the lure, 0 to 1.</summary>
    public required double OffShare { get; init; }

    /// <summary>Highest jump of the belly over the plants, m.</summary>
    public required double HopM { get; init; }

    /// <summary>Mean slack, m.</summary>
    public required double MeanSlackM { get; init; }

    /// <summary>Whole twitches.</summary>
    public required ValueList<CrawlTwitch> Twitches { get; init; }

    /// <summary>Reads the figures from the channels.</summary>
    /// <param name="series">Channels.</param>
    /// <param name="task">Crawl.</param>
    /// <param name="periodS">Time of a twitch, s.</param>
    internal static CrawlSummary Of(Series series, CrawlTask task, double periodS)
    {
        ReadOnlySpan<double> time = series["time_s"], way = series["way_m"], nose = series["nose_tension_N"], tip = series["tip_tension_N"];
        ReadOnlySpan<double> speed = series["speed_m_s"], clear = series["clear_m"], normal = series["normal_N"];
        double end = time[^1], moved = 0.0, pull = 0.0, off = 0.0;
        for (int i = 1; i < time.Length; i++)
        {
            double dt = time[i] - time[i - 1];
            (moved, pull) = speed[i] > MovingMS ? (moved + dt, pull + (dt * nose[i])) : (moved, pull);
            off += normal[i] == 0.0 ? dt : 0.0;
        }

        (ValueList<CrawlTwitch> twitches, double share) = Cut(series, periodS);
        bool arrived = way[^1] >= task.ToOpeningM;
        double perTwitch = twitches.Count > 0 ? twitches.Average(t => t.WayM) : 0.0;
        return new CrawlSummary
        {
            TimeToOpeningS = arrived ? end : null,
            TwitchesToOpening = arrived ? (int)Math.Ceiling((end / periodS) - 1e-9) : null,
            WayM = way[^1],
            WayPerTwitchM = perTwitch,
            StrokeShare = perTwitch / task.StrokeM,
            SpeedMS = end > 0.0 ? way[^1] / end : 0.0,
            LostTwitches = twitches.Count(t => t.WayM < LostShare * task.StrokeM),
            MovingPullN = moved > 0.0 ? pull / moved : 0.0,
            NosePullPeakN = Highest(nose),
            TipPullPeakN = Highest(tip),
            PullShare = share,
            PlantsPeakN = Highest(series["plants_N"]),
            OffShare = end > 0.0 ? off / end : 0.0,
            HopM = Math.Max(0.0, Highest(clear)),
            MeanSlackM = series["slack_m"].Average(),
            Twitches = twitches,
        };
    }

    private static (ValueList<CrawlTwitch> Twitches, double PullShare) Cut(Series series, double periodS)
    {
        ReadOnlySpan<double> time = series["time_s"], way = series["way_m"], nose = series["nose_tension_N"], tip = series["tip_tension_N"];
        var twitches = new List<CrawlTwitch>();
        double shares = 0.0, highNose = 0.0, highTip = 0.0, from = way[0];
        for (int i = 1; i < time.Length; i++)
        {
            (highNose, highTip) = (Math.Max(highNose, nose[i]), Math.Max(highTip, tip[i]));
            double due = (twitches.Count + 1) * periodS;
            if (time[i] < due - 1e-9)
            {
                continue;
            }

            double at = way[i - 1] + ((way[i] - way[i - 1]) * (due - time[i - 1]) / (time[i] - time[i - 1]));
            twitches.Add(new(twitches.Count * periodS, at - from, highNose));
            shares += highTip > 0.0 ? highNose / highTip : 0.0;
            (from, highNose, highTip) = (at, 0.0, 0.0);
        }

        return ([.. twitches], twitches.Count > 0 ? shares / twitches.Count : 0.0);
    }

    private static double Highest(ReadOnlySpan<double> values)
    {
        double high = values[0];
        foreach (double v in values)
        {
            high = Math.Max(high, v);
        }

        return high;
    }
}
