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
    public void A_stationary_run_counts_at_least_the_twitches_asked_for_after_the_whole_warm_up()
    {
        foreach (double f in new[] { 0.6, 0.97, 1.0, 2.0, 4.0 })
        {
            var plan = new StationaryPlan(3.0, 7);
            RetrieveResult result = RetrieveRun.Run(MadeUp.Setup(), StationaryRun.Make(new RetrieveTask(), f, new(0.5, 0.1), plan)).Demand();
            Assert.True(result.Summary.TwitchesCounted >= 7, $"{f} /s: {result.Summary.TwitchesCounted}");
            Assert.True(result.Twitches[result.WarmUpTwitches].StartS >= 3.0 - 1e-9);
            Assert.Equal(15.0 + 0.14, result.Series["line_out_m"][^1], 12);
        }
    }
}
