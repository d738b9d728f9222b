using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Model.Tests.Cast;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Reels;

/// <summary>The clutch alone, at the end of one length of line, against closed forms.</summary>
public sealed class DragClutchTests
{
    private const double Drag = 10.0, Ea = 1500.0;

    private static readonly LineSpec Line = CastCases.Braid with { AxialStiffnessN = Ea, DampingTimeS = 2e-3 };

    // 17 mm down to 12 mm, as in the check of the wound spool.
    private static readonly double Room = WoundLine.Capacity(0.012, 0.017, 0.022, 0.75, Line.DiameterM);

    private static ReelSpec Reel(double ratio, double slow = 0.05, double rings = 0.1, ReelKind kind = ReelKind.Revolving) => new(kind, DragN: Drag)
    {
        Spool = new SpoolSpec(LineM: Room),
        Clutch = new ClutchSpec(ratio, slow, rings),
    };

    // A spool of 0.1 g at the line, so that motion in it is nothing beside that of a mass of kilograms.
    private static ReelSpec LightReel(double ratio) => new(SpoolDiameterM: 0.08, DragN: Drag)
    {
        Spool = new SpoolSpec(InertiaKgM2: 1e-7, LineM: 1.0),
        Clutch = new ClutchSpec(ratio, RingFriction: 0.0),
    };

    // F R_full/R, R from 17 to 12 mm, its square in proportion to the line: 17/12 = 1.416667 at the end. A spool whose line lies wide counts as full.
    [Theory]
    [InlineData(ReelKind.Revolving, 0.0, 1.0)]
    [InlineData(ReelKind.Revolving, 0.5, 1.15536703)]
    [InlineData(ReelKind.Revolving, 1.0, 1.41666667)]
    [InlineData(ReelKind.Fixed, 0.5, 1.0)]
    public void The_force_that_starts_it_grows_as_the_spool_empties(ReelKind kind, double gone, double factor)
    {
        var clutch = new DragClutch(Reel(1.25, kind: kind), Line);
        clutch.Begin(Bdf2.BackwardEuler(1e-3), gone * Room * (1.0 - 1e-12), 0.0);
        Assert.False(clutch.Finish(1.25 * Drag * factor * (1.0 - 1e-6)));
        Assert.True(clutch.Finish(1.25 * Drag * factor * (1.0 + 1e-6)));
    }

    [Fact]
    public void With_no_line_left_the_knot_holds()
    {
        var clutch = new DragClutch(Reel(1.25), Line);
        clutch.Begin(Bdf2.BackwardEuler(1e-3), Room, 0.0);
        Assert.False(clutch.Finish(1e6));

        // Also when it was slipping: one metre before the end, drawn at 2 m/s.
        ClutchRig rig = ClutchRig.Drawn(Reel(1.0), Line, 10.0, t => (2.0 * t, 2.0), outM: Room - 1.0);
        rig.Run(0.7, 1e-3);
        Assert.False(rig.Clutch.Slips);
        Assert.Equal(0.0, rig.Clutch.KineticJ);

        // The step in which the end comes is given whole: 2 mm at most.
        Assert.InRange(rig.Clutch.GivenM, 1.0, 1.003);
    }

    // T = F (1 + (r - 1) e^(-v/u_s)) e^(mu theta). u_s of 1 m/s, because friction that falls faster than the line damps (10 N s/m here) chatters.
    [Theory]
    [InlineData(1.25, 0.5, 0.0)]
    [InlineData(1.25, 2.0, 1.2)]
    [InlineData(1.0, 0.5, 1.2)]
    public void Drawn_steadily_it_holds_by_the_law_of_its_friction(double ratio, double speed, double turn)
    {
        ClutchRig rig = ClutchRig.Drawn(Reel(ratio, slow: 1.0), Line, 0.3, t => (speed * t, speed), turnRad: turn);

        // Until the growing length of line, over which the pull is shared, is some 0.5 m long: the spool then turns as fast as the line comes, but for its strain.
        rig.Run(0.1, 2e-5);
        double reel = Drag * (1.0 + ((ratio - 1.0) * Math.Exp(-rig.Clutch.SpeedMS)));
        double full = 0.017, gone = rig.Clutch.GivenM / Room, radius = Math.Sqrt((full * full) - (gone * ((full * full) - (0.012 * 0.012))));
        Assert.Equal(speed, rig.Clutch.SpeedMS, 0.01 * speed);
        Assert.Equal(reel * full / radius * Math.Exp(0.1 * turn), rig.TensionN, 1e-3 * reel);
        Assert.Equal(rig.TensionN * Math.Exp(-0.1 * turn), rig.Clutch.ReelForceN, 1e-9);
    }

