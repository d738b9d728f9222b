using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class ArgumentTests
{
    [Theory]
    [InlineData(1.0, 1.0, 2)]
    [InlineData(2.0, 1.0, 2)]
    [InlineData(double.NaN, 1.0, 2)]
    [InlineData(0.0, double.PositiveInfinity, 2)]
    [InlineData(0.0, 1.0, 3)]
    public void Problem_refuses_bad_spans_and_states(double start, double end, int length) =>
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, start, end, new double[length]));

    [Fact]
    public void Problem_refuses_bad_lists()
    {
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, 0, 1, [double.NaN, 0.0]));
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, 0, 1, [0.0, 0.0]) { SaveAt = [0.5, 0.4] });
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, 0, 1, [0.0, 0.0]) { SaveAt = [1.5] });
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, 0, 1, [0.0, 0.0]) { Breakpoints = [double.NaN] });
        Assert.Throws<ArgumentException>(() => new OdeProblem(Problems.Fall, 0, 1, [0.0, 0.0]) { EventSamples = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new OdeEvent((_, _) => 1.0) { StopAt = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new FunctionSystem(0, (_, _, _) => { }));
    }

    [Theory]
    [InlineData(-1e-3, 1e-3)]
    [InlineData(1.0, 1e-3)]
    [InlineData(double.NaN, 1e-3)]
    [InlineData(1e-3, 0.0)]
    [InlineData(1e-3, double.NaN)]
    public void Tolerances_are_checked(double relative, double absolute) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new AdaptiveSteps(relative, absolute));

    [Fact]
    public void Steps_are_checked()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new FixedSteps(0.0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FixedSteps(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new AdaptiveSteps(1e-3, 1e-3) { LargestStep = 0.0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new AdaptiveSteps(1e-3, 1e-3) { MaxSteps = 0 });
        Assert.Throws<ArgumentException>(() => new ClassicalRk4(Problems.Fall).Step(0.0, 0.1, new double[3]));
        Assert.Throws<ArgumentException>(() => DormandPrince54.Solve(
            new OdeProblem(Problems.Fall, 0, 1, [0.0, 0.0]), new AdaptiveSteps(1e-3, [1.0, 1.0, 1.0])));
    }

    [Fact]
    public void Absolute_tolerance_per_component_weighs_components()
    {
        // The second component alone, at 1e6 times the size, would set the step if it were weighed like the first.
        var two = new FunctionSystem(2, (t, _, f) => (f[0], f[1]) = (Math.Cos(t), 1e6 * Math.Cos(t)));
        var problem = new OdeProblem(two, 0, 10, [0.0, 0.0]);
        int mixed = DormandPrince54.Solve(problem, new AdaptiveSteps(0.0, [1e-6, 1.0])).Counters.Accepted;
        int plain = DormandPrince54.Solve(problem, new AdaptiveSteps(0.0, 1e-6)).Counters.Accepted;
        Assert.True(plain > 5 * mixed);
    }
}
