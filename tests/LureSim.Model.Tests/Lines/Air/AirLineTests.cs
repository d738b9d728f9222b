using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Air;
using LureSim.Model.Media;
using LureSim.Model.Reels;
using LureSim.Model.Rods;

namespace LureSim.Model.Tests.Lines.Air;

/// <summary>Single forces on a line in the air, by hand, over a step too short for anything to move.</summary>
public sealed class AirLineTests
{
    // The laws are read from tables, within 2e-4 of them.
    private const double Table = 2e-4;

    private const double Instant = 1e-9, Diameter = 0.3e-3, Mu = 7e-5, Ea = 3000.0;

    // U(z) = U10 ln(z/z0)/ln(10/z0) with z0 = 0.2 mm: 9.981, 9.512 and 8.513 m/s at 9.8, 5.9 and 2 m. A node at rest on a line straight up and down
    // is pushed by 1/2 rho d Cd W^2 of its length; the last one feels the air on half its own and a third of the last segment.
    [Fact]
    public void Every_node_feels_the_wind_of_its_own_height()
    {
        var air = new AirSpec(WindSpeedMS: 10.0, WindFromRad: Math.PI);
        AirLine line = Vertical(air, spacing: 3.9);
        Assert.Equal([9.8, 5.9, 2.0], line.Z.Take(3), (a, b) => Math.Abs(a - b) < 1e-12);
        Look(line);
        AirState state = AirModel.Evaluate(air);
        double Push(double wind) => 0.5 * state.DensityKgM3 * Diameter * wind * wind * CylinderDrag.Cd(wind * Diameter / state.KinematicViscosityM2S);
        double z0 = Math.Log(10.0 / 2e-4), six = 10.0 * Math.Log(5.9 / 2e-4) / z0, two = 10.0 * Math.Log(2.0 / 2e-4) / z0;
        Assert.Equal(9.512, six, 1e-3);
        Assert.Equal(8.513, two, 1e-3);
        Assert.Equal(Push(six) / Mu, line.Ax[1], Table * line.Ax[1]);
        Assert.Equal(Push(two) * (1.95 + (2.0 / 3.0)) / (Mu * 3.95), line.Ax[2], Table * line.Ax[2]);
        Assert.Equal(0.0, line.Az[1], 1e-8);
    }

    // The lure at 9.8 m: 1/2 rho CdA W^2 on lure and half a segment, of which the segment takes its own part.
    [Fact]
    public void The_lure_is_blown_by_its_drag_area()
    {
        var air = new AirSpec(WindSpeedMS: 10.0, WindFromRad: Math.PI);
        AirLine line = Vertical(air, spacing: 3.9, cdA: 1e-3);
        Look(line);
        AirState state = AirModel.Evaluate(air);
        double wind = 10.0 * Math.Log(9.8 / 2e-4) / Math.Log(10.0 / 2e-4), cd = CylinderDrag.Cd(wind * Diameter / state.KinematicViscosityM2S);
        double force = 0.5 * state.DensityKgM3 * wind * wind * (1e-3 + (Diameter * cd * 1.95));
        Assert.Equal(force / (0.010 + (1.95 * Mu)), line.Ax[0], Table * line.Ax[0]);
    }

    // The line between reel and tip stretches too: T = EA s/(out + inside).
    [Theory]
    [InlineData(0.0)]
    [InlineData(1.7)]
    public void A_held_line_is_as_stiff_as_its_length_from_reel_to_lure(double inside)
    {
        const double length = 3.0, stretch = 0.006;
        AirLine line = Chord(length, stretch, inside, 0.0, 0.0);
        Look(line);
        Assert.Equal(Ea * stretch / (length + inside), line.TipTensionN, 1e-6);

        // And it pulls lure and line toward the tip at the left with that force.
        Assert.Equal(-line.TipTensionN / (0.010 + (Mu * length)), line.Ax[0], 1e-3);
    }

