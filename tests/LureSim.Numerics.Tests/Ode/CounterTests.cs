using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class CounterTests
{
    [Fact]
    public void Classical_step_costs_four_evaluations()
    {
        OdeCounters c = ClassicalRk4.Solve(Problems.DrivenTo(1.0), new FixedSteps(0.01)).Counters;
        Assert.Equal(new OdeCounters(100, 0, 401, 0), c);
    }

    [Fact]
    public void Dormand_prince_step_costs_six_evaluations_and_two_for_the_start()
    {
        int calls = 0;
        var counted = new FunctionSystem(2, (t, y, f) =>
        {
            calls++;
            Problems.Driven.Evaluate(t, y, f);
        });
        OdeCounters c = DormandPrince54.Solve(new OdeProblem(counted, 0, 4, [1.0, 1.0]), new AdaptiveSteps(1e-8, 1e-8)).Counters;
        Assert.Equal((6 * (c.Accepted + c.Rejected)) + 2, c.Evaluations);
        Assert.Equal(calls, c.Evaluations);
    }

    // err ~ h^5 per step: a tolerance 1e5 times smaller takes 10 times the steps (the start and the end blur it a little).
    [Fact]
    public void Steps_grow_with_the_fifth_root_of_the_tolerance()
    {
        double coarse = DormandPrince54.Solve(Problems.DrivenTo(40), new AdaptiveSteps(1e-5, 1e-5)).Counters.Accepted;
        double fine = DormandPrince54.Solve(Problems.DrivenTo(40), new AdaptiveSteps(1e-10, 1e-10)).Counters.Accepted;
        Assert.InRange(fine / coarse, 8.0, 12.0);
    }

    [Fact]
    public void Smooth_problem_is_nearly_free_of_rejections()
    {
        OdeCounters c = DormandPrince54.Solve(
            new OdeProblem(Problems.Oscillator, 0, 100, [1.0, 0.0]), new AdaptiveSteps(1e-8, 1e-8)).Counters;
        Assert.True(c.Rejected <= 0.02 * c.Accepted, $"{c}");
    }

    // Stability, not accuracy, sets the step on y' = -1000 (y - cos t): h lambda about 3.3. PI control holds it there
    // instead of bouncing between growth and rejection.
    [Fact]
    public void Stiff_problem_is_held_at_the_stability_limit_with_few_rejections()
    {
        var stiff = new FunctionSystem(1, (t, y, f) => f[0] = -1000.0 * (y[0] - Math.Cos(t)));
        OdeCounters c = DormandPrince54.Solve(new OdeProblem(stiff, 0, 10, [1.0]), new AdaptiveSteps(1e-4, 1e-4)).Counters;
        Assert.InRange(c.Accepted, 10.0 * 1000.0 / 3.4, 10.0 * 1000.0 / 2.6);
        Assert.True(c.Rejected <= 0.05 * c.Accepted, $"{c}");
    }

    [Fact]
    public void Largest_step_is_kept()
    {
        OdeSolution s = DormandPrince54.Solve(Problems.DrivenTo(1.0), new AdaptiveSteps(0.1, 1.0) { LargestStep = 0.01 });
        Assert.InRange(s.Counters.Accepted, 100, 102);
    }
}
