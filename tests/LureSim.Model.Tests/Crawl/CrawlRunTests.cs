using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Crawl;
using LureSim.Model.Lines;

namespace LureSim.Model.Tests.Crawl;

/// <summary>Crawls: what starts them, what stops them, and their books.</summary>
public sealed class CrawlRunTests
{
    private static readonly CrawlTask Task = CrawlCases.Task;

    private static CrawlResult Run(CrawlTask task, CoverSpec? cover = null) => CrawlRun.Run(CrawlCases.Setup(cover), task).Demand();

    [Theory]
    [InlineData(CoverKind.Open, "open")]
    [InlineData(CoverKind.Sparse, "sparse")]
    public void Without_a_mat_there_is_nothing_to_crawl_over(CoverKind kind, string word)
    {
        ArgumentException fault = Assert.ThrowsAny<ArgumentException>(() => CrawlRun.Run(CrawlCases.Setup(CoverSpec.Of(kind)), Task));
        Assert.Contains("cover.kind is " + word, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_ends_at_the_opening_and_counts_the_way_there()
    {
        CrawlResult r = Run(Task);
        Assert.Null(r.Failure);
        Assert.InRange(r.Summary.WayM, Task.ToOpeningM, Task.ToOpeningM + 0.01);
        Assert.Equal(r.Summary.TimeToOpeningS!.Value, r.Series["time_s"][^1]);
        Assert.Equal(r.Summary.WayM, r.Series["way_m"][^1]);
        Assert.Equal((int)Math.Ceiling(r.Summary.TimeToOpeningS.Value * Task.CadencePerS), r.Summary.TwitchesToOpening);

        // Whole twitches, and less than one more.
        Assert.InRange(r.Summary.TwitchesToOpening!.Value - r.Summary.Twitches.Count, 0, 1);
        Assert.InRange(r.Summary.Twitches.Sum(t => t.WayM), 0.8 * r.Summary.WayM, r.Summary.WayM);
    }

    [Fact]
    public void Its_time_over_it_says_that_it_did_not_come_there()
    {
        CrawlResult r = Run(Task with { DurationS = 2.0 });
        Assert.Null(r.Summary.TimeToOpeningS);
        Assert.Null(r.Summary.TwitchesToOpening);
        Assert.Equal(2.0, r.Series["time_s"][^1], 1e-9);
    }

    // Second order in smooth parts; landing and stopping are kinks, so no more than the size is asked.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void The_energy_account_closes_and_more_so_with_a_smaller_step(double hold)
    {
        double Open(double step) => Run(Task with { DurationS = 4.0, StrokeM = 0.2, Solver = new(StepS: step) }, CrawlCases.Mat with { DragNM = hold }).Counters.EnergyOpenShare;
        Assert.InRange(Open(5e-4), 0.0, 0.004);
        Assert.InRange(Open(1.25e-4), 0.0, 0.001);
    }

    [Fact]
    public void Steps_and_segments_leave_its_speed_where_it_is()
    {
        // Three dozen twitches, no two alike: their mean is known to a tenth (docs/crawl.md), whatever the step.
        double Speed(double step, int nodes) => Run(Task with { DistanceM = 25.0, ToOpeningM = 10.0, Solver = new(nodes, step) }).Summary.SpeedMS;
        double usual = Speed(5e-4, 40);
        Assert.Equal(usual, Speed(1.25e-4, 40), 0.15 * usual);
        Assert.Equal(usual, Speed(5e-4, 30), 0.15 * usual);
    }

    [Fact]
    public void Plants_under_the_line_take_of_every_pull_and_in_the_end_all_of_it()
    {
        CrawlSummary bare = Run(Task, CrawlCases.Mat with { LineOverM = 0.0 }).Summary, some = Run(Task).Summary, stuck = Run(Task with { DurationS = 20.0 }, CrawlCases.Mat with { DragNM = 1.0 }).Summary;
        Assert.True(some.PullShare < 0.8 * bare.PullShare);
        Assert.True(stuck.WayPerTwitchM < 0.1 * some.WayPerTwitchM);
        Assert.InRange(stuck.LostTwitches, 0.8 * stuck.Twitches.Count, stuck.Twitches.Count);
        Assert.Equal(0.0, bare.PlantsPeakN);
        Assert.True(stuck.PlantsPeakN > some.PlantsPeakN);
    }

    [Theory]
    [InlineData(0.6, false)]
    [InlineData(1.6, true)]
    public void Drawn_slowly_it_moves_when_the_stroke_has_used_up_stretch_and_bend(double share, bool moves)
    {
        // One slow pull from a tight line, no reel; all of the line over plants up to the tip lies.
        Setup setup = CrawlCases.Setup(CrawlCases.Mat with { HeightM = 1.0, LineOverM = 12.0 });
        setup = setup with { Angler = setup.Angler with { PullTimeS = 1.0, ReturnTimeS = 1.0 } };
        CrawlTask slow = new(8.0, 1.0, 0.4, 0.2, 1.0) { TakeUp = new(LureSim.Model.Reels.TakeUpMode.Steady, 0.0, 0.0) };
        double stroke = share * CrawlStatics.Of(setup, slow).LeastStrokeM;
        CrawlResult r = CrawlRun.Run(setup, slow with { StrokeM = stroke }).Demand();
        Assert.Equal(moves, r.Summary.WayM > 0.1 * stroke);
    }

    [Fact]
    public void A_hard_twitch_from_above_lifts_it_off_the_plants()
    {
        CrawlSummary hard = Run(Task with { DistanceM = 4.0, ToOpeningM = 1.0, StrokeM = 0.25 }).Summary, soft = Run(Task with { DistanceM = 12.0, StrokeM = 0.1, DurationS = 5.0 }).Summary;
        Assert.True(hard.OffShare > 0.02 && hard.HopM > 0.002);
        Assert.Equal(0.0, soft.OffShare);
        Assert.Equal(0.0, soft.HopM);
    }

    [Fact]
    public void Plants_carry_a_line_that_would_sink()
    {
        LineSpec nylon = new(LineMaterial.Nylon, 0.40e-3, 1.43e-4, 1140.0, 214.0, 0.010, 0.0, SurfaceFilm.Wetted, 90.0);
        double Lowest(double over) => CrawlRun.Run(CrawlCases.Setup(CrawlCases.Mat with { LineOverM = over, DragNM = 0.0 }) with { Line = nylon }, Task with { DurationS = 5.0 }).Demand().Series["lowest_m"].Min();
        Assert.True(Lowest(12.0) > -0.005);
        Assert.True(Lowest(0.0) < -0.02);
    }

    [Fact]
    public void The_opening_ahead_takes_plants_from_under_the_line()
    {
        CoverSpec mat = CrawlCases.Mat with { DragNM = 0.3 };
        CrawlTask task = Task with { ToOpeningM = 1.0 };
        double closed = Run(task, mat).Summary.PlantsPeakN, open = Run(task, mat with { OpeningM = 4.0 }).Summary.PlantsPeakN;
        Assert.True(open < 0.6 * closed, $"{open} of {closed} N");
    }

    [Fact]
    public void Equal_crawls_give_the_same_bits()
    {
        CrawlTask task = Task with { DurationS = 2.0 };
        Assert.Equal(Run(task).Series["way_m"], Run(task).Series["way_m"]);
    }

    [Fact]
    public void Stopped_it_ends()
    {
        using var stop = new CancellationTokenSource();
        void Progress(double share) => stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CrawlRun.Run(CrawlCases.Setup(), Task, new(Progress, stop.Token)));
    }

    [Fact]
    public void An_open_energy_account_is_a_failure_with_what_there_was()
    {
        // The longest step, six twitches of 1 m in a second, line in plants that hold 50 N/m.
        CoverSpec mat = CrawlCases.Mat with { DragNM = 50.0, StiffnessNM = 5000.0, LureFriction = 2.0, DampingRatio = 2.0 };
        Outcome<CrawlResult> outcome = CrawlRun.Run(CrawlCases.Setup(mat), Task with { StrokeM = 1.0, CadencePerS = 6.0, Solver = new(400, 1e-3) });
        Assert.False(outcome.IsWhole);
        Assert.Contains("energy account", outcome.Failure.Reason, StringComparison.Ordinal);
        Assert.True(outcome.Result!.Series.Count > 1);
    }
}
