using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Lures;

/// <summary>A lure on plants against what a block on a rough table does.</summary>
public sealed class SlidingLureTests
{
    private const double Mass = 0.018, Mu = 0.4, Step = 2.5e-4, Weight = Mass * Physics.GravityMS2;
    private static readonly SlidingContact Plants = new(Mass, Mu, 60.0, 0.5, 0.01);

    // The lure on a spring without mass, as a line would hold it; the tension is that of the end of the step.
    private sealed class OnSpring(SlidingLure lure, double stiffness, double length, Func<double, Vec3> hand, double dt)
    {
        private int _steps;

        public double Tension { get; private set; }

        public double TimeS => _steps * dt;

        public double HeatJ { get; private set; }

        public void Next()
        {
            Bdf2 step = _steps == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt);
            lure.Guess(step);
            for (int pass = 0; pass < 2; pass++)
            {
                LineEnd end = lure.Begin(step, Vec3.Zero, Vec3.Zero);
                Vec3 toHand = hand(TimeS + dt) - end.FreePosition, d = toHand.Unit();
                double yield = Vec3.Dot(d, end.Yield(d));
                Tension = Math.Max(0.0, stiffness * (toHand.Length - length) / (1.0 + (stiffness * step.Q * step.Q * yield)));
                lure.Finish(step, Tension * d);
            }

            HeatJ -= dt * lure.PowerW(0.0);
            lure.Commit();
            _steps++;
        }

