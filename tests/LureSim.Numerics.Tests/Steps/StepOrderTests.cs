using LureSim.Numerics.Steps;

namespace LureSim.Numerics.Tests.Steps;

/// <summary>
/// Orders of the step schemes on m y'' = -k(t) y - c y' + f(t) with k(t) = 2 + cos t, made so that y = sin t: time stands in the
/// stiffness and in the force, so a scheme that takes either at the wrong time shows it. All are solved through their gains alone.
/// </summary>
public sealed class StepOrderTests
{
    private const double End = 10.0, MassKg = 0.7, Damping = 0.3;
    private static readonly int[] Steps = [1000, 2000, 4000, 8000];

    private delegate (double Place, double Rate) Scheme(int steps);

    // 0.1: the next term of the error series is below 0.02 at these steps.
    private const double Tolerance = 0.1;

    [Fact]
    public void Backward_euler_has_order_one() => Demand(1.0, n => BackwardDifferences(n, alwaysFirst: true));

    [Fact]
    public void Bdf2_with_its_first_step_has_order_two() => Demand(2.0, n => BackwardDifferences(n, alwaysFirst: false));

    [Fact]
    public void The_midpoint_has_order_two() => Demand(2.0, n => ByMidpoint(n, step => step.Gains));

    [Fact]
    public void The_late_dashpot_brings_the_midpoint_down_to_order_one() => Demand(1.0, n => ByMidpoint(n, step => step.LateDamping));

    [Fact]
    public void A_force_taken_at_the_wrong_time_is_seen() =>
        Assert.InRange(Math.Log2(Error(2000, Late) / Error(4000, Late)), 0.9, 1.1);

    private static (double Place, double Rate) Late(int n) => ByMidpoint(n, step => step.Gains, step => step.Dt);

    private static void Demand(double order, Scheme scheme)
    {
        for (int i = 1; i < Steps.Length; i++)
        {
            Assert.Equal(order, Math.Log2(Error(Steps[i - 1], scheme) / Error(Steps[i], scheme)), Tolerance);
        }
    }

    private static double Error(int steps, Scheme scheme)
    {
        (double place, double rate) = scheme(steps);
        return Math.Abs(place - Math.Sin(End)) + Math.Abs(rate - Math.Cos(End));
    }

    private static (double Place, double Rate) BackwardDifferences(int n, bool alwaysFirst)
    {
        double dt = End / n, place = 0.0, rate = 1.0, placeBefore = 0.0, rateBefore = 0.0;
        for (int i = 0; i < n; i++)
        {
            Bdf2 step = i == 0 || alwaysFirst ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            double pastPlace = step.History(place, placeBefore), pastRate = step.History(rate, rateBefore);
            double a = Acceleration(step.Gains, (i + 1) * dt, pastPlace + (step.Q * pastRate), pastRate);
            (placeBefore, rateBefore) = (place, rate);
            rate = pastRate + (step.Gains.Rate * a);
            place = pastPlace + (step.Q * rate);
        }

        return (place, rate);
    }

    private static (double Place, double Rate) ByMidpoint(int n, Func<Midpoint, StepGains> gains, Func<Midpoint, double>? at = null)
    {
        var step = new Midpoint(End / n);
        double place = 0.0, rate = 1.0;
        for (int i = 0; i < n; i++)
        {
            double a = Acceleration(gains(step), (i * step.Dt) + (at?.Invoke(step) ?? step.Half), step.PlaceOf(place, rate, 0.0), rate);
            place += step.Way(rate, a);
            rate += step.Dt * a;
        }

        return (place, rate);
    }

    // a of m a = -k (free place + gx a) - c (free rate + gv a) + f.
    private static double Acceleration(StepGains gains, double t, double freePlace, double freeRate)
    {
        double k = 2.0 + Math.Cos(t);
        double force = ((k - MassKg) * Math.Sin(t)) + (Damping * Math.Cos(t));
        return (force - (k * freePlace) - (Damping * freeRate)) / (MassKg + gains.Mass(k, Damping));
    }
}
