using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Reels;

/// <summary>The two spools of a cast alone: forces at given speeds.</summary>
public sealed class CastSpoolTests
{
    private const double Radius = 0.017, Inertia = 1.5e-6, Friction = 4e-4, Mu = 7e-5, RingsKg = 1.3e-4;

    // A spool that gives 20 m/s while the rings take none piles up 0.02 m in a millisecond: of the 0.1 m at which the thumb presses fully that is a fifth, and
    // without delay it presses with a fifth of mu N R.
    [Fact]
    public void The_thumb_presses_by_the_loose_line()
    {
        FreeSpool spool = Ahead(new SpoolSpec(Inertia, 75.0, 0.022, 0.75, BrakeStrength: 0.0, FrictionNm: 0.0, RingDragN: 0.01, ThumbPressN: 4.0, ThumbFriction: 0.25, ThumbDelayS: 0.0), 20.0);
        spool.SpeedMS = 0.0;
        Step(spool, 1e-3, 0.0);
        Assert.Equal(0.02, spool.LooseM, 1e-4);
        double before = spool.SpinRadS;
        Step(spool, 1e-4, 0.0);
        double torque = (before - spool.SpinRadS) * spool.InertiaKgM2 / 1e-4;
        Assert.Equal(0.2 * 0.25 * 4.0 * Radius, torque, 0.02 * torque);
    }

    // The rings pull but do not push: with a slack tip the line in them is slowed by its own friction alone, u' = -F_0/m_g, the spool by its own,
    // w' = -M_0/I, and what it gives more lies loose. Pulled again, the line takes it up and both go on with the momentum they had.
    [Fact]
    public void The_spool_runs_ahead_of_slack_line_and_joins_it_again()
    {
        var spec = new SpoolSpec(Inertia, 75.0, 0.022, 0.75, BrakeStrength: 0.0, FrictionNm: Friction, RingDragN: 0.01, ThumbPressN: 0.0);
        FreeSpool spool = Ahead(spec, 20.0);
        double kinetic = spool.KineticJ, given = 0.0;
        const double h = 1e-4;
        for (int i = 0; i < 100; i++)
        {
            Step(spool, h, 0.0);
        }

        double rings = 20.0 - (0.01 / RingsKg * 0.01), turning = (20.0 / Radius) - (Friction / spool.InertiaKgM2 * 0.01);
        Assert.Equal(rings, spool.SpeedMS, 1e-3 * rings);
        Assert.Equal(turning, spool.SpinRadS, 1e-3 * turning);
        Assert.Equal(0.5 * 0.01 * ((turning * Radius) - rings), spool.LooseM, 0.02 * spool.LooseM);
        double spoolMomentum = 0.0, ringMomentum = 0.0;
        while (spool.LooseM > 0.0)
        {
            (spoolMomentum, ringMomentum) = (spool.InertiaKgM2 * spool.SpinRadS / spool.RadiusM, RingsKg * spool.SpeedMS);
            given += Step(spool, h, 0.05);
        }

        double kg = (spool.InertiaKgM2 / (spool.RadiusM * spool.RadiusM)) + RingsKg;
        Assert.Equal((spoolMomentum + ringMomentum) / kg, spool.SpeedMS, 2e-3 * spool.SpeedMS);
        Assert.Equal(kinetic + given, spool.KineticJ + spool.LossJ + spool.GivenJ, 2e-4 * kinetic);
    }

    // I w' = R T - c_m w - c_c w^2 - M0 at w = 1000 rad/s; lost power is that torque times w.
    [Fact]
    public void A_turning_spool_is_held_by_brakes_that_grow_with_speed_and_its_square()
    {
        const double w = 1000.0, magnetic = 1e-6, centrifugal = 2e-9, h = 1e-9;
        var spool = new FreeSpool(
            new SpoolSpec(Inertia, 75.0, 0.022, 0.75, BrakeStrength: 0.0, MagneticNms: magnetic, CentrifugalNms2: centrifugal, FrictionNm: Friction, RingDragN: 0.0, ThumbPressN: 0.0),
            0.0, Radius, 0.0, 1e-6, 0.0)
        {
            Locked = false,
            SpeedMS = w * Radius,
        };
        double torque = (magnetic * w) + (centrifugal * w * w) + Friction;
        spool.Free(h);
        Assert.Equal(-Radius * torque / Inertia, spool.FreeAccel, 1e-3 * torque / Inertia * Radius);
        Assert.Equal(Radius * Radius / Inertia, spool.InverseMass, 1e-5 * Radius * Radius / Inertia);
        spool.Advance(h, 0.0);
        Assert.Equal(h * w * torque, spool.LossJ, 1e-9 * h * w * torque);
        Assert.Equal(0.5 * Inertia * w * w, spool.KineticJ, 1e-9 * Inertia * w * w);
        Assert.Equal(2.0 * Math.PI * Radius, spool.LoopM, 1e-9);
    }

