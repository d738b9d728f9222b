using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Rods;

/// <summary>Hands and rod of a strike against closed forms, statics and the midpoint steps of casts.</summary>
public sealed class ChainRodEndTests
{
    private const double Length = 1.7;
    private static readonly Stop Never = new(1e9, 1.0, 1.0, 1.0, 10.0);
    private static readonly Catch Still = new(1.0, 0.0, 0.0, 10.0, false);
    private static readonly HandDrive Idle = new(0.0, 1e9, 1.0, Never, 0.0, Still);
    private static readonly StrokeFrame Up = StrokeFrame.Of(StrokePlane.Up, 1.2), Side = StrokeFrame.Of(StrokePlane.Side, 1.2);

    // Order 2 leaves a quarter of the error when the step is halved; 3 to 5.5 is what coarse steps leave of that.
    private const double LeastFall = 3.0, MostFall = 5.5;

    [Fact]
    public void Hands_spin_a_rigid_rod_up_as_the_closed_form_says_with_order_two()
    {
        double coarse = SpinUpError(1e-3), fine = SpinUpError(5e-4);
        Assert.InRange(Math.Abs(fine), 0.0, Math.Pow(16.0 * 5e-4, 2));
        Assert.InRange(coarse / fine, LeastFall, MostFall);
    }

    // The share of the last speed that is wrong; the rate torque/(I w0) is 16 per second.
    private static double SpinUpError(double h)
    {
        const double torque = 40.0, top = 13.0, hands = 0.15, until = 0.15;
        RodChain chain = Chain(1e6, 0.03);
        ChainRodEnd rod = End(Motion(chain, 1e-4, hands, 1e9), new HandDrive(torque, top, 1e-9, Never, 0.0, Still));
        rod.Start(new double[chain.Links + 2], new double[chain.Links + 2]);
        Run(rod, h, until, _ => Vec3.Zero);
        double inertia = hands + RodModes.Compute(chain, 0.0).RigidInertiaKgM2;
        return (rod.Now.V[1] / (top * (1.0 - Math.Exp(-torque * until / (inertia * top))))) - 1.0;
    }

    // Bisshopp and Drucker 1945, Q. Appl. Math. 3:272, recomputed from elliptic integrals: P L^2/EI = 1 dead across the clamped rod.
    [Fact]
    public void A_load_that_grows_slowly_bends_the_rod_as_statics_and_the_elastica_say()
    {
        const double drop = 0.30172077, angle = 0.4613520;
        (double dropOf10, double angleOf10) = Elastica(10);
        (double dropOf20, double angleOf20) = Elastica(20);

        // The chain's own error is of order n^-2: 0.2 % of the drop at n = 10. The last link's angle is that of its middle, half a link from the tip.
        Assert.Equal(drop, dropOf10, 0.002 * drop);
        Assert.Equal(angle, angleOf10, 0.01 * angle);
        Assert.InRange((dropOf10 - drop) / (dropOf20 - drop), 3.5, 4.5);
        Assert.InRange((angleOf10 - angle) / (angleOf20 - angle), 3.0, 5.0);
    }

    private static (double Drop, double Angle) Elastica(int links)
    {
        const double zeta = 0.5, grown = 1.5;
        RodChain chain = RodChain.Build(new RodTaper(1.0, 1.0, 0.05, 1.0, 4.0, 2.0, 0.0), links);
        double omega = RodModes.Compute(chain, 0.0).AngularFrequency(0);
        ChainRodEnd rod = End(Motion(chain, 2.0 * zeta / omega, 1e12, 1e12), Idle);
        rod.Start(new double[links + 2], new double[links + 2]);
        Run(rod, 2e-3, 5.0, t => new Vec3(-Math.Min(1.0, t / grown), 0.0, 0.0));

        // exp(-zeta omega t) is 1e-12 by then; what is left is round-off of the statics' Newton steps.
        double[] still = RodStatics.Solve(chain, 0.5 * Math.PI, 1.0, 0.0).FromUpright();
        for (int i = 0; i <= links; i++)
        {
            Assert.Equal(still[i], rod.Now.Q[i + 1], 1e-9);
        }

        return (-rod.TipNow.X, rod.Now.Q[^1]);
    }

