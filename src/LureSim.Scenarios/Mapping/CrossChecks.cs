using LureSim.Model.Crawl;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Model.Strike;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Mapping;

/// <summary>What no single key can know. Values that were refused are NaN here and fail no comparison.</summary>
internal static class CrossChecks
{
    private const double MostRows = 200_000;

    /// <summary>Runs all of them.</summary>
    public static void Run(MapContext c, RodSpec? rod, LeaderSpec? leader, LureSpec? lure, RetrieveTask retrieve, StrikeTask strike, CrawlTask crawl)
    {
        if (rod is not null)
        {
            TipAboveWater(c, rod);
            WithinReach(c, rod, retrieve);
        }

        if (leader is not null)
        {
            ShorterThanLine(c, leader.LengthM, retrieve.DistanceM, strike.DistanceM, crawl.DistanceM);
        }

        if (retrieve.TakeUp.SlackM >= retrieve.DistanceM)
        {
            c.Fault(RetrieveKeys.Slack, $"more slack than distance; less than {MapContext.Show(RetrieveKeys.Slack, retrieve.DistanceM)} is due");
        }

        if (lure is not null)
        {
            LureChecks.Run(c, lure);
        }

        Solver(c, retrieve);
    }

    // One fault, however many lines it is longer than.
    private static void ShorterThanLine(MapContext c, double leader, double retrieve, double strike, double crawl)
    {
        static Activities Short(double leader, double line, Activities activity) => leader >= line ? activity : Activities.None;
        Activities concerns = Short(leader, retrieve, Activities.Retrieve) | Short(leader, strike, Activities.Strike) | Short(leader, crawl, Activities.Crawl);
        if (concerns != Activities.None)
        {
            (KeySpec key, double distance) = concerns.HasFlag(Activities.Retrieve) ? (RetrieveKeys.Distance, retrieve)
                : concerns.HasFlag(Activities.Strike) ? (StrikeKeys.Distance, strike) : (CrawlKeys.Distance, crawl);
            c.Fault(LeaderKeys.Length, string.Concat(
                $"{MapContext.Show(LeaderKeys.Length, leader)} is longer than the line that is out; it must be shorter than ",
                $"{key.Path}, {MapContext.Show(key, distance)}"), concerns);
        }
    }

    private static void TipAboveWater(MapContext c, RodSpec rod)
    {
        double hand = c[AnglerKeys.HandHeight], elevation = c[AnglerKeys.RodElevation];
        double tip = hand + (rod.FreeLengthM * Math.Sin(elevation));
        if (tip <= 0.0)
        {
            double least = Math.Asin(Math.Max(-1.0, -hand / rod.FreeLengthM));
            c.Fault(AnglerKeys.RodElevation, string.Concat(
                $"the rod tip would be {MapContext.Show(AnglerKeys.HandHeight, -tip)} under water (hand {MapContext.Show(AnglerKeys.HandHeight, hand)} ",
                $"up, {MapContext.Show(AnglerKeys.HandHeight, rod.FreeLengthM)} of rod beyond it); with this rod and hand height more than ",
                $"{MapContext.Show(AnglerKeys.RodElevation, least)} is due"), Activities.Retrieve | Activities.Crawl);
        }
    }

    /// <summary>The straight distance cannot be less than the tip's height, nor than the sideways offset.</summary>
    private static void WithinReach(MapContext c, RodSpec rod, RetrieveTask retrieve)
    {
        double tip = c[AnglerKeys.HandHeight] + (rod.FreeLengthM * Math.Sin(c[AnglerKeys.RodElevation]));
        double least = Math.Sqrt((tip * tip) + (retrieve.StartSidewaysM * retrieve.StartSidewaysM));
        if (retrieve.DistanceM <= least)
        {
            c.Fault(RetrieveKeys.Distance, string.Concat(
                $"no lure on the water is that near a rod tip {MapContext.Show(AnglerKeys.HandHeight, tip)} up, ",
                $"{MapContext.Show(RetrieveKeys.StartSideways, Math.Abs(retrieve.StartSidewaysM))} to one side; more than ",
                $"{MapContext.Show(RetrieveKeys.Distance, least)} is due"));
        }
    }

    private static void Solver(MapContext c, RetrieveTask retrieve)
    {
        double output = c[SolverKeys.OutputStep];
        if (output < c[SolverKeys.Step])
        {
            c.Fault(SolverKeys.OutputStep, $"finer than solver.step; at least {MapContext.Show(SolverKeys.Step, c[SolverKeys.Step])}");
        }

        if (retrieve.DurationS / output > MostRows)
        {
            c.Fault(SolverKeys.OutputStep, string.Concat(
                $"more than {MostRows:F0} rows in {MapContext.Show(RetrieveKeys.Duration, retrieve.DurationS)}; ",
                $"at least {MapContext.Show(SolverKeys.OutputStep, retrieve.DurationS / MostRows)} for this duration"));
        }
    }
}