    // Kelvin-Voigt: stretched 2e-3 of its length, far over the first 1e-4 in which the dashpot rises, and growing at 0.5 m/s: T = k (s + tau v).
    [Fact]
    public void A_line_that_is_being_stretched_pulls_by_its_dashpot_too()
    {
        const double length = 3.0, stretch = 0.006, tau = 0.002;
        AirLine line = Chord(length, stretch, 1.0, tau, 0.5);
        Look(line);
        Assert.Equal(Ea / 4.0 * (stretch + (tau * 0.5)), line.TipTensionN, 1e-5);
    }

    // Along the line as it flies: 1/2 rho pi d cf u^2 per length, cf = 0.37 Re^-0.61.
    [Fact]
    public void A_line_that_runs_along_itself_is_held_by_the_friction_of_a_drawn_thread()
    {
        const double speed = 20.0, length = 3.0;
        AirLine line = Chord(length, -0.5, 0.0, 0.0, speed, friction: 0.8);
        Look(line);
        AirState state = AirModel.Evaluate(new AirSpec());
        double cf = 0.8 * 0.37 * Math.Pow(speed * Diameter / state.KinematicViscosityM2S, -0.61);
        double force = 0.5 * state.DensityKgM3 * Math.PI * Diameter * cf * speed * speed * length;
        Assert.Equal(0.0, line.TipTensionN);
        Assert.Equal(-force / (0.010 + (Mu * length)), line.Ax[0], Table * force / 0.010);
    }

    // 30 m of line drawn out straight, a node each 0.5 m: near the tip they stay, beyond 3 m pairs become one, up to 2 m. What flew keeps its momentum,
    // m v of the lure and mu times the line's own speeds; and the whole length is that of the line given.
    [Fact]
    public void Far_segments_become_one_and_keep_momentum_and_length()
    {
        LineSpec spec = Spec(0.0);
        var line = new AirLine(spec, new LineAir(new AirSpec(), spec, 0.0, 0.0), new CastLineMass(0.010, Mu), 0.0, 0.0, 0.5);
        (line.X[0], line.RestM[0], line.Vx[0]) = (0.7, 0.7, 20.0);
        double given = 0.7, before = Momentum(line);
        for (int i = 0; i < 5900; i++)
        {
            // Everything moves out at 20 m/s but the lure, which is thrown a little faster; line of that speed joins at the tip.
            const double h = 2.5e-4;
            for (int p = 0; p < line.Count; p++)
            {
                line.X[p] += h * 20.0;
            }

            line.RestM[line.Count - 1] += h * 20.0;
            given += h * 20.0;
            line.Grow(0.0, 0.0, 0.0, 0.0, 20.0);
        }

        double sum = 0.0, beyond = 0.0;
        for (int p = 0; p < line.Count; p++)
        {
            sum += line.RestM[p];
        }

        Assert.Equal(given, sum, 1e-9);
        Assert.InRange(line.Count, 18, 40);
        for (int p = line.Count - 1; p >= 0; p--)
        {
            beyond += line.RestM[p];
            Assert.InRange(line.RestM[p], 0.1, Math.Max(0.76, (beyond + 2.0) / 6.0));
        }

        Assert.True(line.RestM[1] > 1.4);
        Assert.Equal(before + (Mu * 20.0 * (given - 0.7)), Momentum(line), 1e-9);
    }

    // Five nodes of different speeds, the middle one a millimetre off the line: taken out, the momentum of all is what it was, and the new segment lacks to
    // being taut what the two lacked. A kink of a tenth of the length stays.
    // The chord is 4 micrometres shorter than the way, which weigh 3e-10 kg.
    [Fact]
    public void A_node_taken_out_leaves_momentum_and_slack()
    {
        AirLine line = Five(1e-3);
        double before = Momentum(line, line.Vx), up = Momentum(line, line.Vz), slack = line.RestM[1] + line.RestM[2] - Distance(line, 1, 2) - Distance(line, 2, 3);
        Assert.True(line.Merge(2));
        Assert.Equal(4, line.Count);
        Assert.Equal((before, up), (Momentum(line, line.Vx), Momentum(line, line.Vz)), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-8);
        Assert.Equal(slack, line.RestM[1] - Distance(line, 1, 2), 1e-12);
        Assert.False(Five(0.1).Merge(2));
    }

