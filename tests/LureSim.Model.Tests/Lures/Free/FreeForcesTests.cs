using LureSim.Model.Lures;
using LureSim.Model.Lures.Free;
using LureSim.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace LureSim.Model.Tests.Lures.Free;

/// <summary>Forces of the hull in six degrees of freedom against their own energies, and its symmetries.</summary>
public sealed class FreeForcesTests
{
    public static TheoryData<LureSpec> Lures() =>
        [TestLures.Cigar(), TestLures.Pencil(), TestLures.Hollow(), FreeBodies.Hanging(), FreeBodies.TailDown()];

    // Weight and buoyancy are the slopes of the energy, in six directions, at any attitude.
    [Theory]
    [MemberData(nameof(Lures))]
    public void Forces_at_rest_are_slopes_of_the_energy(LureSpec lure)
    {
        FreeHull hull = FreeBodies.Hull(lure);
        var random = new Random(3);
        const double d = 1e-6;
        double weight = 9.8 * hull.MassKg, length = 0.5 * lure.LengthM;
        for (int i = 0; i < 40; i++)
        {
            FreeMotionState s = FreeBodies.Anyhow(hull, random) with { Velocity = Vec3.Zero, Rate = Vec3.Zero };
            var forces = new FreeForces(hull);
            forces.Set(s);
            for (int axis = 0; axis < 6; axis++)
            {
                var e = new Vec3(axis % 3 == 0 ? d : 0.0, axis % 3 == 1 ? d : 0.0, axis % 3 == 2 ? d : 0.0);
                double Away(double way) => FreeBodies.Energy(hull, axis < 3
                    ? s with { Origin = s.Origin + (way * s.Frame.ToWorld(e)) }
                    : s with { Frame = s.Frame.Turned(way * e) });

                // Strips told flat from sloping by a threshold, and the corner of one that just touches.
                Assert.Equal((Away(-1.0) - Away(1.0)) / (2.0 * d), forces.Force[axis], 2e-6 * weight * (axis < 3 ? 1.0 : length));
            }
        }
    }

    // M nu' = f - D nu, and with that nu' the energy falls by exactly the power into the water: turning axes, entering sections, arms and all.
    [Theory]
    [MemberData(nameof(Lures))]
    public void Energy_falls_by_the_power_into_the_water(LureSpec lure)
    {
        FreeHull hull = FreeBodies.Hull(lure);
        var random = new Random(3);
        var errors = new List<double>();
        for (int i = 0; i < 200; i++)
        {
            FreeMotionState s = FreeBodies.Anyhow(hull, random);
            var forces = new FreeForces(hull);
            forces.Set(s);
            double[] nu = [s.Velocity.X, s.Velocity.Y, s.Velocity.Z, s.Rate.X, s.Rate.Y, s.Rate.Z], drag = new double[6];
            forces.Drag.Multiply(nu, drag);
            Vector<double> rates = Matrix<double>.Build.Dense(6, 6, (r, c) => forces.Mass[r, c])
                .Solve(Vector<double>.Build.Dense(6, r => forces.Force[r] - drag[r]));
            double power = forces.WaterPower(s);
            const double dt = 1e-7;
            double slope = (FreeBodies.Energy(hull, FreeBodies.Moved(s, dt, [.. rates])) - FreeBodies.Energy(hull, FreeBodies.Moved(s, -dt, [.. rates]))) / (2.0 * dt);
            Assert.True(power >= 0.0, $"{power} W");
            errors.Add(Math.Abs(slope + power) / (power + 0.01));
        }

        // A difference across a corner, where a section touches the water within a tenth of a microsecond, is rare: there the slope of a_v jumps.
        errors.Sort();
        Assert.InRange(errors[197], 0.0, 1e-5);
        Assert.InRange(errors[^1], 0.0, 0.1);
    }

