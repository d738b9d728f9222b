using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Model.Pool;
using LureSim.Model.Tests.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Pool;

/// <summary>The pool's measurements against closed forms, the linear criterion of a tow, and each other.</summary>
public sealed class PoolRunTests
{
    private static readonly PoolTask Task = new();

    // A spheroid that floats to its axis, level, without hooks: everything about it is known in closed form.
    private static LureSpec Spheroid()
    {
        double volume = Math.PI * 0.1 * 0.02 * 0.02 / 6.0;
        return new(LureShape.Spheroid, 0.1, 0.02, 0.02, 500.0 * volume, 0.05, 0.0, [new BallastSpec(100.0 * volume, 0.0, -0.005)], []);
    }

    // A cigar with a hook at the belly and one at the tail, nearly level.
    private static LureSpec Walker() => new(
        LureShape.Cigar, 0.115, 0.021, 0.021, 0.018, 0.0575, 0.0, [new BallastSpec(0.0025, -0.012, -0.006)],
        [new HookSpec(0.0015, 0.028, -0.010, 1e-4, 0.19e-6, 7e-5), new HookSpec(0.0015, -0.055, 0.0, 1e-4, 0.19e-6, 7e-5)]);

    private static PoolResult Run(LureSpec lure, PoolTask? task = null) => PoolRun.Run(lure, TestLures.Water, task ?? Task).Demand();

    private static FreeHull HullOf(LureSpec lure) => new(FloatingLure.Float(lure, TestLures.Water));

    [Fact]
    public void Coasting_straight_it_slows_as_the_closed_form_says()
    {
        PoolTask slow = Task with { PushSpeedMS = 0.1 };
        CoastResult coast = Run(Spheroid(), slow).Coast;
        FreeHull hull = HullOf(Spheroid());
        double k = hull.AxialDragKgM / (hull.MassKg + hull.SurgeAddedKg);
        Assert.Equal(k, coast.PerM!.Value, 0.01 * k);

        // u = u0 exp(-k s): half of the speed after ln 2 / k.
        Assert.Equal(Math.Log(2.0) / k, coast.HalfM!.Value, 0.02 * Math.Log(2.0) / k);
        Assert.Null(Run(Spheroid() with { AxialDragFactor = 0.0 }, slow).Coast.PerM);
    }

    [Fact]
    public void Undamped_it_bobs_with_the_period_of_mass_and_water_over_waterplane()
    {
        LureSpec lure = Spheroid() with { NoseDamping = 0.0, CrossFlowCd = 0.0 };
        SwingResult heave = Run(lure, Task with { PressM = 5e-4 }).Heave;
        FloatingLure f = FloatingLure.Float(lure, TestLures.Water);
        double added = HullAddedMass.Of(f, WettedForm.Of(f)).HeaveKg, area = Math.PI * 0.05 * 0.01;
        double period = 2.0 * Math.PI * Math.Sqrt((f.Mass.MassKg + added) / (1000.0 * 9.80665 * area));
        Assert.Equal(period, heave.PeriodS!.Value, 0.01 * period);
        Assert.Equal(-5e-4, heave.Release, 1e-9);
    }

    [Fact]
    public void It_rolls_between_turning_about_its_centre_of_gravity_and_about_its_axis()
    {
        PoolResult p = Run(Spheroid(), Task with { HeelRad = 0.05 });
        LureMass mass = LureMass.Of(Spheroid(), HullShape.Create(Spheroid()));
        double stiffness = mass.MassKg * 9.80665 * 0.001, arm = mass.Centre.Z;
        double fast = 2.0 * Math.PI * Math.Sqrt(mass.RollInertiaKgM2 / stiffness);
        double slow = 2.0 * Math.PI * Math.Sqrt((mass.RollInertiaKgM2 + (mass.MassKg * arm * arm)) / stiffness);
        Assert.InRange(p.Roll.PeriodS!.Value, 0.995 * fast, 1.01 * slow);
        Assert.InRange(p.Roll.LossShare!.Value, 0.01, 0.9);
    }

    [Fact]
    public void Beyond_critical_damping_it_is_said_not_to_swing()
    {
        SwingResult heave = Run(Spheroid() with { NoseDamping = 2.0 }).Heave;
        Assert.Null(heave.PeriodS);
        Assert.Null(heave.LossShare);
        Assert.True(Math.Abs(heave.Trace[^1]) < 0.1 * Math.Abs(heave.Release));
    }