    private static AirLine Five(double off)
    {
        LineSpec spec = Spec(0.0);
        var line = new AirLine(spec, new LineAir(new AirSpec(), spec, 0.0, 0.0), new CastLineMass(0.010, Mu), 0.0, 0.0, 0.5);
        (line.X[0], line.RestM[0]) = (2.7, 2.7);
        for (int i = 0; i < 4; i++)
        {
            line.Grow(0.0, 0.0, 0.0, 0.0, 0.0);
        }

        for (int p = 0; p < 5; p++)
        {
            (line.Vx[p], line.Vz[p], line.RestM[p]) = (20.0 + (p * p), 3.0 - p, line.RestM[p] * (1.0 + (0.01 * p)));
        }

        line.Z[2] = off;
        return line;
    }

    private static double Distance(AirLine line, int a, int b) => Math.Sqrt(Math.Pow(line.X[b] - line.X[a], 2) + Math.Pow(line.Z[b] - line.Z[a], 2));

    // The last node carries its segment whole; with everything at one speed it does not matter where the line's mass is booked.
    private static double Momentum(AirLine line) => Momentum(line, line.Vx);

    private static double Momentum(AirLine line, double[] speed)
    {
        double sum = line.LureKg * speed[0];
        for (int p = 0; p < line.Count; p++)
        {
            double near = p > 0 ? 0.5 * line.RestM[p - 1] : 0.0, own = p == line.Count - 1 ? line.RestM[p] : 0.5 * line.RestM[p];
            sum += Mu * (near + own) * speed[p];
        }

        return sum;
    }

    // Two steps: a line learns its direction in the first, and is held by the air along it from the second on.
    private static void Look(AirLine line)
    {
        var cast = AirStep.AtRest(new TipLink(), line, Reel());
        cast.Step(Instant);
        cast.Step(Instant);
    }

    private static LineSpec Spec(double tau) => new(LineMaterial.Braid, Diameter, Mu, 970.0, Ea, tau, 0.0, SurfaceFilm.Wetted, 200.0);

    private static FixedSpool Reel() => new(new FixedSpoolSpec(2.0), Mu, 1e-5, 0.02);

    /// <summary>Lure at rest 9.8 m over a tip at the origin, on a line with nodes; no weight.</summary>
    private static AirLine Vertical(AirSpec air, double spacing, double cdA = 0.0)
    {
        LineSpec spec = Spec(0.0);
        var line = new AirLine(spec, new LineAir(air, spec, 0.0, cdA), new CastLineMass(0.010, Mu), 0.0, 0.0, spacing);
        (line.Z[0], line.RestM[0]) = (9.8, 9.8);
        line.Grow(0.0, 0.0, 0.0, 0.0, 0.0);
        line.Grow(0.0, 0.0, 0.0, 0.0, 0.0);
        return line;
    }

    /// <summary>Lure to the right of a tip at the origin on a straight line of that rest length, stretched or loose, moving outward.</summary>
    private static AirLine Chord(double length, double stretch, double inside, double tau, double speed, double friction = 0.0)
    {
        LineSpec spec = Spec(tau);
        var line = new AirLine(
            spec, new LineAir(new AirSpec(), spec, friction, 0.0), new CastLineMass(0.010, Mu), inside, 0.0, double.PositiveInfinity);
        (line.X[0], line.RestM[0], line.Vx[0]) = (length + stretch, length, speed);
        return line;
    }
}
