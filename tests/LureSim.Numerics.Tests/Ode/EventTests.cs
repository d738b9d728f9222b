using LureSim.References.Ode;

namespace LureSim.Numerics.Tests.Ode;

public sealed class EventTests
{
    private static readonly FunctionSystem Clock = new(1, (_, _, f) => f[0] = 1.0);

    [Fact]
    public void Zeros_of_an_oscillator_are_found_with_direction()
    {
        OdeEvent[] events =
        [
            new((_, y) => y[0]),
            new((_, y) => y[0]) { Crossing = Crossing.Rising },
            new((_, y) => y[0]) { Crossing = Crossing.Falling },
        ];
        var problem = new OdeProblem(Problems.Oscillator, 0, 20, [1.0, 0.0]) { Events = events };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-10, 1e-10));
        AssertTimes(s, 0, [.. Enumerable.Range(0, 6).Select(k => (k + 0.5) * Math.PI)]);
        AssertTimes(s, 1, [.. Enumerable.Range(0, 3).Select(k => ((2 * k) + 1.5) * Math.PI)]);
        AssertTimes(s, 2, [.. Enumerable.Range(0, 3).Select(k => ((2 * k) + 0.5) * Math.PI)]);
        Assert.Equal(12, s.Counters.Events);
        Assert.True(s.Occurrences.Zip(s.Occurrences.Skip(1)).All(p => p.First.Time <= p.Second.Time));
    }

    [Fact]
    public void Several_crossings_inside_one_step_are_all_found_in_order()
    {
        OdeEvent[] events = [new((t, _) => Math.Sin(2.0 * Math.PI * t)), new((t, _) => t - 0.6)];
        var problem = new OdeProblem(Clock, 0.1, 2.9, [0.0]) { Events = events, EventSamples = 12 };
        OdeSolution s = ClassicalRk4.Solve(problem, new FixedSteps(10.0));
        Assert.Equal(1, s.Counters.Accepted);
        AssertTimes(s, 0, [0.5, 1.0, 1.5, 2.0, 2.5], 1e-14);
        AssertTimes(s, 1, [0.6], 1e-14);
        Assert.Equal([0, 1, 0, 0, 0, 0], s.Occurrences.Select(o => o.Event));
    }

    // Up and down through y = 1.249 within 0.028 of a flight that a single large step covers.
    [Fact]
    public void Double_crossing_inside_one_adaptive_step_is_found()
    {
        double half = Math.Sqrt(2.0 * 0.02 / 10.0);
        var problem = new OdeProblem(Problems.Fall, 0, 1.0, [0.0, 5.0])
        {
            Events = [new OdeEvent((_, y) => y[0] - 1.23)],
            EventSamples = 20,
        };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-3, 1e-3));
        AssertTimes(s, 0, [0.5 - half, 0.5 + half], 1e-13);
        Assert.Equal([true, false], s.Occurrences.Select(o => o.Rising));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void Zero_exactly_at_the_end_of_a_step_fires_once(int samples)
    {
        // Steps of 1/4 are exact in binary, so g is exactly 0 at the end of the second step.
        var problem = new OdeProblem(Clock, 0, 1, [0.0]) { Events = [new OdeEvent((t, _) => t - 0.5)], EventSamples = samples };
        OdeSolution s = ClassicalRk4.Solve(problem, new FixedSteps(0.25));
        EventOccurrence o = Assert.Single(s.Occurrences);
        Assert.Equal(0.5, o.Time);
    }

    [Fact]
    public void Zero_at_the_end_fires_and_zero_at_the_start_does_not()
    {
        OdeEvent[] events = [new((t, _) => t - 1.0) { StopAt = 1 }, new((t, _) => t)];
        OdeSolution s = ClassicalRk4.Solve(new OdeProblem(Clock, 0, 1, [0.0]) { Events = events }, new FixedSteps(0.25));
        Assert.Equal(OdeStatus.TerminalEvent, s.Status);
        Assert.Equal(0, Assert.Single(s.Occurrences).Event);
    }

    [Fact]
    public void Zero_at_a_breakpoint_fires_once_even_with_a_map()
    {
        int maps = 0;
        OdeEvent[] events = [new((t, _) => t - 0.3) { Map = (_, _) => maps++ }, new((t, _) => t - 0.3)];
        var problem = new OdeProblem(Clock, 0, 1, [0.0]) { Events = events, Breakpoints = [0.3] };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-6, 1e-6));
        Assert.Equal(1, maps);
        Assert.Equal([0.3, 0.3], s.Occurrences.Select(o => o.Time));
    }

    [Fact]
    public void Terminal_event_stops_at_its_time_with_its_state_and_later_events_are_dropped()
    {
        OdeEvent[] events = [new((_, y) => y[0]) { Crossing = Crossing.Falling, StopAt = 1 }, new((t, _) => t - 1.01)];
        var problem = new OdeProblem(Problems.Fall, 0, 3, [0.0, 5.0]) { Events = events, SaveAt = [0.5, 1.5] };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-6, 1e-6));
        Assert.Equal(OdeStatus.TerminalEvent, s.Status);
        Assert.True(s.Completed);
        Assert.Equal(1.0, s.Time, 1e-13);
        Assert.Equal(-5.0, s.State[1], 1e-12);
        Assert.Equal([0.5], s.SavedTimes);
        Assert.Single(s.Occurrences);
    }

    [Fact]
    public void Run_can_end_at_a_later_occurrence()
    {
        var problem = new OdeProblem(Problems.Oscillator, 0, 100, [1.0, 0.0]) { Events = [new OdeEvent((_, y) => y[0]) { StopAt = 3 }] };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-10, 1e-10));
        Assert.Equal(3, s.Occurrences.Count);
        Assert.Equal(2.5 * Math.PI, s.Time, 1e-8);
    }

    [Theory]
    [InlineData(Crossing.Either)]
    [InlineData(Crossing.Falling)]
    public void Bouncing_ball_fires_once_per_impact(Crossing crossing)
    {
        OdeSolution s = Bounce(crossing, new AdaptiveSteps(1e-9, 1e-9), 20);
        Assert.Equal(20, s.Occurrences.Count);
        Assert.All(s.Occurrences, o => Assert.Equal(-0.5 * o.Before[1], o.After[1], 1e-14));
        double first = Math.Sqrt(0.2);
        double last = first * (1.0 + (2.0 * Enumerable.Range(1, 19).Sum(k => Math.Pow(0.5, k))));
        Assert.Equal(last, s.Time, 1e-12);
    }

    [Fact]
    public void Saved_times_hold_across_maps()
    {
        double[] at = Problems.Even(0.0, 0.85, 50);
        OdeSolution s = Bounce(Crossing.Falling, new AdaptiveSteps(1e-9, 1e-9), 1000, at);
        double impact = Math.Sqrt(0.2), rise = 0.5 * Math.Sqrt(20.0);
        Assert.Equal(at, s.SavedTimes);
        for (int i = 0; i < at.Length; i++)
        {
            double tau = at[i] - impact;
            double height = tau < 0.0 ? 1.0 - (5.0 * at[i] * at[i]) : (rise * tau) - (5.0 * tau * tau);
            Assert.Equal(height, s.SavedStates[i][0], 1e-12);
        }
    }

    [Fact]
    public void Events_at_the_same_time_all_fire_and_maps_apply_in_order()
    {
        OdeEvent[] events =
        [
            new((t, _) => t - 0.5) { Map = (_, y) => y[0] += 1.0 },
            new((t, _) => t - 0.5) { Map = (_, y) => y[0] *= 10.0 },
        ];
        var problem = new OdeProblem(Clock, 0, 1, [0.0]) { Events = events };
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(1e-6, 1e-6));
        Assert.Equal(2, s.Occurrences.Count);
        Assert.Equal(15.5, s.State[0], 1e-12);
    }

    private static OdeSolution Bounce(Crossing crossing, StepRule rule, int stopAt, double[]? at = null)
    {
        var impact = new OdeEvent((_, y) => y[0]) { Crossing = crossing, StopAt = stopAt, Map = (_, y) => y[1] *= -0.5 };
        var problem = new OdeProblem(Problems.Fall, 0, at is null ? 2.0 : 0.85, [1.0, 0.0]) { Events = [impact], SaveAt = at ?? [] };
        return DormandPrince54.Solve(problem, rule);
    }

    private static void AssertTimes(OdeSolution s, int e, double[] expected, double tolerance = 1e-8)
    {
        double[] found = [.. s.Occurrences.Where(o => o.Event == e).Select(o => o.Time)];
        Assert.Equal(expected.Length, found.Length);
        for (int i = 0; i < found.Length; i++)
        {
            Assert.Equal(expected[i], found[i], tolerance);
        }
    }
}
