using LureSim.Model.Cast;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Cast;

namespace LureSim.Model.Tests.Foundation;

/// <summary>One way to stop and one way to fail, the same for both activities.</summary>
public sealed class StopTests
{
    [Fact]
    public void A_run_that_is_stopped_before_it_starts_does_nothing()
    {
        CastCase spec = CastCases.Default();
        var stopped = new RunContext(null, new CancellationToken(true));
        Assert.ThrowsAny<OperationCanceledException>(() => RetrieveRun.Run(spec.Setup, new RetrieveTask(), stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => CastRunner.Run(spec.Setup, spec.Task, stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => CastMatch.Effort(spec.Setup, spec.Task, 30.0, context: stopped));
    }

    // A stop at the first word of progress leaves the rest undone.
    [Fact]
    public void A_retrieve_stops_within_the_step_after_its_progress()
    {
        using var stop = new CancellationTokenSource();
        int told = 0;
        void Progress(double share)
        {
            told++;
            stop.Cancel();
        }

        Assert.ThrowsAny<OperationCanceledException>(() => RetrieveRun.Run(CastCases.Default().Setup, new RetrieveTask(), new(Progress, stop.Token)));
        Assert.Equal(1, told);
    }

    // The finest steps make a cast of many seconds; no part of it goes on when it is stopped a little later.
    [Fact]
    public async Task A_cast_stops_while_it_seeks_its_release()
    {
        using var stop = new CancellationTokenSource();
        CastCase spec = CastCases.Default().With(new CastSolverSpec(1e-5, 1e-5));
        Task<Outcome<CastResult>> run = Task.Run(() => CastRunner.Run(spec.Setup, spec.Task, new(null, stop.Token)));
        await Task.Delay(300);
        Assert.False(run.IsCompleted);
        stop.Cancel();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => run);
    }

    [Fact]
    public void A_retrieve_that_reaches_the_rod_fails_with_what_it_has()
    {
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(
            CastCases.Default().Setup, new RetrieveTask(DistanceM: 3.0, StrokeM: 0.0, DurationS: 20.0) { TakeUp = new(SpeedMS: 1.0) });
        Assert.False(outcome.IsWhole);
        Assert.Contains("reached the rod", outcome.Failure.Reason, StringComparison.Ordinal);
        Assert.Equal(outcome.Failure.LastGoodTimeS, outcome.Result!.Series["time_s"][^1]);
        Assert.Same(outcome.Result, outcome.DemandAny());
        Assert.Throws<ModelException>(outcome.Demand);
        Assert.Throws<ModelException>(new Outcome<string>(null, new Failure("nothing", 0.0)).DemandAny);
    }
}
