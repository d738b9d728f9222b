using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Model.Tests.Lines.Chain;

/// <summary>Line that enters the first segment, and what becomes of it.</summary>
public sealed class GivenLineTests
{
    private const double Ea = 500.0, Tau = 0.01, Mu = 1e-6;

    private static readonly LineSpec Line = new(LineMaterial.Braid, 1e-3, Mu, 1200.0, Ea, Tau, 0.0, SurfaceFilm.Dry, 1e9);

    private static readonly LineMedium Air = new(new WaterState(1000.0, 1e-3, 0.072), new AirState(1e-6, 1.8e-5), DragCurve.Constant(1.2), GravityMS2: 0.0);

    // Three main segments of half a metre and a leader; 20 cm are given: 10 cm more for each end of the first segment.
    [Fact]
    public void Given_line_lengthens_the_first_segment_alone()
    {
        LineMesh mesh = new(Line, new LeaderSpec(Line, 0.2), 1.7, 4), other = new(Line, new LeaderSpec(Line, 0.2), 1.7, 4);
        mesh.Give(0.2);
        Assert.Equal(1.9, mesh.LengthM, 1e-15);
        Assert.Equal(0.2, mesh.TipExtraM, 1e-15);
        Assert.Equal(0.5, mesh.ShortestMainM, 1e-15);
        Near([0.7, 0.5, 0.5, 0.2], mesh.Rest);
        Near([Ea / 0.7, Ea / 0.5, Ea / 0.5, Ea / 0.2], mesh.Stiffness);
        Near([Tau * Ea / 0.7, Tau * Ea / 0.5], mesh.Damping);
        Near([Mu * 0.35, Mu * 0.6, Mu * 0.5, Mu * 0.35, Mu * 0.1], mesh.Mass);
        Near([0.35, 0.6, 0.5, 0.35, 0.1], mesh.FilmLength);

        // Set at once it is the same, and without more it is what it was.
        other.SetLength(1.9, 0.2);
        Near(mesh.Rest[..4], other.Rest);
        Near(mesh.Mass[..5], other.Mass);
        Near(mesh.Stiffness[..4], other.Stiffness);
        mesh.SetLength(1.7);
        Near([0.5, 0.5, 0.5, 0.2], mesh.Rest);
        Near([Mu * 0.25, Mu * 0.5, Mu * 0.5, Mu * 0.35, Mu * 0.1], mesh.Mass);
    }

    // A held line whose first segment hands 20 cm/s to all four: nothing comes in or goes out, so it stays as taut as its strain, EA s/L, if the nodes
    // between move toward the tip with what they mark, and the exchange does no work but that on the line that moves with its nodes.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.3)]
    public void Sharing_it_out_leaves_the_tension_as_it_is(double feed)
    {
        const int n = 4;
        const double length = 2.4, extra = 0.4, apart = 2.41, even = 0.2, dt = 1e-3;
        var mesh = new LineMesh(Line, null, length, n);
        var pass = new LinePass(mesh, Air) { FeedMS = feed - even, EvenMS = even };
        LineState now = new(n), end = new(n);
        double strain = apart / length, place = 0.0;
        mesh.SetLength(length, extra);
        for (int i = 0; i <= n; i++)
        {
            now.X[i] = strain * place;
            now.VX[i] = i is 0 or n ? 0.0 : -strain * even * (n - i) / n;
            place += i < n ? mesh.Rest[i] : 0.0;
        }

        mesh.SetLength(length - (dt * feed), extra - (dt * even));
        Bdf2 step = Bdf2.BackwardEuler(dt);
        pass.Begin(step, now, now, end);
        pass.SetDirections(end);
        LineEnd Held(int i) => LineEnd.Prescribed(new Vec3(now.X[i], 0.0, 0.0), Vec3.Zero);
        pass.Solve(step, end, Held(0), Held(n), out _, out _);
        double expected = (Ea * ((apart / mesh.LengthM) - 1.0)) + (Tau * Ea * feed / mesh.LengthM);
        for (int j = 0; j < n; j++)
        {
            // Main segments of 50 cm and a longer one share the rate of winding as their lengths, but are wound alike: 2 % of EA tau V/L.
            Assert.Equal(expected, pass.Solver.Tension[j], 1e-6 + (0.02 * Tau * Ea * feed));
        }

        LinePower power = pass.Power(end);
        Assert.Equal(feed * (pass.Solver.Tension[0] + (0.5 * Ea * (strain - 1.0) * (strain - 1.0))), power.ReelW, 1e-5 + (0.02 * feed * expected));
        Assert.Equal(-Tau * Ea * feed * feed / length, power.StretchW, 1e-6 + (0.02 * Tau * Ea * feed * feed));
    }

    private static void Near(double[] expected, double[] actual)
    {
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual[i], 1e-12 * expected[i]);
        }
    }
}