        public void Until(double time, Action? look = null)
        {
            while (TimeS < time - (0.5 * dt))
            {
                Next();
                look?.Invoke();
            }
        }
    }

    private static OnSpring Drawn(SlidingLure lure, double speed, double angle = 0.0, double dt = Step, double stiffness = 20.0)
    {
        const double far = 200.0;
        var towards = new Vec3(-Math.Cos(angle), 0.0, Math.Sin(angle));
        Vec3 start = lure.Pose.Tie + (far * towards);
        return new(lure, stiffness, far, t => start + (new Vec3(-speed * t, 0.0, 0.0)), dt);
    }

    private static OnSpring Loose(SlidingLure lure, double dt = Step) => new(lure, 0.0, 1.0, _ => new Vec3(-10.0, 0.0, 0.0), dt);

    [Fact]
    public void Drawn_by_a_spring_at_one_speed_it_needs_mu_m_g_and_does_not_stick_and_slip()
    {
        var lure = new SlidingLure(Plants, 0.0, 0.0);
        OnSpring spring = Drawn(lure, 0.1);
        double slowest = double.PositiveInfinity, high = 0.0, low = double.PositiveInfinity;
        spring.Until(8.0, () =>
        {
            // It swings on its spring about the steady way, within the speed of the hand, once it has come loose; friction does not damp what slides on.
            if (spring.TimeS > 2.0)
            {
                (slowest, high, low) = (Math.Min(slowest, -lure.Velocity.X), Math.Max(high, spring.Tension), Math.Min(low, spring.Tension));
            }
        });

        // Loose at the hand's speed or more: v = V (1 - cos w t) touches 0 but never waits there, so the mean of the swing is mu m g.
        Assert.Equal(Mu * Weight, 0.5 * (high + low), 0.01 * Mu * Weight);
        Assert.Equal(0.1 * Math.Sqrt(20.0 * Mass), 0.5 * (high - low), 0.03 * 0.1 * Math.Sqrt(20.0 * Mass));
        Assert.True(slowest > -1e-3);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.3)]
    [InlineData(0.9)]
    public void A_pull_from_above_takes_weight_off_the_plants(double angle)
    {
        var lure = new SlidingLure(Plants, 0.0, 0.0);
        OnSpring spring = Drawn(lure, 0.02, angle);
        double sum = 0.0;
        int count = 0;
        spring.Until(10.0, () =>
        {
            if (spring.TimeS > 2.0)
            {
                (sum, count) = (sum + spring.Tension, count + 1);
            }
        });

        // Way of the hand: 0.2 m over 200 m of line, angle within 0.001 rad.
        double pull = Mu * Weight / (Math.Cos(angle) + (Mu * Math.Sin(angle)));
        Assert.Equal(pull, sum / count, 0.01 * pull);
        Assert.Equal(Weight - (pull * Math.Sin(angle)), lure.NormalN, 0.02 * Weight);
    }

    [Fact]
    public void After_a_blow_it_comes_to_rest_on_v_squared_over_2_mu_g_with_second_order()
    {
        double Way(double dt)
        {
            var lure = new SlidingLure(Plants, 0.0, 0.0, 1e-6, new Vec3(-1.0, 0.0, 0.0));
            OnSpring run = Loose(lure, dt);
            run.Until(0.5);
            Assert.Equal(Mu * Weight * -lure.Pose.Tie.X, run.HeatJ, 0.02 * run.HeatJ);
            return -lure.Pose.Tie.X;
        }

        double exact = 1.0 / (2.0 * Mu * Physics.GravityMS2), coarse = Way(1e-3) - exact, fine = Way(5e-4) - exact;
        Assert.Equal(exact, Way(Step), 1e-5);
        Assert.InRange(coarse / fine, 3.4, 4.6);
    }

    [Fact]
    public void Held_below_mu_m_g_it_creeps_as_slowly_as_it_is_told()
    {
        double Crept(double creep)
        {
            var lure = new SlidingLure(Plants, 0.0, 0.0, creep);
            Vec3 hand = new(-100.0 - (0.8 * Mu * Weight / 20.0), 0.0, lure.Pose.Tie.Z);
            new OnSpring(lure, 20.0, 100.0, _ => hand, Step).Until(0.5);
            return -lure.Pose.Tie.X;
        }

        double crept = Crept(SlidingLure.CreepMS);
        Assert.InRange(crept, 0.5 * 0.8 * SlidingLure.CreepMS * 0.5, 0.8 * SlidingLure.CreepMS * 0.5);
        Assert.Equal(2.0, crept / Crept(0.5 * SlidingLure.CreepMS), 0.05);
    }

    [Fact]
    public void Pulled_up_harder_than_it_weighs_it_leaves_the_plants_and_comes_back_to_rest()
    {
        var lure = new SlidingLure(Plants, 0.0, 0.0, velocity: new Vec3(0.0, 0.0, 1.0));
        double rest = lure.Pose.Tie.Z, highest = 0.0;
        OnSpring run = Loose(lure);
        bool left = false;
        run.Until(2.0, () =>
        {
            left |= lure.NormalN == 0.0 && lure.ClearM > 0.0;
            highest = Math.Max(highest, lure.Pose.Tie.Z - rest);
        });

        // Thrown up at 1 m/s: 51 mm over rest, what the plants damp and give on their 3 mm taken off; all of the throw ends as heat.
        Assert.True(left);
        Assert.InRange(highest, 0.85 / (2.0 * Physics.GravityMS2), 1.0 / (2.0 * Physics.GravityMS2) * 1.06);
        Assert.Equal(rest, lure.Pose.Tie.Z, 1e-5);
        Assert.Equal(Weight, lure.NormalN, 1e-3 * Weight);
    }

    [Fact]
    public void Pressed_down_it_bobs_with_the_period_of_its_mass_on_the_plants()
    {
        // Lightly damped, small: the belly stays on the plants.
        var lure = new SlidingLure(Plants with { DampingRatio = 0.05 }, 0.0, 0.0, velocity: new Vec3(0.0, 0.0, 0.02));
        double rest = lure.Pose.Tie.Z, before = 0.0;
        OnSpring run = Loose(lure, 1e-4);
        var crossings = new List<double>();
        run.Until(1.0, () =>
        {
            double z = lure.Pose.Tie.Z - rest;
            if (before < 0.0 && z >= 0.0)
            {
                crossings.Add(run.TimeS);
            }

            before = z;
        });
        double period = 2.0 * Math.PI / Math.Sqrt(60.0 / Mass * (1.0 - (0.05 * 0.05)));
        Assert.Equal(period, (crossings[^1] - crossings[0]) / (crossings.Count - 1), 0.01 * period);
    }

    [Fact]
    public void It_turns_its_nose_into_the_pull_when_it_moves()
    {
        var lure = new SlidingLure(Plants, 0.0, 0.0);
        Vec3 hand = new(-10.0, 10.0, lure.Pose.Tie.Z);
        var run = new OnSpring(lure, 1.0, 10.0, _ => hand, Step);
        run.Until(0.05);
        Assert.Equal(0.75 * Math.PI, lure.Pose.HeadingRad, 0.02);
    }
}