    // 0.15 N/s at 150 N/m: it is met in the last step before it is exceeded, and again at most one step late. To turn the spool of some 5 g at the speed
    // of the hand takes v sqrt(k m_s) = 0.9 mN more.
    [Theory]
    [InlineData(1.0, 0.0, 1e-2)]
    [InlineData(1.25, 0.0, 1e-2)]
    [InlineData(1.6, 1.5, 1e-2)]
    [InlineData(1.25, 0.0, 1e-4)]
    public void A_slow_pull_peaks_at_what_starts_it(double ratio, double turn, double dt)
    {
        const double speed = 1e-3, k = Ea / 10.0;
        double expected = ratio * Drag * Math.Exp(0.1 * turn), start = (0.99 * expected / k) - speed;
        ClutchRig rig = ClutchRig.Drawn(Reel(ratio), Line, 10.0, t => (start + (speed * t), speed), turnRad: turn).Run(0.9, dt);
        Assert.Equal(0.0, rig.Clutch.GivenM);
        rig.Run(0.3 + (0.01 * expected / (k * speed)), dt);
        Assert.True(rig.Clutch.GivenM > 0.0);
        Assert.Equal(expected, rig.PeakN, (2.0 * k * speed * dt) + 1e-3);
    }

    // Friction that falls at once from r F to F lets a spool on an undamped spring swing from the first to 2 F - r F: 2 (r - 1) F/k, 200 mm at r = 1.5
    // and 50 N/m. The line is three kilometres long, so that its stiffness stays. What friction eats until u_s = 5 mm/s is 1e-5 of it, BDF2 at 1500 steps in
    // half a swing 1e-4; the hand goes on by 1e-4.
    [Fact]
    public void Once_started_it_slips_by_twice_what_friction_fell_over_the_stiffness()
    {
        ReelSpec reel = Reel(1.5, slow: 0.005, rings: 0.0);
        ClutchRig rig = ClutchRig.Drawn(reel, Line with { DampingTimeS = 0.0, AxialStiffnessN = 150e3 }, 3000.0, t => (0.3 + (1e-4 * t), 1e-4));
        while (!rig.Clutch.Slips)
        {
            rig.Step(2e-5);
        }

        while (rig.Clutch.Slips)
        {
            rig.Step(2e-5);
        }

        Assert.Equal(2.0 * 0.5 * Drag / 50.0, rig.Clutch.GivenM, 2e-3 * 0.2);
        Assert.Equal((2.0 - 1.5) * Drag, rig.TensionN, 2e-3 * Drag);
    }

    // m v^2/2 less what the line holds at that force, F^2 L/(2 EA), goes into F times the slip s and its stretch, s (1 + F/EA). Spool and damping of the
    // line take less than 1e-3 of it.
    [Theory]
    [InlineData(10.0, 1.0)]
    [InlineData(2.0, 2.0)]
    public void A_mass_is_stopped_over_its_energy_by_the_force(double mass, double speed)
    {
        const double length = 3.0;
        ClutchRig rig = ClutchRig.Mass(LightReel(1.0), Line with { DampingTimeS = 1e-4 }, length, mass, speed).Run(2.0, 1e-4);
        double slip = ((0.5 * mass * speed * speed) - (0.5 * Drag * Drag * length / Ea)) / (Drag * (1.0 + (Drag / Ea)));
        Assert.False(rig.Clutch.Slips);
        Assert.Equal(slip, rig.Clutch.GivenM, 1e-3 * slip);
    }

    // A jerk of 2 m/s on 30 cm of line: what the line does against what clutch, rings and spool have. Each of the two kinks, where it begins and
    // where it ends, leaves something of the second order.
    [Fact]
    public void Its_energy_account_closes_with_the_square_of_the_step()
    {
        double[] open = [.. new[] { 2e-4, 1e-4, 5e-5, 2.5e-5 }.Select(Open)];
        Assert.InRange(open[0], 0.0, 1e-3);
        for (int i = 1; i < open.Length; i++)
        {
            Assert.InRange(Math.Log2(open[i - 1] / open[i]), 1.8, 2.5);
        }

        static double Open(double dt)
        {
            ClutchRig rig = ClutchRig.Mass(Reel(1.25), Line, 0.3, 1.0, 2.0, turnRad: 1.0);
            rig.Run(0.3, dt);
            Assert.False(rig.Clutch.Slips);
            return Math.Abs(rig.WorkJ - rig.Clutch.LossJ - rig.Clutch.KineticJ) / rig.WorkJ;
        }
    }

    [Fact]
    public void A_step_that_is_thrown_away_leaves_nothing_behind()
    {
        ClutchRig plain = ClutchRig.Mass(Reel(1.25), Line, 15.0, 1.0, 2.0), tried = ClutchRig.Mass(Reel(1.25), Line, 15.0, 1.0, 2.0);
        for (int n = 0; n < 400; n++)
        {
            plain.Step(1e-3);
            tried.Try(2e-3);
            tried.Try(0.3e-3);
            tried.Step(1e-3);
            Assert.Equal(plain.Clutch.Slips, tried.Clutch.Slips);
            Assert.Equal(plain.Clutch.GivenM, tried.Clutch.GivenM);
            Assert.Equal(plain.Clutch.LossJ, tried.Clutch.LossJ);
            Assert.Equal(plain.Clutch.KineticJ, tried.Clutch.KineticJ);
        }

        Assert.True(plain.Clutch.GivenM > 0.1);
    }

    [Fact]
    public void No_drag_at_all_lets_the_line_run()
    {
        ClutchRig rig = ClutchRig.Drawn(Reel(1.25) with { DragN = 0.0 }, Line, 10.0, t => (t, 1.0)).Run(1.0, 1e-3);
        Assert.InRange(rig.Clutch.GivenM, 0.99, 3.0);
        Assert.True(double.IsFinite(rig.TensionN));
    }
}
