using LureSim.Numerics.Steps;

namespace LureSim.Numerics.Tests.Steps;

public sealed class Bdf2Tests
{
    // y(n+1) = y(n) + dt y'(n+1), and nothing of what lies before.
    [Fact]
    public void The_first_step_knows_no_history()
    {
        Bdf2 first = Bdf2.BackwardEuler(0.1);
        Assert.Equal((0.1, 1.0, 0.0, 0.1, 0.0), (first.Q, first.HistoryNow, first.HistoryBefore, first.Dt, first.Ratio));
        Assert.Equal(2.0, first.Extrapolate(2.0, 1.0));
        Assert.Equal(2.0, first.History(2.0, 1.0));
    }

    // Hairer, Norsett, Wanner, sec. III.5: 4/3, -1/3 and 2/3 at constant step.
    [Fact]
    public void At_constant_step_the_weights_are_the_printed_ones()
    {
        Bdf2 step = Bdf2.Step(0.1, 0.1);
        Assert.Equal(4.0 / 3.0, step.HistoryNow, 1e-15);
        Assert.Equal(-1.0 / 3.0, step.HistoryBefore, 1e-15);
        Assert.Equal(0.2 / 3.0, step.Q, 1e-15);
        Assert.Equal(3.0, step.Extrapolate(2.0, 1.0));
    }

    // Second order: a parabola y = 3 + 2 t - 5 t^2 is met exactly at any ratio of steps; its line is extrapolated exactly.
    [Theory]
    [InlineData(0.1, 0.05)]
    [InlineData(0.1, 0.1)]
    [InlineData(0.1, 0.3)]
    public void A_parabola_is_met_exactly_at_any_ratio_of_steps(double dt, double before)
    {
        Bdf2 step = Bdf2.Step(dt, before);
        static double Y(double t) => 3.0 + (2.0 * t) - (5.0 * t * t);
        Assert.Equal(Y(dt), step.History(Y(0.0), Y(-before)) + (step.Q * (2.0 - (10.0 * dt))), 1e-14);
        Assert.Equal(3.0 + (2.0 * dt), step.Extrapolate(3.0, 3.0 - (2.0 * before)), 1e-14);
    }
}