    [Fact]
    public void A_bent_rod_swings_with_the_period_of_its_first_mode()
    {
        // A heavy tip and a light rod: one mode.
        RodChain chain = RodChain.Build(new RodTaper(Length, 20.0, 1e-3, 0.25, 3.0, 1.5, 0.0), 8, 0.5);
        double exact = 2.0 * Math.PI / RodModes.Compute(chain, 0.0).AngularFrequency(0);
        double coarse = (Period(chain, 8e-3) / exact) - 1.0, fine = (Period(chain, 4e-3) / exact) - 1.0;
        Assert.InRange(Math.Abs(fine), 0.0, 1e-3);
        Assert.InRange(coarse / fine, LeastFall, MostFall);
    }

    private static double Period(RodChain chain, double h)
    {
        const int periods = 3;
        ChainRodEnd rod = End(Motion(chain, 0.0, 1e12, 1e12), Idle);
        rod.Start([0.0, .. RodStatics.Solve(chain, 0.5 * Math.PI, 1e-3, 0.0).FromUpright()], new double[chain.Links + 2]);
        var crossings = new List<double>();
        double before = -rod.TipNow.X;
        Run(rod, h, 20.0, _ => Vec3.Zero, t =>
        {
            double now = -rod.TipNow.X;
            if (before > 0.0 && now <= 0.0)
            {
                crossings.Add(t - (h * now / (now - before)));
            }

            before = now;
        });
        return (crossings[periods] - crossings[0]) / periods;
    }

    [Fact]
    public void It_moves_as_the_midpoint_steps_of_casts_do_when_steps_are_short()
    {
        double coarse = Apart(1e-3), fine = Apart(5e-4);
        Assert.InRange(fine, 0.0, 5e-4);
        Assert.InRange(coarse / fine, LeastFall, MostFall);
    }

    // Tip after a hard swing against a load, distance between the two schemes, m.
    private static double Apart(double h)
    {
        const double until = 0.2;
        RodChain chain = Chain(30.0, 0.05);
        var drive = new HandDrive(25.0, 14.0, 0.04, new Stop(0.2, 0.1, 0.2, 25.0, 15.0), 0.0, Still);
        var pull = new HandDrive(30.0, 2.5, 0.04, new Stop(0.15, 0.05, 3.0, 30.0, 15.0), 0.0, Still);
        double[] start = Straight(chain, -1.3);
        var rod = new ChainRodEnd(Motion(chain, 2e-3, 0.1, 3.0), new StrokeHands(drive, pull, 10.0), StrokeFrame.Of(StrokePlane.Up, 0.0));
        rod.Start(start, new double[start.Length]);
        Run(rod, h, until, Load);
        var midpoint = new ChainRod(Motion(chain, 2e-3, 0.1, 3.0), drive, pull);
        start.CopyTo(midpoint.Q, 0);
        for (int i = 0; i < (int)Math.Round(until / h); i++)
        {
            for (int pass = 0; pass < 2; pass++)
            {
                midpoint.Free(new Midpoint(h), i * h);
                midpoint.Pull(-Load((i + 0.5) * h).X, 0.0);
            }

            midpoint.Advance(new Midpoint(h));
        }

        (double x, double z, _, _) = midpoint.Tip();
        return (rod.TipNow - new Vec3(-x, 0.0, z)).Length;
    }

    [Fact]
    public void The_account_of_energy_closes_with_order_two_or_better()
    {
        // What the formula takes from the slow modes is of order 3, what the trapezoid rule leaves of order 2.
        double coarse = Open(2e-3), fine = Open(1e-3), finest = Open(5e-4);
        Assert.InRange(Math.Abs(fine), 0.0, 2e-4);
        Assert.True(coarse / fine > LeastFall && fine / finest > LeastFall, $"{coarse} {fine} {finest}");
    }

    // Share of the hands' work that is open: a full stroke against a load, weight, air, damping, and a hold at its end.
    private static double Open(double h)
    {
        RodChain chain = Chain(30.0, 0.05);
        var motion = new ChainMotion(chain, 2e-3, new HandInertia(0.1, 3.0), new RodAir(1.2, 1.1, 4.0), 9.8);
        var drive = new HandDrive(25.0, 14.0, 0.04, new Stop(0.2, 0.1, 0.2, 25.0, 15.0), 0.0, new Catch(0.05, 0.0, 10.0, 15.0, true));
        var pull = new HandDrive(30.0, 2.5, 0.04, new Stop(0.15, 0.05, 3.0, 30.0, 15.0), 0.0, new Catch(0.05, 0.0, 10.0, 15.0, true));
        var rod = new ChainRodEnd(motion, new StrokeHands(drive, pull, 0.3), Up);
        rod.Start(Straight(chain, -1.3), new double[chain.Links + 2]);
        var books = new RodBooks(rod);
        Run(rod, h, 0.5, Load, t => books.Book(Load(t)));
        return books.OpenJ / rod.Work.HandsJ;
    }

