using LureSim.Model.Landing;
using LureSim.Model.Rods;
using static LureSim.Model.Tests.Landing.LandingCases;

namespace LureSim.Model.Tests.Landing;

/// <summary>Loads of a held rod against levers that can be written down, and what they must do when something changes.</summary>
public sealed class RodLiftTests
{
    private static readonly Grip Lifting = Torque(40.0), Holding = Torque(16.0);

    private static RodLift Of(RodSpec rod, double factor = 1e3, TackleStrength? tackle = null) => new(new HeldRod(rod, factor), tackle ?? Strong);

    // W L cos(phi) + g S cos(phi) = tau; a rod of 1e6 N third load bends by some 1e-5 under it.
    [Theory]
    [InlineData(10.0)]
    [InlineData(45.0)]
    [InlineData(70.0)]
    public void A_rigid_rod_lifts_torque_over_reach(double degrees)
    {
        double phi = degrees * Degree, own = RodFeel.Of(SevenFoot).TipTorqueNm(phi), reach = SevenFoot.FreeLengthM * Math.Cos(phi);
        RodLoad load = Of(Stiff()).Lift(phi, Holding)[0];
        Assert.Equal((16.0 - own) / reach, load.LoadN, 1e-3);
        Assert.Equal(reach, load.LeverM, 1e-4);
        Assert.Equal(SevenFoot.FreeLengthM * Math.Sin(phi), load.TipRiseM, 1e-4);
        Assert.Equal(LandingLimit.Hands, load.Limit);
    }

    // T L sin(phi) + g S cos(phi) = tau.
    [Theory]
    [InlineData(30.0)]
    [InlineData(90.0)]
    [InlineData(120.0)]
    public void A_rigid_rod_pulls_torque_over_its_lever(double degrees)
    {
        double phi = degrees * Degree, own = RodFeel.Of(SevenFoot).TipTorqueNm(phi);
        Assert.Equal((16.0 - own) / (SevenFoot.FreeLengthM * Math.Sin(phi)), Of(Stiff()).Pull(phi, Holding)[0].LoadN, 1e-3);
    }

    // Statics of the whole: torque = load times lever + weight times its own lever; the weight's share lies between 0 and that of the straight level rod.
    [Theory]
    [InlineData(20.0)]
    [InlineData(60.0)]
    public void Load_times_lever_and_own_weight_make_the_torque(double degrees)
    {
        RodLoad load = Of(SevenFoot).Lift(degrees * Degree, Holding)[0];
        Assert.InRange(16.0 - (load.LoadN * load.LeverM), 0.0, RodFeel.Of(SevenFoot).TipTorqueNm(0.0));
        Assert.True(load.LeverM < SevenFoot.FreeLengthM);
    }

    [Fact]
    public void A_softer_rod_shortens_its_own_lever_and_lets_the_same_hands_pull_harder()
    {
        double[] pulls = [.. new[] { 2.0, 4.0, 8.0, 16.0 }.Select(power => Of(SevenFoot with { ThirdLoadN = power }).Pull(90.0 * Degree, Holding)[0].LoadN)];
        Assert.Equal(pulls.OrderDescending(), pulls);
        Assert.True(pulls[0] > 1.5 * pulls[^1]);
    }

    [Fact]
    public void Stronger_hands_lift_more_at_every_angle()
    {
        RodLift lift = Of(SevenFoot);
        foreach (double degrees in new[] { 10.0, 40.0, 70.0 })
        {
            double[] loads = [.. lift.Lift(degrees * Degree, Torque(5.0), Torque(10.0), Torque(20.0), Torque(40.0), Torque(80.0)).Select(l => l.LoadN)];
            Assert.Equal(loads.Order(), loads);
            Assert.Equal(loads.Length, loads.Distinct().Count());
        }
    }

    // The stiffest rod that is allowed, upright, under half a newton: bent by some hundredths of a radian, which takes its square from the lever.
    [Theory]
    [InlineData(1.9812)]
    [InlineData(2.2860)]
    public void A_long_stiff_rod_is_a_lever_for_the_fish(double length) =>
        Assert.Equal(1.0 / (length - SevenFoot.GripM), RodLever.PullN(SevenFoot with { ThirdLoadN = 40.0 }, length, 90.0 * Degree, 1.0), 1e-3);

