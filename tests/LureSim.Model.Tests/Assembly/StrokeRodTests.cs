using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Rods;
using LureSim.Model.Tests.Cast;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Assembly;

/// <summary>Hands and rod of a strike as a set-up gives them.</summary>
public sealed class StrokeRodTests
{
    private static readonly Setup Tackle = CastCases.Default().Setup;
    private static readonly Vec3 TowardFish = new(1.0, 0.0, 0.0);

    [Fact]
    public void The_hands_hold_the_resting_rod_with_the_torque_of_its_weight()
    {
        ChainRodEnd rod = StrokeRod.Of(Tackle, new StrikeStroke());

        // The straight rod's torque at 0.27 rad over the level; its own weight bends the rod by 0.05 rad, which changes the levers by less than 5 %.
        double straight = RodFeel.Of(Tackle.Rod).TipTorqueNm((0.5 * Math.PI) - 1.3);
        Assert.Equal(straight, rod.HandTorqueNm, 0.05 * straight);

        // At rest hands and rod pull alike: nothing turns.
        Assert.Equal(rod.HandTorqueNm, rod.RodTorqueNm, 1e-9);
        Assert.Equal(Vec3.Zero, rod.TipVelocityNow);
    }

    [Fact]
    public void A_level_stroke_starts_with_a_straight_rod_at_the_height_of_the_hand()
    {
        StrikeStroke stroke = StrikeStroke.Of(StrikeStyle.Sweep);
        ChainRodEnd rod = StrokeRod.Of(Tackle, stroke);
        double length = Tackle.Rod.FreeLengthM;
        Assert.Equal(-length * Math.Sin(stroke.StartRad), rod.TipNow.X, 1e-12);
        Assert.Equal(length * Math.Cos(stroke.StartRad), rod.TipNow.Y, 1e-12);
        Assert.Equal(Tackle.Angler.HandHeightM, rod.TipNow.Z);
        Assert.Equal(0.0, rod.HandTorqueNm);
    }

    [Theory]
    [InlineData(0.0, 1.0)]
    [InlineData(Math.PI, -1.0)]
    public void Wind_into_the_face_turns_the_rod_away_from_the_fish(double from, double sign)
    {
        Setup windy = Tackle with { Air = Tackle.Air with { WindSpeedMS = 10.0, WindFromRad = from } };
        ChainRodEnd rod = StrokeRod.Of(windy, new StrikeStroke(StartRad: 0.0));
        Step(rod, Bdf2.BackwardEuler(1e-4), 1e-4, Vec3.Zero);
        Assert.True(sign * rod.Now.V[^1] > 0.0);
    }

    [Fact]
    public void Joints_lie_a_link_apart_from_hand_to_tip()
    {
        ChainRodEnd rod = StrokeRod.Of(Tackle, new StrikeStroke());
        Run(rod, 5e-4, 0.2, _ => TowardFish);
        Vec3[] joints = rod.Joints(rod.Now.Q);
        var chain = RodChain.Build(Tackle.Rod);
        Assert.Equal(new Vec3(-rod.Now.Q[0], 0.0, Tackle.Angler.HandHeightM), joints[0]);
        Assert.Equal(0.0, (joints[^1] - rod.TipNow).Length, 1e-12);
        for (int i = 0; i < chain.LengthM.Length; i++)
        {
            Assert.Equal(chain.LengthM[i], (joints[i + 1] - joints[i]).Length, 1e-12);
        }
    }

    [Fact]
    public void The_line_turns_along_the_rod_by_what_lies_between_grip_and_line()
    {
        // All bends the same way: from the butt's direction to that of the line, whatever the shape between them.
        ChainRodEnd rod = StrokeRod.Of(Tackle, StrikeStroke.Of(StrikeStyle.Sweep));
        Assert.Equal((0.5 * Math.PI) + rod.Now.Q[1], rod.TurnRad(rod.Now, TowardFish), 1e-12);
        double[] bent = RodStatics.Solve(RodChain.Build(Tackle.Rod), 0.5 * Math.PI, -8.0, 0.0).FromUpright();
        rod.Start([0.0, .. bent], new double[bent.Length + 1]);
        Assert.InRange(bent[^1], -1.5, -0.5);
        Assert.Equal(0.5 * Math.PI, rod.TurnRad(rod.Now, TowardFish), 1e-12);

        // Bent the other way the line goes back as well.
        Assert.Equal((0.5 * Math.PI) - (2.0 * bent[^1]), rod.TurnRad(rod.Now, -1.0 * TowardFish), 1e-12);
    }

