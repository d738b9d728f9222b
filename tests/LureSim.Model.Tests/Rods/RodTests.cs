using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Rods;

public sealed class RodTests
{
    internal static readonly RodSpec Spec = new(2.13, 0.45, 3.0, 0.075);

    [Fact]
    public void The_chain_keeps_the_mass_of_the_rod_and_its_length()
    {
        RodChain chain = RodChain.Build(Spec);
        Assert.Equal(Spec.MassKg, chain.MassKg, 1e-12);
        Assert.Equal(Spec.FreeLengthM, chain.FreeLengthM, 1e-12);
    }

    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(40)]
    public void Its_power_drops_the_tip_by_a_third_at_any_number_of_links(int links)
    {
        RodSpec spec = Spec with { Links = links };
        Assert.Equal(1.0 / 3.0, RodPower.DropShare(RodChain.Build(spec), spec.ThirdLoadN), 1e-9);
    }

    [Fact]
    public void Frequency_hardly_depends_on_the_number_of_links()
    {
        // Second order with a constant below 0.4 (cone of ratio 0.2): 0.4 % at n = 10.
        double coarse = RodModes.Compute(Spec).AngularFrequency(0);
        double fine = RodModes.Compute(Spec with { Links = 160 }).AngularFrequency(0);
        Assert.InRange(Math.Abs((coarse / fine) - 1.0), 0.0, 0.005);
    }

    [Fact]
    public void Bend_follows_the_load_under_any_turn_of_the_frame()
    {
        RodChain chain = RodChain.Build(Spec);
        RodShape level = RodStatics.Solve(chain, 0.0, 1.0, -4.0);
        const double turn = 1.1;
        (double sin, double cos) = Math.SinCos(turn);
        RodShape turned = RodStatics.Solve(chain, turn, cos + (4.0 * sin), sin - (4.0 * cos));
        Assert.Equal((cos * level.TipXM) - (sin * level.TipYM), turned.TipXM, 1e-10);
        Assert.Equal((sin * level.TipXM) + (cos * level.TipYM), turned.TipYM, 1e-10);
    }

    [Fact]
    public void The_butt_moment_balances_load_and_weight()
    {
        RodChain chain = RodChain.Build(Spec);
        const double g = 9.81, fx = 3.0, fy = -6.0;
        RodShape shape = RodStatics.Solve(chain, 0.3, fx, fy, g);
        double weight = 0.0;
        for (int i = 0; i <= chain.Links; i++)
        {
            weight += g * chain.FirstMomentKgM[i] * Math.Cos(shape.AngleRad[i]);
        }

        Assert.Equal(weight - ((shape.TipXM * fy) - (shape.TipYM * fx)), shape.ButtMomentNm, 1e-9);
    }

    [Fact]
    public void A_pull_along_the_rod_from_behind_folds_it_round()
    {
        // Far beyond buckling the tip points along the load: the damped search must still land on a stable shape.
        RodShape shape = RodStatics.Solve(RodChain.Build(Spec), 0.01, -40.0, 0.0);
        Assert.True(shape.TipXM < 0.0);
    }

    [Fact]
    public void Modes_carry_the_static_flexibility_and_the_rigid_inertia()
    {
        RodChain chain = RodChain.Build(Spec);
        RodModeSet modes = RodModes.Compute(chain, Spec.DampingRatio);
        Assert.Equal(RodPower.Flexibility(chain), modes.StiffnessNM.Sum(k => 1.0 / k), 1e-9 * RodPower.Flexibility(chain));
        double swept = 0.0;
        for (int k = 0; k < modes.Count; k++)
        {
            swept += Math.Pow(modes.BaseParticipationKg[k] * modes.FreeLengthM, 2) / modes.MassKg[k];
            Assert.Equal(Spec.DampingRatio, modes.DampingNsM[k] / (2.0 * Math.Sqrt(modes.StiffnessNM[k] * modes.MassKg[k])), 1e-12);
        }

        // What the modes do not carry is the butt piece before the first spring and its share in the rest: a few per cent.
        Assert.InRange(swept / modes.RigidInertiaKgM2, 0.9, 1.0);
    }

    [Fact]
    public void Hand_torque_is_the_lever_times_a_steady_tip_load()
    {
        RodModeSet modes = RodModes.Compute(Spec);
        const double force = 2.0;
        double[] q = [.. modes.StiffnessNM.Select(k => force / k)];
        Assert.Equal(-force * modes.FreeLengthM, modes.HandTorque(0.0, q, new double[q.Length], force), 1e-9);
        Assert.Equal(-force * modes.FreeLengthM, modes.HandTorque(0.0, q.AsSpan(0, 2), new double[2], force), 1e-9);
    }

    [Fact]
    public void Hand_torque_of_a_steady_turn_up_is_the_rigid_inertia()
    {
        RodModeSet modes = RodModes.Compute(Spec);
        double[] q = [.. Enumerable.Range(0, modes.Count).Select(k => -modes.BaseParticipationKg[k] * modes.FreeLengthM / modes.StiffnessNM[k])];
        Assert.Equal(modes.RigidInertiaKgM2, modes.HandTorque(1.0, q, new double[q.Length], 0.0), 1e-12);
    }

    [Fact]
    public void Bad_rods_are_refused()
    {
        Assert.ThrowsAny<ArgumentException>(() => RodChain.Build(Spec with { MassKg = double.NaN }));
        Assert.ThrowsAny<ArgumentException>(() => RodChain.Build(Spec with { TipRadiusRatio = 0.0 }));
        Assert.ThrowsAny<ArgumentException>(() => RodChain.Build(Spec with { ThirdLoadN = -1.0 }));
        Assert.ThrowsAny<ArgumentException>(() => RodChain.Build(Spec with { GripM = 2.2 }));
        Assert.ThrowsAny<ArgumentException>(() => RodChain.Build(Spec with { Links = 0 }));
        Assert.ThrowsAny<ArgumentException>(() => RodModes.Compute(Spec with { DampingRatio = -0.1 }));
        Assert.Throws<ModelException>(() => RodChain.Build(Spec with { ThirdLoadN = 0.01, MassKg = 1.0 }));
    }
}
