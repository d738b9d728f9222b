using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Rods;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Cast;

/// <summary>Hands and rod alone: closed forms.</summary>
public sealed class SwingTests
{
    private const double Length = 1.7, Rho = 1.2, Cd = 1.1;
    private static readonly Stop Never = new(1e9, 1.0, 1.0, 1.0, 10.0);
    private static readonly Catch Still = new(1.0, 0.0, 0.0, 10.0, false);

    [Theory]
    [InlineData(1e-3)]
    [InlineData(2.5e-4)]
    public void Hands_spin_a_rigid_rod_up_as_the_closed_form_says(double h)
    {
        const double torque = 40.0, top = 13.0, hands = 0.15;
        RodChain chain = Chain(1e6, 0.03);
        ChainRod rod = Swing(chain, new HandDrive(torque, top, 1e-9, Never, 0.0, Still), hands, 1e-4);
        Steps(rod, h, 0.15);
        double inertia = hands + RodModes.Compute(chain, 0.0).RigidInertiaKgM2;
        double exact = top * (1.0 - Math.Exp(-torque * 0.15 / (inertia * top)));

        // Second order in h; the rate torque/(I w0) is 16 per second. The rod is stiff, and damped so that the
        // sudden start leaves no ringing.
        Assert.Equal(1.0, rod.V[1] / exact, Math.Pow(16.0 * h, 2) + 1e-5);
    }

    [Fact]
    public void Tip_of_a_suddenly_turned_one_mode_rod_reaches_twice_the_butt_speed()
    {
        // Heavy tip: one mode (1e-3 of the rod's mass is left in others); small turn, so that the exact chain is nearly linear.
        RodChain chain = RodChain.Build(new RodTaper(Length, 20.0, 1e-3, 0.25, 3.0, 1.5, 0.0), 8, 0.5);
        ChainRod rod = Swing(chain, new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still), 1e9, 0.0);

        // The second link turns back so that everything beyond the hand's own piece starts at rest.
        rod.V[1] = 1e-3;
        rod.V[2] = -1e-3 * chain.LengthM[0] / chain.LengthM[1];
        double peak = 0.0;
        for (int i = 0; i < 4000; i++)
        {
            Step(rod, 5e-4, i * 5e-4);
            (_, _, double vx, _) = rod.Tip();
            peak = Math.Max(peak, vx / (rod.V[1] * Length));
        }