    // The cells behind the stern's place, next to one another and of up to twice its added mass, must not give energy.
    [Fact]
    public void The_stern_never_gives_energy()
    {
        FreeHull hull = FreeBodies.Hull(TestLures.Cigar() with
        {
            Shape = LureShape.Stations,
            Stations = [new(-0.055, 0.012, 0.012), new(-0.045, 0.012, 0.012), new(-0.0385, 0.003, 0.003), new(-0.02, 0.008, 0.008), new(0.0, 0.011, 0.011), new(0.03, 0.011, 0.011), new(0.055, 0.002, 0.002)],
            MassKg = 0.014,
            Ballast = [],
            CrossFlowCd = 0.0,
            AxialDragFactor = 0.0,
            NoseDamping = 0.0,
            RollDamping = 0.0,
        });
        var forces = new FreeForces(hull);
        var random = new Random(11);
        for (int i = 0; i < 20000; i++)
        {
            FreeMotionState s = FreeBodies.Anyhow(hull, random);
            forces.Set(s);
            Assert.True(forces.WaterPower(s) >= 0.0, $"{forces.WaterPower(s)} W");
        }
    }

    // Strips as cylinders against exact cuts.
    [Theory]
    [MemberData(nameof(Lures))]
    public void Volume_and_its_centre_are_those_of_the_exact_cuts(LureSpec lure)
    {
        FreeHull hull = FreeBodies.Hull(lure);
        foreach ((double height, double trim, double heel) in new[] { (0.0, 0.0, 0.0), (-0.002, 0.2, 0.9), (0.003, -0.6, 2.2), (-0.004, 1.2, -1.4), (0.0, 1.5, 0.3) })
        {
            var attitude = new Attitude(height, trim, heel);
            Immersion exact = Immersion.Of(hull.Float.Hull, attitude);
            (double volume, Vec3 moment) = NodeSums.Volume(hull.Water.Nodes, new WaterAxes(height, attitude.Up));
            Assert.Equal(exact.VolumeM3, volume, 2e-3 * exact.VolumeM3);
            Assert.InRange(((1.0 / volume) * moment - exact.Centre).Length, 0.0, 1e-3 * lure.LengthM);
        }
    }

    // y -> -y: the same numbers with the other sign, bit for bit.
    [Theory]
    [MemberData(nameof(Lures))]
    public void Mirrored_it_moves_mirrored(LureSpec lure)
    {
        FreeHull hull = FreeBodies.Hull(lure);
        FreeMotionState start = FreeBodies.Anyhow(hull, new Random(8));
        FreeMotionState end = FreeBodies.After(hull, start, 5e-4, 2000), other = FreeBodies.After(hull, Mirrored(start), 5e-4, 2000);
        Assert.Equal(Mirrored(end), other);
    }

    [Fact]
    public void The_same_start_gives_the_same_bits()
    {
        FreeMotionState Run()
        {
            FreeHull hull = FreeBodies.Hull(TestLures.Pencil());
            return FreeBodies.After(hull, FreeBodies.Anyhow(hull, new Random(4)), 5e-4, 2000);
        }

        Assert.Equal(Run(), Run());
    }

    // Halving the step quarters the error: thrown flat on the water with spin, 0.2 s.
    [Fact]
    public void The_step_is_of_second_order()
    {
        FreeHull hull = FreeBodies.Hull(TestLures.Pencil());
        FreeMotionState start = hull.AtRest(0.0, 0.0, 0.0) with { Velocity = new Vec3(0.4, 0.1, 0.0), Rate = new Vec3(2.0, 1.0, 8.0) };
        Vec3 finest = FreeBodies.After(hull, start, 2.5e-5, 8000).Origin;
        double Error(double dt) => (FreeBodies.After(hull, start, dt, (int)Math.Round(0.2 / dt)).Origin - finest).Length;
        Assert.InRange(Math.Log2(Error(8e-4) / Error(4e-4)), 1.6, 2.4);
        Assert.InRange(Math.Log2(Error(4e-4) / Error(2e-4)), 1.6, 2.4);
    }

    private static FreeMotionState Mirrored(FreeMotionState s)
    {
        static Vec3 Flip(Vec3 v) => new(v.X, -v.Y, v.Z);
        return new FreeMotionState(
            Flip(s.Origin), new Frame3(Flip(s.Frame.X), -Flip(s.Frame.Y), Flip(s.Frame.Z)), Flip(s.Velocity), -Flip(s.Rate));
    }
}
