using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;

namespace LureSim.Reports.Tests.Support;

/// <summary>A crawl drawn by hand: six twitches of 20 cm and 2 m/s, and the same with line that plants hold.</summary>
internal static class MadeUpCrawl
{
    private const double Period = 0.5, Row = 0.01;

    private static readonly CrawlTask Task = new(ToOpeningM: 1.1, CadencePerS: 1.0 / Period);

    private static readonly CrawlStatics Statics = new(0.16, 0.075, 0.064, 0.75, 0.001, 0.046, 0.067);

    public static CrawlResult Result() => Of(0.2, new CrawlSummary
    {
        TimeToOpeningS = 2.6,
        TwitchesToOpening = 6,
        WayM = 1.1,
        WayPerTwitchM = 0.2,
        StrokeShare = 1.33,
        SpeedMS = 0.42,
        LostTwitches = 1,
        MovingPullN = 0.07,
        NosePullPeakN = 1.5,
        TipPullPeakN = 1.7,
        PullShare = 0.55,
        PlantsPeakN = 0.75,
        OffShare = 0.04,
        HopM = 0.012,
        MeanSlackM = 0.13,
        Twitches = [.. Enumerable.Range(0, 5).Select(i => new CrawlTwitch(i * Period, 0.2, 1.5))],
    });

    /// <summary>One that hardly moves.</summary>
    public static CrawlResult Stuck()
    {
        CrawlResult whole = Result();
        CrawlSummary s = whole.Summary with
        {
            TimeToOpeningS = null,
            TwitchesToOpening = null,
            WayM = 0.05,
            WayPerTwitchM = 0.01,
            StrokeShare = 0.07,
            SpeedMS = 0.02,
            LostTwitches = 5,
            OffShare = 0.0,
            HopM = 0.0,
            PlantsPeakN = 0.0,
            Twitches = [.. whole.Summary.Twitches.Select(t => t with { WayM = 0.01 })],
        };
        return Of(0.01, s) with { Statics = Statics with { LeastStrokeM = double.PositiveInfinity, TipPullN = Statics.PullN } };
    }

    /// <summary>One whose time is over too early.</summary>
    public static CrawlResult Late()
    {
        CrawlResult whole = Result();
        return whole with { Summary = whole.Summary with { TimeToOpeningS = null, TwitchesToOpening = null, WayM = 1.0 } };
    }

    private static CrawlResult Of(double stepM, CrawlSummary summary)
    {
        double[] time = [.. Enumerable.Range(0, 261).Select(i => Row * i)];
        double[] into = [.. time.Select(t => t % Period)];
        Channel Of(string name, Func<int, double> value) => new(name, "", "", ValueList.Own(time.Select((_, i) => value(i)).ToArray()));
        Series series = new([
            Of("time_s", i => time[i]), Of("way_m", i => stepM * (Math.Floor((time[i] / Period) + 1e-9) + Math.Min(1.0, into[i] / 0.2))),
            Of("nose_tension_N", i => into[i] < 0.1 ? 1.5 * Math.Sin(Math.PI * into[i] / 0.1) : 0.0), Of("tip_tension_N", i => into[i] < 0.14 ? 1.7 * Math.Sin(Math.PI * into[i] / 0.14) : 0.0)]);
        Setup setup = MadeUpRetrieve.Result().Setup with { Title = "Made up", Cover = CoverSpec.Of(CoverKind.Mat) };
        return new(setup, Task, series, Statics, summary, new SolverCounters(1, 0, 1, 0, 0.1), null);
    }
}
