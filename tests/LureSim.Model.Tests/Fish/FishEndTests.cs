using LureSim.Model.Cover;
using LureSim.Model.Fish;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Fish;

/// <summary>The fish at the end of the line against closed forms of a mass that a constant force draws.</summary>
public sealed class FishEndTests
{
    private const double Water = 1000.0, CreepMS = 0.02;
    private static readonly FishSpec Still = new(2.0, 0.004, 0.0, 0.15) { Way = FishWay.Stays };
    private static readonly CoverSpec Open = new();

    // m v' = F - k v^2 from rest: v = v_T tanh(F t/(m v_T)), v_T = sqrt(F/k), k = rho CdA/2.
    [Fact]
    public void Drawn_steadily_it_gains_speed_by_the_law_of_quadratic_drag_with_order_two()
    {
        const double force = 8.0, until = 1.0;
        double top = Math.Sqrt(force / (0.5 * Water * Still.DragAreaM2)), exact = top * Math.Tanh(force * until / (Still.MassKg * top));
        double[] errors = [.. new[] { 4e-3, 2e-3, 1e-3 }.Select(h => Math.Abs(Drawn(Still, Open, new Vec3(-force, 0.0, 0.0), h, until).TowardMS - exact))];
        Assert.InRange(errors[2], 0.0, 1e-4 * exact);
        Assert.True(errors[0] > 3.0 * errors[1] && errors[1] > 3.0 * errors[2], string.Join(' ', errors));
    }

    // F = G v/sqrt(v^2 + v_c^2): less than the grip only makes it creep.
    [Fact]
    public void Plants_hold_it_up_to_their_grip()
    {
        const double grip = 10.0, force = 6.0;
        FishEnd held = Drawn(Still with { DragAreaM2 = 1e-5 }, new CoverSpec(GripN: grip), new Vec3(-force, 0.0, 0.0), 1e-3, 2.0);
        double creep = CreepMS * force / Math.Sqrt((grip * grip) - (force * force));
        Assert.Equal(creep, held.TowardMS, 1e-3 * creep);
    }

    // Beyond the grip m v' = F - G, weed moves with it. The creep law takes G (1 - v_c^2/2 v^2) only, worth less than 1 % here.
    [Fact]
    public void Beyond_the_grip_it_comes_with_its_weed()
    {
        const double grip = 10.0, force = 30.0, weed = 1.5, until = 0.5;
        FishEnd drawn = Drawn(Still with { DragAreaM2 = 1e-5 }, new CoverSpec(GripN: grip, WeedKg: weed), new Vec3(-force, 0.0, 0.0), 1e-3, until);
        double exact = (force - grip) * until / (Still.MassKg + weed);
        Assert.Equal(exact, drawn.TowardMS, 0.01 * exact);
    }

    // Out of the water its weight comes back over the height of its body: z = F h/(M g).
    [Fact]
    public void Lifted_it_hangs_where_its_weight_balances_the_pull()
    {
        double weight = Still.MassKg * Physics.GravityMS2, share = 0.4;
        FishEnd lifted = Drawn(Still with { DragAreaM2 = 0.5 }, Open, new Vec3(0.0, 0.0, share * weight), 2e-3, 60.0);
        Assert.Equal(share * Still.DepthM, lifted.Now.Place.Z, 2e-3 * Still.DepthM);
    }

    // P (1 - v/v_top) = k v^2.
    [Theory]
    [InlineData(FishWay.Runs, -1.0)]
    [InlineData(FishWay.Comes, 1.0)]
    public void It_swims_as_fast_as_its_thrust_drives_it_through_the_water(FishWay way, double sign)
    {
        FishSpec fish = Still with { Way = way, PullN = 12.0, SpeedMS = 2.5 };
        double speed = sign * Drawn(fish, Open, Vec3.Zero, 2e-3, 20.0).TowardMS, k = 0.5 * Water * fish.DragAreaM2;
        Assert.Equal(k * speed * speed, fish.PullN * (1.0 - (speed / fish.SpeedMS)), 1e-6 * fish.PullN);
    }

    [Fact]
    public void A_fast_hook_does_not_move() =>
        Assert.Equal(Vec3.Zero, Drawn(Still with { Way = FishWay.Fast }, Open, new Vec3(-500.0, 0.0, 100.0), 1e-3, 0.2).Now.Place);

    [Fact]
    public void What_it_holds_is_what_it_was_given_with_the_square_of_the_step()
    {
        FishSpec fish = Still with { Way = FishWay.Runs };
        double coarse = Share(2e-3), fine = Share(1e-3);
        Assert.InRange(Math.Abs(fine), 0.0, 1e-3);
        Assert.True(Math.Abs(coarse) > 3.0 * Math.Abs(fine), $"{coarse} {fine}");

        // Energy held less all work, over the work of the force.
        double Share(double h)
        {
            var force = new Vec3(-25.0, 0.0, 8.0);
            FishEnd end = At(fish, new CoverSpec(GripN: 5.0));
            double given = 0.0, before = 0.0, effort = 0.0;
            Vec3 place = Vec3.Zero;
            Run(end, force, h, 0.4, () =>
            {
                (double thrust, double loss) = end.Power();
                double pull = Vec3.Dot(force, end.Now.Place - place);
                given += pull + (0.5 * h * (before + thrust + loss));
                (before, place, effort) = (thrust + loss, end.Now.Place, effort + Math.Abs(pull));
            });
            return (end.HeldJ - given) / effort;
        }
    }

    private static FishEnd Drawn(FishSpec fish, CoverSpec cover, Vec3 force, double h, double until)
    {
        FishEnd end = At(fish, cover);
        Run(end, force, h, until, () => { });
        return end;
    }

    private static FishEnd At(FishSpec fish, CoverSpec cover) => new(fish, cover, 0.0, Water, Vec3.Zero);

    private static void Run(FishEnd end, Vec3 force, double h, double until, Action after)
    {
        Bdf2 step = Bdf2.BackwardEuler(h);
        for (int i = 0; i < (int)Math.Round(until / h); i++)
        {
            end.Guess(step, 1.0);
            for (int pass = 0; pass < 2; pass++)
            {
                end.Begin(step);
                end.Finish(step, force);
            }

            end.Commit();
            after();
            step = Bdf2.Step(h, h);
        }
    }
}