    [Fact]
    public void Of_two_bent_rods_of_one_power_the_longer_one_pulls_less()
    {
        double at66 = RodLever.PullN(SevenFoot, 1.9812, 90.0 * Degree, 16.0), at76 = RodLever.PullN(SevenFoot, 2.2860, 90.0 * Degree, 16.0);
        Assert.True(at66 > at76);

        // Bent alike, T times L is the same: at least the ratio of the free lengths, and own weight adds to it.
        Assert.InRange(at66 / at76, (2.2860 - SevenFoot.GripM) / (1.9812 - SevenFoot.GripM), 1.4);
        Assert.Equal(Of(SevenFoot).Pull(90.0 * Degree, Holding)[0].LoadN, RodLever.PullN(SevenFoot, SevenFoot.LengthM, 90.0 * Degree, 16.0), 1e-9);
        Assert.ThrowsAny<ArgumentException>(() => RodLever.PullN(SevenFoot, 9.0, 90.0 * Degree, 16.0));
    }

    [Theory]
    [InlineData(6.0)]
    [InlineData(9.0)]
    public void At_45_deg_the_rod_bears_its_power_times_the_factor(double factor)
    {
        RodLoad load = Of(SevenFoot, factor).Lift(45.0 * Degree, Torque(500.0))[0];
        Assert.Equal(LandingLimit.Rod, load.Limit);
        Assert.Equal(factor * SevenFoot.ThirdLoadN, load.LoadN, 1e-3);
    }

    // Straight up, the load must bend the tip over: less lever, but more bend in the thin part.
    [Fact]
    public void A_rod_held_high_bears_less_than_at_45_deg()
    {
        RodLift lift = Of(SevenFoot, 8.0);
        Assert.True(lift.Lift(70.0 * Degree, Torque(500.0))[0].LoadN < lift.Lift(45.0 * Degree, Torque(500.0))[0].LoadN);
        var held = new HeldRod(SevenFoot, 8.0);
        RodShape high = held.Hung(70.0 * Degree, 8.0 * SevenFoot.ThirdLoadN);
        Assert.True(held.Use(high) > 1.0);
    }

    // r M/EI of a straight rod under a small load at one spring after the other: the largest of the beam formula.
    [Fact]
    public void Strain_of_a_nearly_straight_rod_is_that_of_a_beam()
    {
        RodSpec fine = SevenFoot with { Links = 200 };
        var taper = RodTaper.FromSpec(fine);
        RodChain chain = RodChain.Build(taper, fine.Links);
        double load = 1e-3, expected = Enumerable.Range(1, 4000).Max(i =>
        {
            double s = i * taper.FreeLengthM / 4001.0;
            return load * (taper.FreeLengthM - s) * 0.5 * taper.DiameterM(s) / taper.StiffnessNm2(s);
        });
        Assert.Equal(expected, new RodStrain(taper, chain).Largest(RodStatics.Solve(chain, 0.0, 0.0, -load)), 1e-3 * expected);
    }

    [Fact]
    public void Hands_that_cannot_hold_the_rod_itself_lift_nothing() => Assert.Equal(0.0, Of(SevenFoot).Lift(0.2, Torque(0.05))[0].LoadN);

    [Theory]
    [InlineData(1e3, 1e3, 1e3, LandingLimit.Hands)]
    [InlineData(1e3, 3.0, 1e3, LandingLimit.Arms)]
    [InlineData(1.0, 1e3, 1e3, LandingLimit.Rod)]
    [InlineData(1e3, 1e3, 2.0, LandingLimit.HookHold)]
    public void The_least_one_is_named(double factor, double armsN, double tackleN, LandingLimit limit)
    {
        RodLoad load = Of(SevenFoot, factor, new(LandingLimit.HookHold, tackleN)).Lift(0.7, new Grip(16.0, armsN))[0];
        Assert.Equal(limit, load.Limit);
        Assert.True(load.LoadN <= Math.Min(armsN, tackleN));
    }

    [Fact]
    public void Line_turns_by_the_rods_angle_to_it_whatever_the_bend()
    {
        Assert.Equal(2.0, Of(SevenFoot).Pull(2.0, Holding)[0].LineTurnRad);
        Assert.Equal(0.3 + (0.5 * Math.PI), Of(Stiff()).Lift(0.3, Lifting)[0].LineTurnRad, 1e-15);
    }

    [Fact]
    public void A_pull_that_hands_hold_without_end_is_cut_off() => Assert.Equal(RodHold.MostN, Of(SevenFoot).Pull(0.05, Torque(100.0))[0].HandsN);
}
