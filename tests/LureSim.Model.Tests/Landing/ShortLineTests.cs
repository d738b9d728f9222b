using LureSim.Model.Assembly;
using LureSim.Model.Fish;
using LureSim.Model.Landing;
using LureSim.Model.Lines;
using LureSim.Model.Rods;
using LureSim.References.Lines;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>A bolt on a short line: energy, springs, drag.</summary>
public sealed class ShortLineTests
{
    private const double Water = 998.2;
    private static readonly FishSpec Coasting = new(1.5, 0.0, 0.1, PullN: 0.0, SpeedMS: 2.5);
    private static readonly double Energy = 0.5 * 1.65 * 2.5 * 2.5;

    // E = (T^2 - T_0^2)/(2 k); the trapezoid is exact for a straight spring, the last step cut by a chord is not.
    [Theory]
    [InlineData(0.0)]
    [InlineData(20.0)]
    public void A_coasting_fish_on_a_straight_spring_gives_all_its_energy(double start)
    {
        const double k = 500.0;
        Assert.Equal(Math.Sqrt((start * start) + (2.0 * k * Energy)), Surge.PeakN(Coasting, Water, start, n => n / k), 0.01);
    }

    // The other way round: steps in time, Runge-Kutta 4, of m x'' = P (1 - v/v_top) - D - k x^1.5.
    [Fact]
    public void With_thrust_and_drag_it_is_the_motion_in_time()
    {
        var fish = new FishSpec(1.5, 0.003, 0.1, PullN: 12.0, SpeedMS: 2.5);
        const double k = 60.0, h = 1e-4;
        double Rate(double x, double v) =>
            ((12.0 * (1.0 - (v / 2.5))) - (0.5 * Water * 0.003 * v * Math.Abs(v)) - (k * Math.Pow(Math.Max(0.0, x), 1.5))) / 1.65;
        double x = 0.0, v = 2.5;
        while (v > 0.0)
        {
            double a1 = Rate(x, v), v2 = v + (0.5 * h * a1), a2 = Rate(x + (0.5 * h * v), v2), v3 = v + (0.5 * h * a2), a3 = Rate(x + (0.5 * h * v2), v3), v4 = v + (h * a3), a4 = Rate(x + (h * v3), v4);
            x += h / 6.0 * (v + (2.0 * v2) + (2.0 * v3) + v4);
            v += h / 6.0 * (a1 + (2.0 * a2) + (2.0 * a3) + a4);
        }

        double expected = k * Math.Pow(x, 1.5);
        double Error(double step) => Math.Abs((Surge.PeakN(fish, Water, 0.0, n => Math.Pow(n / k, 2.0 / 3.0), step) / expected) - 1.0);
        Assert.True(Error(0.02) < 5e-4, $"{Error(0.02)}");
        Assert.True(Error(0.08) > 4.0 * Error(0.02), $"{Error(0.08)} {Error(0.02)}");
    }

    // The rod's own potential: springs and weight of the chain between the two shapes, line inextensible.
    [Fact]
    public void A_bent_rod_stores_what_the_fish_loses()
    {
        RodChain chain = RodChain.Build(SevenFoot);
        var held = new HeldRod(SevenFoot, 8.0);
        double Stored(double load)
        {
            double[] angle = [.. held.Hung(0.5, load).AngleRad];
            return chain.SpringEnergyJ(angle) + (Gravity * chain.FirstMomentKgM.Zip(angle, (moment, a) => moment * Math.Sin(a)).Sum());
        }

        double peak = Surge.PeakN(Coasting, Water, 8.0, n => -held.Hung(0.5, n).TipYM, 0.005);
        Assert.Equal(Energy, Stored(peak) - Stored(8.0), 2e-4 * Energy);
    }

    [Fact]
    public void Give_of_the_line_is_its_stretch_per_newton()
    {
        ShortLine boat = Run().Boat;
        double rings = Math.Exp(0.1 * (0.5 + (0.5 * Math.PI)));
        double expected = LineStatics.Stretch(Braid, 1.0, 2.5) + LineStatics.Stretch(Braid, 1.0 / rings, SevenFoot.FreeLengthM);
        Assert.Equal(expected, boat.LineGiveMN, 1e-12);

        Setup led = Usual with { Leader = new LeaderSpec(Nylon, 1.0) };
        double longer = expected + LineStatics.Stretch(Nylon, 1.0, 1.0) - LineStatics.Stretch(Braid, 1.0, 1.0);
        Assert.Equal(longer, Run(led).Boat.LineGiveMN, 1e-12);
    }

    [Fact]
    public void Drag_starts_at_its_setting_by_static_friction_and_rings()
    {
        ShortLine boat = Run().Boat;
        double rings = Math.Exp(0.1 * (0.5 + (0.5 * Math.PI)));
        Assert.Equal(1.25, boat.SlipStartN / boat.SlipN, 1e-12);

        // The spool has given 2.5 of 75 m: a thousandth or so of its radius.
        Assert.InRange(boat.SlipN / (35.0 * rings), 1.0, 1.02);
        Assert.Equal(Math.Min(boat.LockedN, boat.SlipStartN), boat.WithDragN);
    }

    [Fact]
    public void The_safe_drag_starts_below_the_weakest_part_by_the_margin()
    {
        ShortLine boat = Run().Boat;
        ShortLine set = Run(Usual with { Reel = Usual.Reel with { DragN = boat.SafeDragN } }).Boat;
        Assert.Equal(boat.Weakest.LoadN / 1.5, set.SlipStartN, 1e-9);
        Assert.Equal(Run().Weakest.LoadN / boat.Weakest.LoadN, boat.HookDragN / boat.SafeDragN, 1e-12);
    }

    [Fact]
    public void With_braid_the_rod_eases_a_bolt_and_more_line_hardly_does()
    {
        ShortLine boat = Run().Boat;
        Assert.True(boat.RodGiveMN > 20.0 * boat.LineGiveMN);
        Assert.True(boat.PointedN > 3.0 * boat.LockedN);
        Assert.InRange(boat.FarN, 0.9 * boat.LockedN, boat.LockedN);
    }

    [Fact]
    public void With_nylon_far_out_line_eases_a_bolt_too()
    {
        Setup nylon = Usual with { Line = Nylon, Reel = Usual.Reel.With(Nylon) };
        ShortLine boat = Run(nylon).Boat;
        Assert.True(boat.PointedN < 0.6 * Run().Boat.PointedN);
        Assert.True(boat.FarN < 0.9 * boat.LockedN);
    }
}