        Assert.InRange(peak, 1.98, 2.005);
    }

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void Free_swing_keeps_its_energy_and_the_error_falls_with_the_square_of_the_step(int links)
    {
        double coarse = EnergyDrift(links, 1e-3), fine = EnergyDrift(links, 5e-4);
        Assert.InRange(Math.Abs(fine), 0.0, 1e-3);
        Assert.InRange(Math.Abs(coarse / fine), 3.0, 6.0);
    }

    [Fact]
    public void Rod_damping_is_the_ratio_asked_for()
    {
        const double zeta = 0.05;
        RodChain chain = Chain(30.0, 0.05);
        double omega = RodModes.Compute(chain, 0.0).AngularFrequency(0);
        ChainRod rod = Swing(chain, new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still), 1e9, 2.0 * zeta / omega);
        RodShape bent = RodStatics.Solve(chain, 0.0, 0.0, -0.02);
        for (int i = 0; i <= chain.Links; i++)
        {
            rod.Q[i + 1] = (0.5 * Math.PI) - bent.AngleRad[i];
        }

        // Envelope over three periods of the first mode; the static shape holds a few per cent of higher ones, which die sooner.
        double period = 2.0 * Math.PI / (omega * Math.Sqrt(1.0 - (zeta * zeta))), h = period / 2000.0;
        Steps(rod, h, period);
        double first = rod.Tip().Z;
        Steps(rod, h, 3.0 * period);
        Assert.Equal(zeta, Math.Log(first / rod.Tip().Z) / (2.0 * Math.PI * 3.0), 0.002);
    }

    [Fact]
    public void Rod_of_many_links_does_not_limit_the_step()
    {
        // The fastest link mode here decays at 1e6 per second and more; an explicit step would have to be below 2e-6 s.
        ChainRod rod = Swing(Chain(30.0, 0.05, 24), new HandDrive(40.0, 13.0, 0.06, Never, 0.0, Still), 0.15, 2e-3);
        Steps(rod, 1e-3, 0.25);
        Assert.InRange(rod.V[1], 5.0, 13.0);
        Assert.InRange(rod.KineticJ() + rod.SpringJ() + rod.Work.DampingJ, 0.99 * rod.Work.HandsJ, 1.01 * rod.Work.HandsJ);
    }

    // A rigid cone of 11 mm at the hand and a quarter of it at the tip, turned at w: 1/2 rho Cd w^3 times the integral of d s^3, D L^4 (1/4 - 3/20).
    // Strips at the links' middles miss s^3 by half a link squared: 0.5/41^2 = 3e-4.
    [Fact]
    public void A_turned_rod_gives_the_air_the_strip_integral_of_its_own_speed()
    {
        const double w = 10.0, diameter = 0.011, h = 1e-5;
        ChainRod rod = InAir(diameter, 1e9, 0.0);
        for (int i = 1; i < rod.V.Length; i++)
        {
            rod.V[i] = w;
        }

        Step(rod, h, 0.0);
        double power = 0.5 * Rho * Cd * w * w * w * diameter * Math.Pow(Length, 4) * 0.10;
        Assert.Equal(power, rod.Work.AirJ / h, 2e-3 * power);
    }

    // At rest upright in a wind W: torque about the hand 1/2 rho Cd W^2 times the integral of d s, D L^2 (1/2 - 1/4), turns hands and rod forward.
    [Theory]
    [InlineData(8.0)]
    [InlineData(-8.0)]
    public void Wind_turns_a_resting_rod_by_the_strip_integral(double wind)
    {
        const double diameter = 0.011, hands = 0.15;
        ChainRod rod = InAir(diameter, hands, wind);
        Step(rod, 1e-2, 0.0);
        double torque = 0.5 * Rho * Cd * wind * Math.Abs(wind) * diameter * Length * Length * 0.25;
        double inertia = hands + RodModes.Compute(Chain(1e6, 0.03), 0.0).RigidInertiaKgM2;

        // The rod is stiff, not rigid: its first mode turns 1e4 rad/s, and over a step of 10 ms 4/(w h)^2 of it are left. Strips: 1e-3.
        Assert.Equal(torque / inertia, rod.A[1], 0.003 * Math.Abs(torque / inertia));
    }

    private static double EnergyDrift(int links, double h)
    {
        // Violent: a bent rod thrown round by its own speed, no losses.
        ChainRod rod = Swing(Chain(30.0, 0.05, links), new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still), 0.15, 0.0);
        RodShape bent = RodStatics.Solve(Chain(30.0, 0.05, links), 0.0, 0.0, -6.0);
        for (int i = 0; i <= links; i++)
        {
            rod.Q[i + 1] = (0.5 * Math.PI) - bent.AngleRad[i];
            rod.V[i + 1] = -4.0;
        }

        double start = rod.KineticJ() + rod.SpringJ();
        Steps(rod, h, 0.1);
        return ((rod.KineticJ() + rod.SpringJ()) / start) - 1.0;
    }

    private static void Steps(ChainRod rod, double h, double until)
    {
        for (int i = 0; i < (int)Math.Round(until / h); i++)
        {
            Step(rod, h, i * h);
        }
    }

    private static void Step(ChainRod rod, double h, double time)
    {
        for (int pass = 0; pass < 2; pass++)
        {
            rod.Free(new Midpoint(h), time);
            rod.Pull(0.0, 0.0);
        }

        rod.Advance(new Midpoint(h));
    }

    private static RodChain Chain(double stiffness, double massPerLength, int links = 8) =>
        RodChain.Build(new RodTaper(Length, stiffness, massPerLength, 0.25, 3.0, 1.5, 0.0), links);

    private static ChainRod InAir(double diameter, double handInertia, double wind)
    {
        RodChain chain = RodChain.Build(new RodTaper(Length, 1e6, 0.03, 0.25, 3.0, 1.5, diameter), 40);
        var still = new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still);
        return new ChainRod(new ChainMotion(chain, 0.0, new HandInertia(handInertia, 1e9), new RodAir(Rho, Cd, wind), 0.0), still, still);
    }

    private static ChainRod Swing(RodChain chain, HandDrive turning, double handInertia, double beta) => new(
        new ChainMotion(chain, beta, new HandInertia(handInertia, 1e9), new RodAir(0.0, 0.0, 0.0), 0.0), turning, new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still));
}