    [Theory]
    [InlineData(StrikeStyle.Snap)]
    [InlineData(StrikeStyle.Haul)]
    [InlineData(StrikeStyle.Sweep)]
    public void Hands_that_only_hold_never_use_more_than_their_share_and_bring_the_rod_to_rest(StrikeStyle style)
    {
        StrikeStroke stroke = StrikeStroke.Of(style);
        ChainRodEnd rod = StrokeRod.Of(Tackle, stroke);
        double most = 0.0, mostPull = 0.0, held = stroke.HoldS + 0.2;
        Run(rod, 5e-4, held + 3.0, _ => 4.0 * TowardFish, t =>
        {
            most = t > held ? Math.Max(most, Math.Abs(rod.HandTorqueNm)) : most;
            mostPull = t > held ? Math.Max(mostPull, Math.Abs(rod.PullN)) : mostPull;
        });

        // A rod that is drawn forward meets a little more than hands at rest have.
        Assert.InRange(most, 1.0, 1.1 * stroke.HoldShare * stroke.TorqueNm);
        Assert.InRange(mostPull, 1.0, 1.1 * stroke.HoldShare * stroke.PullN);
        Assert.Equal(0.0, rod.Now.V[1], 0.02);
        Assert.Equal(0.0, rod.Now.V[0], 0.02);
    }

    [Fact]
    public void The_torque_has_no_jumps()
    {
        // A torque that runs on without a jump changes half as much in half a step, also where it sets in, stops and only holds.
        double coarse = LargestChange(5e-4), fine = LargestChange(2.5e-4);
        Assert.InRange(coarse / fine, 1.8, 2.2);
    }

    private static double LargestChange(double h)
    {
        ChainRodEnd rod = StrokeRod.Of(Tackle, new StrikeStroke());
        double before = rod.HandTorqueNm, most = 0.0;
        Run(rod, h, 0.9, _ => 8.0 * TowardFish, _ =>
        {
            most = Math.Max(most, Math.Abs(rod.HandTorqueNm - before));
            before = rod.HandTorqueNm;
        });
        return most;
    }

    [Fact]
    public void A_step_that_is_thrown_away_leaves_no_trace()
    {
        ChainRodEnd plain = StrokeRod.Of(Tackle, new StrikeStroke(HoldS: 0.1)), tried = StrokeRod.Of(Tackle, new StrikeStroke(HoldS: 0.1));
        Run(plain, 1e-3, 0.2, _ => TowardFish);
        Run(tried, 1e-3, 0.2, _ => TowardFish, t =>
        {
            Bdf2 far = Bdf2.Step(2e-3, 1e-3);
            tried.Guess(far, t + 2e-3);
            tried.Begin(far);
            tried.Finish(far, 50.0 * TowardFish);
        });
        Assert.Equal(plain.Now.Q, tried.Now.Q);
        Assert.Equal(plain.Now.V, tried.Now.V);
        Assert.Equal(plain.Work, tried.Work);
        Assert.Equal(plain.KineticJ + plain.SpringJ, tried.KineticJ + tried.SpringJ);
    }

    private static void Run(ChainRodEnd rod, double h, double until, Func<double, Vec3> force, Action<double>? after = null)
    {
        Bdf2 step = Bdf2.BackwardEuler(h);
        for (int i = 1; i <= (int)Math.Round(until / h); i++)
        {
            Step(rod, step, i * h, force(i * h));
            after?.Invoke(i * h);
            step = Bdf2.Step(h, h);
        }
    }

    private static void Step(ChainRodEnd rod, Bdf2 step, double endS, Vec3 force)
    {
        rod.Guess(step, endS);
        for (int pass = 0; pass < 2; pass++)
        {
            rod.Begin(step);
            rod.Finish(step, force);
        }

        rod.Commit();
    }
}
