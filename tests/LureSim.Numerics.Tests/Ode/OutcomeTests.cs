using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class OutcomeTests
{
    private static readonly AdaptiveSteps Rule = new(1e-8, 1e-8);

    // y' = y^2 from 1 ends at t = 1.
    private static readonly FunctionSystem BlowUp = new(1, (_, y, f) => f[0] = y[0] * y[0]);

    private static readonly FunctionSystem NanAfterOne = new(1, (t, _, f) => f[0] = t > 1.0 ? double.NaN : 1.0);

    [Fact]
    public void Singular_solution_ends_with_step_too_small_near_the_singularity()
    {
        OdeSolution s = DormandPrince54.Solve(new OdeProblem(BlowUp, 0, 2, [1.0]), Rule);
        Assert.Equal(OdeStatus.StepTooSmall, s.Status);
        Assert.False(s.Completed);
        Assert.Equal(1.0, s.Time, 1e-6);
        Assert.True(double.IsFinite(s.State[0]));
    }

    [Fact]
    public void Rates_that_become_nan_end_with_not_finite_at_the_last_good_time()
    {
        OdeSolution s = DormandPrince54.Solve(new OdeProblem(NanAfterOne, 0, 2, [0.0]) { SaveAt = [0.5, 1.5] }, Rule);
        Assert.Equal(OdeStatus.NotFinite, s.Status);
        Assert.Equal(1.0, s.Time, 1e-12);
        Assert.Equal(s.Time, s.State[0], 1e-12);
        Assert.Equal([0.5], s.SavedTimes);
    }

    [Fact]
    public void Fixed_steps_stop_at_the_last_finite_state()
    {
        OdeSolution s = ClassicalRk4.Solve(new OdeProblem(NanAfterOne, 0, 2, [0.0]), new FixedSteps(0.25));
        Assert.Equal(OdeStatus.NotFinite, s.Status);
        Assert.Equal(1.0, s.Time);
        Assert.Equal(1.0, s.State[0], 1e-14);
    }

    [Fact]
    public void Overflow_is_not_finite()
    {
        OdeSolution s = ClassicalRk4.Solve(new OdeProblem(BlowUp, 0, 20, [1.0]), new FixedSteps(0.5));
        Assert.Equal(OdeStatus.NotFinite, s.Status);
        Assert.True(double.IsFinite(s.State[0]));
    }

    [Fact]
    public void Event_function_or_map_that_is_nan_is_not_finite()
    {
        var g = new OdeEvent((t, _) => t > 0.5 ? double.NaN : 1.0);
        var map = new OdeEvent((t, _) => t - 0.5) { Map = (_, y) => y[0] = double.NaN };
        foreach (OdeEvent e in new[] { g, map })
        {
            OdeSolution s = DormandPrince54.Solve(new OdeProblem(Problems.Fall, 0, 1, [1.0, 0.0]) { Events = [e] }, Rule);
            Assert.Equal(OdeStatus.NotFinite, s.Status);
            Assert.True(s.Time <= 0.5 && s.State.All(double.IsFinite));
        }
    }

    [Fact]
    public void Too_many_steps_keeps_what_was_reached()
    {
        OdeSolution s = DormandPrince54.Solve(Problems.DrivenTo(100.0), new AdaptiveSteps(1e-10, 1e-10) { MaxSteps = 20 });
        Assert.Equal(OdeStatus.TooManySteps, s.Status);
        Assert.Equal(20, s.Counters.Accepted + s.Counters.Rejected);
        Assert.InRange(s.Time, 0.01, 99.0);
        Assert.Equal(0.0, Problems.DrivenError(s.Time, s.State), 1e-8);
    }

    [Fact]
    public void Cancelling_stops_between_steps()
    {
        using var source = new CancellationTokenSource();
        var problem = new OdeProblem(Problems.Fall, 0, 10, [1.0, 0.0])
        {
            Events = [new OdeEvent((t, _) => t - 0.5) { Map = (_, _) => source.Cancel() }],
        };
        OdeSolution s = DormandPrince54.Solve(problem, Rule, source.Token);
        Assert.Equal(OdeStatus.Cancelled, s.Status);
        Assert.Equal(0.5, s.Time, 1e-12);
    }

    [Fact]
    public void Same_run_gives_the_same_bits() => Assert.Equal(
        DormandPrince54.Solve(Problems.DrivenTo(10), Rule).State, DormandPrince54.Solve(Problems.DrivenTo(10), Rule).State);

    [Fact]
    public void Every_status_has_its_sentence()
    {
        string[] sentences = [.. Enum.GetValues<OdeStatus>().Select(s => s.Sentence())];
        Assert.All(sentences, s => Assert.EndsWith(".", s, StringComparison.Ordinal));
        Assert.Equal(sentences.Length, sentences.Distinct().Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => ((OdeStatus)99).Sentence());
    }
}