    [Fact]
    public void A_level_stroke_is_an_upright_one_without_weight()
    {
        RodChain chain = Chain(30.0, 0.05);
        ChainRodEnd up = Stroke(Up), side = Stroke(Side);
        Assert.Equal(up.Now.Q, side.Now.Q);
        Assert.Equal(up.Now.V, side.Now.V);
        Assert.Equal(up.TipNow.X, side.TipNow.X);
        Assert.Equal(up.TipNow.Z - 1.2, side.TipNow.Y, 1e-14);
        Assert.Equal(1.2, side.TipNow.Z);

        ChainRodEnd Stroke(StrokeFrame frame)
        {
            ChainRodEnd rod = End(Motion(chain, 2e-3, 0.1, 1e9), new HandDrive(25.0, 14.0, 0.04, Never, 0.0, Still), frame);
            rod.Start(Straight(chain, -1.3), new double[chain.Links + 2]);
            Run(rod, 1e-3, 0.2, t => Load(t).X * new Vec3(1.0, 0.0, 0.0) - (2.0 * frame.Square));
            return rod;
        }
    }

    [Theory]
    [InlineData(StrokePlane.Up)]
    [InlineData(StrokePlane.Side)]
    public void Each_pass_says_where_its_tip_will_be_under_any_pull(StrokePlane plane)
    {
        var frame = StrokeFrame.Of(plane, 1.2);
        RodChain chain = Chain(30.0, 0.05);
        ChainRodEnd rod = End(Motion(chain, 2e-3, 0.1, 3.0), new HandDrive(25.0, 14.0, 0.04, Never, 0.0, Still), frame);
        rod.Start(Straight(chain, -1.3), new double[chain.Links + 2]);
        Run(rod, 1e-3, 0.1, Load);
        var step = Bdf2.Step(1e-3, 1e-3);
        Vec3 force = (-30.0 * frame.Away) + (7.0 * frame.Square);
        rod.Guess(step, 0.101);
        for (int pass = 0; pass < 10; pass++)
        {
            rod.Begin(step);
            rod.Finish(step, force);
        }

        LineEnd end = rod.Begin(step);
        Vec3 v = end.FreeVelocity + (step.Q * end.Yield(force));
        Vec3 x = end.FreePosition + (step.Q * step.Q * end.Yield(force));
        rod.Finish(step, force);
        rod.Commit();

        // The passes have settled: levers at guess and end are the same.
        Assert.Equal(0.0, (x - rod.TipNow).Length, 1e-9);
        Assert.Equal(0.0, (v - rod.TipVelocityNow).Length, 1e-6);
        Assert.Equal(0.0, end.Yield(Vec3.Cross(frame.Away, frame.Square)).Length, 1e-12);
    }

    // A line that comes tight: from 0 to 10 N toward the fish between 60 and 160 ms.
    private static Vec3 Load(double t)
    {
        double s = Math.Clamp((t - 0.06) / 0.1, 0.0, 1.0);
        return new Vec3(10.0 * s * s * (3.0 - (2.0 * s)), 0.0, 0.0);
    }

    private static void Run(ChainRodEnd rod, double h, double until, Func<double, Vec3> force, Action<double>? after = null)
    {
        Bdf2 step = Bdf2.BackwardEuler(h);
        for (int i = 1; i <= (int)Math.Round(until / h); i++)
        {
            rod.Guess(step, i * h);
            for (int pass = 0; pass < 2; pass++)
            {
                rod.Begin(step);
                rod.Finish(step, force(i * h));
            }

            rod.Commit();
            after?.Invoke(i * h);
            step = Bdf2.Step(h, h);
        }
    }

    private static double[] Straight(RodChain chain, double angle) => [0.0, .. Enumerable.Repeat(angle, chain.Links + 1)];

    private static RodChain Chain(double stiffness, double massPerLength) =>
        RodChain.Build(new RodTaper(Length, stiffness, massPerLength, 0.25, 3.0, 1.5, 0.011), 8);

    private static ChainMotion Motion(RodChain chain, double beta, double handInertia, double pushed) =>
        new(chain, beta, new HandInertia(handInertia, pushed), new RodAir(0.0, 0.0, 0.0), 0.0);

    private static ChainRodEnd End(ChainMotion motion, HandDrive turning, StrokeFrame? frame = null) =>
        new(motion, new StrokeHands(turning, Idle, 1e9), frame ?? Up);
}
