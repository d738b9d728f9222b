using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Margin;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Design;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Design;

/// <summary>The search for a walk on made-up answers: it finds a width, tells dead ends, and stops when asked to.</summary>
public sealed class WalkStudyTests
{
    private static readonly ScenarioResult Scenario = ScenarioSource.FromText("""
        [rod]
        length = "7 ft"
        power = "medium"
        [line]
        material = "braid"
        label = "30 lb"
        [lure]
        shape = "cigar"
        length = "90 mm"
        diameter = "17.5 mm"
        mass = "10 g"
        ballast = [{ mass = "1.5 g", x = "-9 mm", z = "-5 mm" }]
        hooks = [{ size = "no. 6", x = "20 mm", z = "-8 mm" }, { size = "no. 6", x = "-43 mm", z = "0 mm" }]
        """).Resolve();

    private static readonly WalkPlan Plan = new(60, Draws: 0, Threads: 1);

    // A glide that falls with the distance of weight and tie from a place of its own, and no walk with the weight ahead of the middle.
    private static StationaryOutcome Made(Setup setup, RetrieveTask task)
    {
        BallastSpec w = BallastSlot.Of(setup.Lure).Weight;
        double x = (w.XM + 0.02) / 0.02, z = (setup.Lure.TieZM + 0.003) / 0.005;
        return w.XM > 0.0 ? MadeUp.Outcome(WalkPattern.Tracking, 0.0) : MadeUp.Outcome(WalkPattern.Alternating, 0.25 * Math.Exp(-(x * x) - (z * z)));
    }

    [Theory]
    [InlineData(0.12)]
    [InlineData(0.22)]
    public void It_finds_a_wanted_width_and_tells_dead_ends(double glide)
    {
        WalkAnswer answer = Run(new(glide, 1.5), Plan);
        Assert.True(answer.IsMet);
        WalkCandidate best = answer.Candidates[0];
        Assert.InRange(best.Check!.GlideM, 0.95 * glide, 1.05 * glide);
        Assert.Equal(Made(Scenario.Setup! with { Lure = best.Point.Lure }, Scenario.Retrieve!).Summary!.GlideWidthM, best.Check.GlideM);
        Assert.Contains(answer.DeadEnds, d => d is { Word: FloatWord.Floats, Pattern: WalkPattern.Tracking, Count: > 0 });
        Assert.InRange(answer.Tried, 32, 60);
        Assert.All(answer.Candidates, c => Assert.Equal(Scenario.Setup!.Lure.MassKg, c.Point.Lure.MassKg, 1e-12));
    }

    [Fact]
    public void A_width_beyond_every_lure_is_not_met()
    {
        WalkAnswer answer = Run(new(0.6, 1.5), Plan);
        Assert.False(answer.IsMet);
        Assert.NotEmpty(answer.Candidates);
        Assert.True(answer.Candidates[0].Check!.GlideM < 0.26);
    }

    [Fact]
    public void Where_nothing_walks_there_is_no_candidate_but_every_reason()
    {
        WalkAnswer answer = WalkStudy.Run(Scenario, new(0.1, 1.5), Plan, new MarginTask(), null, (_, _) => MadeUp.Outcome(WalkPattern.Diving, 0.0), null, default);
        Assert.Empty(answer.Candidates);
        Assert.False(answer.IsMet);
        Assert.Equal(answer.Tried, answer.DeadEnds.Sum(d => d.Count));
        Assert.Contains(answer.DeadEnds, d => d.Pattern == WalkPattern.Diving);
    }

    [Fact]
    public void Threads_leave_no_trace()
    {
        WalkAnswer one = Run(new(0.15, 1.5), Plan), two = Run(new(0.15, 1.5), Plan with { Threads = 2 });
        Assert.Equal(one.Candidates.Select(c => c.Move), two.Candidates.Select(c => c.Move));
        Assert.Equal(one.DeadEnds, two.DeadEnds);
    }

    [Fact]
    public void A_wish_to_stop_keeps_what_was_tried()
    {
        using var source = new CancellationTokenSource();
        int runs = 0;
        WalkAnswer answer = WalkStudy.Run(Scenario, new(0.15, 1.5), Plan, new MarginTask(), null, Counted, null, source.Token);
        Assert.True(answer.IsStopped);
        Assert.InRange(answer.Tried, 20, 45);
        Assert.NotEmpty(answer.Candidates);
        Assert.All(answer.Candidates, c => Assert.Null(c.Check));
        Assert.False(answer.IsMet);

        StationaryOutcome Counted(Setup setup, RetrieveTask task)
        {
            if (++runs == 30)
            {
                source.Cancel();
            }

            source.Token.ThrowIfCancellationRequested();
            return Made(setup, task);
        }
    }

    [Fact]
    public void Bands_come_from_the_draws_and_lie_about_the_glide()
    {
        int drawn = 0;
        WalkAnswer answer = WalkStudy.Run(Scenario, new(0.15, 1.5), Plan with { Draws = 5 }, new MarginTask(), Draw, Made, null, default);
        WalkCheck check = answer.Candidates[0].Check!;
        Assert.Equal(5, check.Draws);
        Assert.Equal(1.0, check.WalkShare);
        Assert.InRange(check.GlideM, check.LowM - 1e-12, check.HighM + 1e-12);
        Assert.True(drawn >= 5);

        ScenarioResult Draw(int i)
        {
            Interlocked.Increment(ref drawn);
            return Scenario;
        }
    }

    [Fact]
    public void A_miss_is_finite_and_grows_with_the_distance_from_the_wish()
    {
        var point = DesignPoint.Of(Scenario.Setup!.Lure, Model.Media.WaterModel.Evaluate(Scenario.Setup.Water));
        double Miss(StationaryOutcome outcome, double? trim = null) => WalkStudy.Miss(new(0.1, 1.5, trim), point, outcome);
        Assert.Equal(0.0, Miss(MadeUp.Outcome(WalkPattern.Alternating, 0.1)), 1e-12);
        Assert.Equal(1.0, Miss(MadeUp.Outcome(WalkPattern.Alternating, 0.11)), 1e-9);
        Assert.True(Miss(MadeUp.Outcome(WalkPattern.Tracking, 0.1)) >= 100.0);
        Assert.Equal(25.0, Miss(MadeUp.Outcome(WalkPattern.Alternating, 0.1), point.Trim!.Rest.TrimRad + (5.0 * Math.PI / 180.0)), 1e-6);
        Assert.True(double.IsFinite(Miss(StationaryOutcome.Failed("made up"))));
    }

    private static WalkAnswer Run(WalkWish wish, WalkPlan plan) => WalkStudy.Run(Scenario, wish, plan, new MarginTask(), null, Made, null, default);
}
