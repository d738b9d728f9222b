using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Air;
using LureSim.Model.Reels;
using LureSim.Model.Rods;
using LureSim.Numerics.Steps;

namespace LureSim.Validation.CastChecks;

/// <summary>What the rod gives the lure: closed forms for a rigid rod and for one that bends.</summary>
public static class RodSpeed
{
    private const double Length = 1.8;
    private static readonly Stop Never = new(1e9, 1.0, 1.0, 1.0, 10.0);
    private static readonly Catch Still = new(1.0, 0.0, 0.0, 10.0, false);

    [PublishedCheck]
    public static Check RigidRod()
    {
        const double omega = 12.0, overhang = 0.5;
        double exact = omega * (Length + overhang);
        (double speed, double off, double straight) = Sling(omega, overhang, 2.5e-4);
        return new Check("P7", "Rigid rod turned at a constant speed: the lure leaves at omega (L + overhang), square to the rod, and flies straight",
            "derived: steady circular motion, then none but inertia; no air, no gravity, a reel without resistance",
            "First order in the step, since the line's dashpot acts half a step late (ladder); at 0.25 ms that and the line's stretch leave 1e-4.",
            [
                new Row("launch speed", "m/s", exact, speed, 3e-4, Tol.Relative),
                new Row("direction against the square to the rod", "rad", 0.0, off, 1e-3, Tol.Absolute),
                new Row("flown in 0.3 s over launch speed times 0.3 s", "-", 1.0, straight, 3e-4, Tol.Absolute),
            ],
            new Ladder("1/dt, 1/s", "launch speed, relative, against dt = 0.0625 ms",
                [.. new[] { 2e-3, 1e-3, 5e-4 }.Select(h => (1.0 / h, Math.Abs((Sling(omega, overhang, h).Speed / Sling(omega, overhang, 6.25e-5).Speed) - 1.0)))],
                0.9, "order 1, of the late dashpot; the comparison with a run that has an eighth of the finest error shows 1.1 or more"));
    }

    [PublishedCheck]
    public static Check RampedButt()
    {
        var rows = new List<Row>();
        foreach ((double ratio, double exact) in new[]
        {
            (0.25, 1.90032), (0.5, 1.63662), (0.75, 1.30011), (1.0, 1.0), (1.5, 1.21221), (2.5, 1.12732),
        })
        {
            rows.Add(new Row($"peak tip speed over butt speed, ramp {ratio} of the period", "-", exact, Gain(ratio), 5e-4, Tol.Absolute));
        }

        return new Check("B8b", "The same with the cast's own step: butt turned up to speed in a ramp, one-mode rod",
            "1 + |sin(pi r)|/(pi r); Chopra, Dynamics of Structures, sec. 4.5; Biggs 1964 (from memory)",
            "The rod still weighs a thousandth of its tip mass, which moves its share in the mode by up to 5e-4; steps of 1/2000 of the period add 1e-6. "
            + "Turns of a milliradian keep the large-rotation terms out.", rows);
    }

    // Lure slung round at a steady speed, let go after a quarter turn.
    private static (double Speed, double Off, double Straight) Sling(double omega, double overhang, double h)
    {
        const double kg = 0.01, release = 0.1;
        RodChain chain = Chain(1e7, 0.03);
        var throwing = Bench.Launch(Bench.Nothing, Bench.Free(kg), kg, 0.0, 0.0, 0.0, double.PositiveInfinity, 0.0);
        ChainRod rod = Swing(chain, 0.0);
        AirLine line = throwing.Line;
        ReelFeed reel = throwing.Reel;
        var cast = new AirStep(rod, line, reel);
        (double sin, double cos) = Math.SinCos(-1.2);
        for (int i = 1; i < rod.Q.Length; i++)
        {
            (rod.Q[i], rod.V[i]) = (-1.2, omega);
        }

        // Stretched by the pull that holds it on its circle from the start.
        double radius = Length + overhang, stretch = kg * omega * omega * radius * overhang / Bench.Nothing.AxialStiffnessN;
        (line.X[0], line.Z[0], line.RestM[0]) = ((radius + stretch) * sin, (radius + stretch) * cos, overhang);
        (line.Vx[0], line.Vz[0]) = (omega * radius * cos, -omega * radius * sin);
        reel.Locked = true;
        Steps(cast, h, release);
        double speed = Math.Sqrt((line.Vx[0] * line.Vx[0]) + (line.Vz[0] * line.Vz[0]));
        double off = Math.Atan2(-line.Vz[0], line.Vx[0]) - rod.Q[1];
        (double x, double z) = (line.X[0], line.Z[0]);
        cast.Release();
        Steps(cast, h, 0.3);
        double flown = Math.Sqrt(Math.Pow(line.X[0] - x, 2) + Math.Pow(line.Z[0] - z, 2));
        return (speed, off, flown / (speed * 0.3));
    }

    private static void Steps(AirStep cast, double h, double duration)
    {
        for (int i = 0; i < (int)Math.Round(duration / h); i++)
        {
            cast.Step(h);
        }
    }

    // A torque on very heavy hands ramps the butt up; then the same state goes on without torque.
    private static double Gain(double ratio)
    {
        const double hands = 1e9, turn = 1e-3;
        RodChain chain = RodChain.Build(new RodTaper(Length, 20.0, 1e-3, 0.25, 3.0, 1.5, 0.0), 16, 0.5);
        double period = 2.0 * Math.PI / RodModes.Compute(chain, 0.0).AngularFrequency(0), ramp = ratio * period, h = period / 2000.0;
        ChainRod driven = Swing(chain, hands * turn / ramp), free = Swing(chain, 0.0);
        for (int i = 0; i < (int)Math.Round(ramp / h); i++)
        {
            Step(driven, h, i * h);
        }

        free.CopyFrom(driven);
        double peak = 0.0;
        for (int i = 0; i < 2000; i++)
        {
            Step(free, h, i * h);
            (_, _, double vx, double vz) = free.Tip();
            peak = Math.Max(peak, Math.Sqrt((vx * vx) + (vz * vz)));
        }

        return peak / (turn * Length);
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

    private static RodChain Chain(double stiffness, double massPerLength) =>
        RodChain.Build(new RodTaper(Length, stiffness, massPerLength, 0.25, 3.0, 1.5, 0.0), 8);

    private static ChainRod Swing(RodChain chain, double torque) => new(
        new ChainMotion(chain, 0.0, new HandInertia(1e9, 1e9), new RodAir(0.0, 0.0, 0.0), 0.0), new HandDrive(torque, 1e9, 1e-9, Never, 0.0, Still),
        new HandDrive(0.0, 1e9, 1.0, Never, 0.0, Still));
}