    // At the knot the spool stops, and what it turned with is lost.
    [Fact]
    public void A_spool_at_the_end_of_its_line_stops()
    {
        FreeSpool spool = Free();
        (spool.PaidM, spool.SpeedMS) = (74.9999, 17.0);
        double kinetic = spool.KineticJ;
        spool.Advance(1e-3, 0.0);
        Assert.True(spool.Locked);
        Assert.Equal(0.0, spool.SpeedMS);
        Assert.InRange(spool.LossJ, kinetic, 1.01 * kinetic);
    }

    // T = c_g (T0 + K mu u^2): the tension at which the line neither speeds up nor slows down. At rest that is c_g T0.
    [Theory]
    [InlineData(0.0, 0.0065)]
    [InlineData(20.0, 0.0065 + (1.3 * 2.0 * 5e-5 * 400.0))]
    public void A_fixed_spool_holds_the_line_by_rest_tension_and_pick_up_times_the_rings(double speed, double tension)
    {
        FixedSpool spool = Fixed(1e-5);
        spool.SpeedMS = speed;
        spool.Free(1e-4);
        Assert.Equal(tension, -spool.FreeAccel / spool.InverseMass, 1e-12);
    }

    // While it speeds up, the law is taken along its tangent at the predicted midpoint, here 22 m/s: at 20 m/s that is T0 + K mu (22^2 - 2 x 22 x 2).
    [Fact]
    public void In_a_step_the_law_is_its_tangent_at_the_midpoint()
    {
        FixedSpool spool = Fixed(1e-5);
        (spool.SpeedMS, spool.Accel) = (20.0, 4000.0);
        spool.Free(1e-3);
        Assert.Equal(1.3 * (0.005 + (2.0 * 5e-5 * 396.0)), -spool.FreeAccel / spool.InverseMass, 1e-12);

        // Half a step of the tangent's slope, 2 x 22 c_g K mu, goes with the mass.
        Assert.Equal(1e-5 + (0.5e-3 * 44.0 * 1.3 * 2.0 * 5e-5), 1.0 / spool.InverseMass, 1e-12);
    }

    // Under a constant pull it runs at sqrt((T/c_g - T0)/(K mu)), whatever the step; 5 ms are longer than the 3 ms in which it settles.
    [Fact]
    public void Under_a_constant_pull_a_fixed_spool_runs_at_the_speed_of_its_law()
    {
        const double tension = 0.08;
        FixedSpool spool = Fixed(2e-5);
        for (int i = 0; i < 200; i++)
        {
            for (int pass = 0; pass < 2; pass++)
            {
                spool.Free(5e-3);
                spool.Accel = spool.FreeAccel + (spool.InverseMass * tension);
            }

            spool.Advance(5e-3, tension);
        }

        Assert.Equal(Math.Sqrt(((tension / 1.3) - 0.005) / (2.0 * 5e-5)), spool.SpeedMS, 1e-6);
    }

    // From 10 to 20 m/s in a tenth of a second: 1.5 m.
    [Fact]
    public void Line_paid_out_is_the_mean_speed_over_the_step()
    {
        FixedSpool spool = Fixed(1e-5);
        (spool.SpeedMS, spool.Accel) = (10.0, 100.0);
        spool.Advance(0.1, 0.0);
        Assert.Equal((20.0, 1.5), (spool.SpeedMS, spool.PaidM));

        // Held, it gives none; and it never takes any back.
        spool.Locked = true;
        spool.Advance(0.1, 0.0);
        Assert.Equal(1.5, spool.PaidM);
        (spool.Locked, spool.Accel) = (false, -1e4);
        spool.Advance(0.1, 0.0);
        Assert.Equal((0.0, 2.5), (spool.SpeedMS, spool.PaidM));
    }

    // Launched at a speed, then the tip slack: after a first step together the spool runs ahead.
    private static FreeSpool Ahead(SpoolSpec spec, double speed)
    {
        var spool = new FreeSpool(spec, 0.0, Radius, Mu, 0.235e-3, RingsKg / Mu) { SpeedMS = speed, Locked = false };
        Step(spool, 1e-9, 0.0);
        return spool;
    }

    // Returns the work of the pull.
    private static double Step(FreeSpool spool, double h, double tension)
    {
        double before = spool.SpeedMS;
        for (int pass = 0; pass < 2; pass++)
        {
            spool.Free(h);
            spool.Accel = spool.FreeAccel + (spool.InverseMass * tension);
        }

        double work = 0.5 * h * tension * ((2.0 * before) + (h * spool.Accel));
        spool.Advance(h, tension);
        return work;
    }

    private static FreeSpool Free() => new(
        new SpoolSpec(Inertia, 75.0, 0.022, 0.75, BrakeStrength: 0.0, FrictionNm: Friction, RingDragN: 0.0, ThumbPressN: 0.0), 0.0, Radius, 0.0, 1e-6, 0.0)
    {
        Locked = false,
    };

    private static FixedSpool Fixed(double pseudoMass) =>
        new(new FixedSpoolSpec(2.0, 0.005, 1.3), 5e-5, pseudoMass, 0.02) { Locked = false };
}
