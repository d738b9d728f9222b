using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

/// <summary>The study on the real retrieve, short.</summary>
public sealed class RealCadenceTests
{
    private static readonly CadencePlan Short = new(1.5, 3.0, 3, 2, 0.4, Run: new StationaryPlan(3.0, 6));

    [Fact]
    public void Any_number_of_threads_gives_the_same_bits()
    {
        CadenceResult one = Run(1), four = Run(4);
        Assert.Equal(one.Points.Select(p => p.PerS), four.Points.Select(p => p.PerS));
        foreach ((RhythmPoint a, RhythmPoint b) in one.Points.Zip(four.Points))
        {
            Assert.Equal(a.Outcomes, b.Outcomes);
        }

        Assert.Equal(one.Best, four.Best);

        static CadenceResult Run(int threads) =>
            CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(), Short with { Threads = threads }, new(3, 2, 5)).Demand();
    }

    [Fact]
    public void A_stationary_run_to_its_end_counts_at_least_the_twitches_asked_for_after_the_whole_warm_up()
    {
        foreach (double f in new[] { 0.6, 0.97, 1.0, 2.0, 4.0 })
        {
            var plan = new StationaryPlan(3.0, 7, ToTheEnd: true);
            RetrieveResult result = RetrieveRun.Run(MadeUp.Setup(), StationaryRun.Make(new RetrieveTask(), f, new(0.5, 0.1), plan)).Demand();
            Assert.True(result.Summary.TwitchesCounted >= 7, $"{f} /s: {result.Summary.TwitchesCounted}");
            Assert.True(result.Twitches[result.WarmUpTwitches].StartS >= 3.0 - 1e-9);
            Assert.Equal(15.0 + 0.14, result.Series["line_out_m"][^1], 12);
        }
    }

    // A line that damps nothing rings at each snap; at 1 ms the account of this retrieve stays open by more than 1 % (with the planar hull;
    // the other yields to the same snaps otherwise, and stays under it).
    [Fact]
    public void A_rhythm_whose_account_stays_open_is_run_with_a_smaller_step()
    {
        Setup setup = MadeUp.Setup() with { Line = MadeUp.Setup().Line with { DampingTimeS = 0.0 } };
        RetrieveTask task = StationaryRun.Make(new RetrieveTask(StrokeM: 0.4) { Hull = HullFreedom.Planar }, 1.5, new(0.3, 0.1), new StationaryPlan(3.0, 6));
        Outcome<RetrieveResult> coarse = RetrieveRun.Run(setup, task);
        Assert.Contains("the energy account stays open", coarse.Failure?.Reason, StringComparison.Ordinal);
        StationaryOutcome told = StationaryOutcome.Of(setup, task, default);
        Assert.Null(told.Failure);
        Assert.NotNull(told.Pattern);
    }
}
