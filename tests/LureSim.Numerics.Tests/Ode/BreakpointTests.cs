using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class BreakpointTests
{
    private const double Switch = 0.37;

    // y' = y before the switch, -3 y from it on.
    private static readonly FunctionSystem Switched = new(1, (t, y, f) => f[0] = t < Switch ? y[0] : -3.0 * y[0]);

    private static readonly double Exact = Math.Exp(Switch - (3.0 * (1.0 - Switch)));

    [Fact]
    public void Order_survives_a_switch_that_is_named()
    {
        double[] errors = [.. new[] { 100, 200, 400, 800 }.Select(n => FixedError(n, [Switch]))];
        Assert.All(Problems.Orders(errors), p => Assert.InRange(p, 3.9, 4.1));
    }

    [Fact]
    public void Order_is_lost_without_the_breakpoint()
    {
        double[] errors = [.. new[] { 20, 160 }.Select(n => FixedError(n, []))];
        Assert.True(errors[1] > errors[0] / 64.0);
    }

    [Fact]
    public void No_step_straddles_a_breakpoint()
    {
        var seen = new List<double>();
        var spy = new FunctionSystem(1, (t, _, f) =>
        {
            seen.Add(t);
            f[0] = 1.0;
        });
        DormandPrince54.Solve(
            new OdeProblem(spy, 0, 3, [0.0]) { Breakpoints = [2.0, 1.0, 1.0, 7.0] }, new AdaptiveSteps(1e-3, 1e-3));
        int first = seen.FindIndex(t => t >= 1.0), second = seen.FindIndex(t => t >= 2.0);
        Assert.Equal(1.0, seen[first]);
        Assert.Equal(2.0, seen[second]);
        Assert.All(seen.Take(first), t => Assert.True(t < 1.0));
        Assert.All(seen.Skip(first), t => Assert.True(t >= 1.0));
        Assert.All(seen.Skip(second), t => Assert.True(t >= 2.0));
    }

    [Fact]
    public void Named_switches_save_rejections()
    {
        var rule = new AdaptiveSteps(1e-8, 1e-8);
        OdeSolution named = DormandPrince54.Solve(new OdeProblem(Switched, 0, 1, [1.0]) { Breakpoints = [Switch] }, rule);
        OdeSolution blind = DormandPrince54.Solve(new OdeProblem(Switched, 0, 1, [1.0]), rule);
        Assert.Equal(0, named.Counters.Rejected);
        Assert.True(blind.Counters.Rejected >= 3);
        Assert.Equal(Exact, named.State[0], 1e-8);
    }

    [Fact]
    public void Breakpoint_at_the_end_and_saving_on_breakpoints()
    {
        var problem = new OdeProblem(Switched, 0, Switch, [1.0]) { Breakpoints = [Switch], SaveAt = [0.0, 0.2, Switch] };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-10, 1e-10));
        Assert.Equal(Switch, s.Time);
        Assert.Equal([0.0, 0.2, Switch], s.SavedTimes);
        Assert.Equal(s.State[0], s.SavedStates[2][0]);
        Assert.Equal(Math.Exp(Switch), s.State[0], 1e-9);
    }

    private static double FixedError(int n, double[] breakpoints)
    {
        var problem = new OdeProblem(Switched, 0, 1, [1.0]) { Breakpoints = breakpoints };
        return Math.Abs(ClassicalRk4.Solve(problem, new FixedSteps(Switch / Math.Round(Switch * n))).State[0] - Exact);
    }
}