    // A tow stays straight where the side force acts behind the tie: x of the force, N_v/Y_v, below that of the tie (Strandhagen and others 1950).
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.25)]
    [InlineData(0.75)]
    [InlineData(1.0)]
    public void A_tow_sheers_where_the_linear_criterion_says_so(double chi)
    {
        LureSpec lure = Walker() with { SternShedding = chi };
        TowRow tow = Run(lure, Task with { SpeedsMS = [0.15] }).Tow[0];
        bool straight = ForceAt(HullOf(lure)) < lure.TieXM;
        Assert.Equal(straight ? TowCourse.Straight : TowCourse.Sheers, tow.Course);
        Assert.True(tow.IsSettled);
        Assert.Equal(straight, tow.SheerDeg < 1.0);
    }

    [Fact]
    public void The_two_sides_of_the_criterion_are_both_tried()
    {
        LureSpec lure = Walker();
        Assert.True(ForceAt(HullOf(lure with { SternShedding = 0.25 })) > lure.TieXM);
        Assert.True(ForceAt(HullOf(lure with { SternShedding = 0.75 })) < lure.TieXM);
    }

    [Fact]
    public void The_pull_of_a_straight_tow_is_the_drag_that_slows_the_coast()
    {
        LureSpec lure = Walker() with { SternShedding = 1.0 };
        PoolResult p = Run(lure, Task with { SpeedsMS = [0.3], PushSpeedMS = 0.3, HandHeightM = 0.0 });
        FreeHull hull = HullOf(lure);
        double drag = p.Coast.PerM!.Value * (hull.MassKg + hull.SurgeAddedKg) * 0.3 * 0.3;
        Assert.Equal(drag, p.Tow[0].PullN, 0.03 * drag);
    }

    [Fact]
    public void More_shed_at_the_stern_turns_it_later_and_what_floats_tail_down_never_turns()
    {
        double[] ways = [.. new[] { 0.0, 0.25, 0.5 }.Select(chi => Run(Walker() with { SternShedding = chi }).Push.TurnM!.Value)];
        Assert.True(ways[0] < ways[1] && ways[1] < ways[2]);
        PoolResult slanted = Run(Walker() with { Ballast = [new BallastSpec(0.006, -0.045, -0.006)] });
        Assert.True(slanted.RestTrimDeg > 30.0);
        Assert.Null(slanted.Push.TurnM);
        Assert.True(Math.Abs(slanted.Push.TurnedDeg) < 45.0);
    }

    [Fact]
    public void The_way_of_a_push_does_not_depend_on_its_speed()
    {
        double Way(double speed) => Run(Walker() with { SternShedding = 0.25 }, Task with { PushSpeedMS = speed }).Push.TurnM!.Value;
        Assert.Equal(Way(0.15), Way(0.3), 0.1 * Way(0.15));
    }

    [Fact]
    public void A_lure_with_little_buoyancy_and_its_weight_ahead_is_pulled_under()
    {
        LureSpec heavy = Walker() with { MassKg = 0.025, Ballast = [new BallastSpec(0.0025, 0.040, -0.006)] };
        PoolResult p = Run(heavy, Task with { SpeedsMS = [0.15, 0.5] });
        Assert.Equal(TowCourse.Dives, p.Course);
        Assert.True(p.Tow[1].NoseHeightM < -0.02);
        Assert.NotEqual(TowCourse.Dives, Run(Walker()).Course);
    }

    [Fact]
    public void A_lure_that_lies_over_at_rest_is_not_said_to_roll_over()
    {
        PoolResult p = Run(Walker() with { Ballast = [new BallastSpec(0.0025, -0.012, 0.008)], Hooks = [] }, Task with { SpeedsMS = [0.15] });
        Assert.True(Math.Abs(p.RestHeelDeg) > 90.0);
        Assert.NotEqual(TowCourse.RollsOver, p.Course);

        // It floats half out: half of its height over the water is a few millimetres, which side ever is up.
        Assert.InRange(-p.Heave.Release, 0.002, 0.005);
    }

    [Fact]
    public void Twice_the_same_bits_and_half_the_step_the_same_answer()
    {
        LureSpec lure = Walker() with { SternShedding = 0.25 };
        PoolResult once = Run(lure), again = Run(lure), fine = Run(lure, Task with { StepS = 1e-3 });
        Assert.Equal(once, again);
        for (int i = 0; i < once.Tow.Count; i++)
        {
            Assert.Equal(fine.Tow[i].SheerDeg, once.Tow[i].SheerDeg, 0.05);
            Assert.Equal(fine.Tow[i].TrimDeg, once.Tow[i].TrimDeg, 0.02);
        }

        Assert.Equal(fine.Push.TurnM!.Value, once.Push.TurnM!.Value, 2e-4);
        Assert.Equal(fine.Roll.PeriodS!.Value, once.Roll.PeriodS!.Value, 1e-3);
        Assert.Equal(fine.Heave.PeriodS!.Value, once.Heave.PeriodS!.Value, 1e-3);
    }

    // A tie under water lies farther below the hand than the surface does.
    [Fact]
    public void A_hand_right_over_a_sunk_nose_tows_too()
    {
        LureSpec lure = Walker() with { TieZM = -0.008 };
        Assert.All(Run(lure, Task with { TowLineM = 0.3, HandHeightM = Math.BitDecrement(0.3) }).Tow, row => Assert.True(double.IsFinite(row.PullN) && double.IsFinite(row.SheerDeg)));
    }

    [Fact]
    public void What_cannot_be_done_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Run(Walker(), Task with { TowLineM = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Run(Walker(), Task with { SpeedsMS = [] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Run(Walker(), Task with { SpeedsMS = [0.5, 0.3] }));
        Assert.Throws<ArgumentException>(() => Run(Walker(), Task with { HandHeightM = 3.0 }));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => PoolRun.Run(Walker(), TestLures.Water, Task, stop.Token));
    }

    // Where the side force of a small drift acts, m from the middle, at the attitude of rest: differences of force and moment less drag.
    private static double ForceAt(FreeHull hull)
    {
        const double speed = 0.15, drift = 1e-4;
        var forces = new FreeForces(hull);
        (double Side, double Turn) Of(double sway)
        {
            FreeMotionState rest = hull.AtRest(0.0, 0.0, 0.0);
            FreeMotionState s = rest with { Velocity = rest.Frame.ToBody(new Vec3(speed, sway, 0.0)) };
            forces.Set(s);
            var drag = new double[6];
            forces.Drag.Multiply([s.Velocity.X, s.Velocity.Y, s.Velocity.Z, 0.0, 0.0, 0.0], drag);
            return (forces.Force[1] - drag[1], forces.Force[5] - drag[5]);
        }

        (double plus, double plusTurn) = Of(drift);
        (double minus, double minusTurn) = Of(-drift);
        return (plusTurn - minusTurn) / (plus - minus);
    }
}
