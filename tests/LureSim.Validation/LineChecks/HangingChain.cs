using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Validation.LineChecks;

/// <summary>A line hanging from one end and swinging, with and without a weight at the other.</summary>
public static class HangingChain
{
    private const double Length = 1.0, Mass = 0.01;

    [PublishedCheck]
    public static Check BareFrequencies()
    {
        double[] exact = [1.2024128, 2.7600391, 4.3268640];
        return new(
            "S3", "Frequencies of a line hanging from one end, by the line solver (extrapolated from 40 and 80 segments)",
            "Bernoulli; omega_n = j_0n/2 sqrt(g/L) with the zeros of J_0; values recomputed to 8 digits",
            "Discretisation: the error falls as 1/N^2 (ladder); what extrapolation leaves is of order 1/N^4, 6e-5 for the third mode, whose waves shorten toward the free end.",
            [.. exact.Select((w, n) => new Row($"omega_{n + 1} sqrt(L/g)", "-", w, Limit(40, 0.0, w), 1e-4, Tol.Relative))],
            new("N", "omega_2, relative",
                [.. new[] { 10, 20, 40, 80 }.Select(n => ((double)n, Math.Abs((Frequency(n, 0.0, exact[1]) / exact[1]) - 1.0)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));
    }

    [PublishedCheck]
    public static Check FrequenciesWithEndMass()
    {
        (double Mu, double[] Omega)[] table =
        [
            (0.1, [1.157394, 2.816046, 4.714506]), (0.5, [1.086662, 3.419895, 6.280329]), (1, [1.056422, 4.081687, 7.737503]),
            (2, [1.033477, 5.155241, 9.994278]), (10, [1.007934, 10.27643, 20.40413]),
        ];
        IEnumerable<Row> Of((double Mu, double[] Omega) r) => r.Omega.Select((w, n) =>
            new Row($"omega_{n + 1} sqrt(L/g), end mass {r.Mu} of the line's", "-", w, Limit(20, r.Mu, w), 2e-4, Tol.Relative));
        return new(
            "S3", "Frequencies of a line hanging with a weight at its end, by the line solver (extrapolated from 20 and 40 segments)",
            "Frequency equation in Bessel functions (published; abstract seen); values recomputed",
            "Discretisation, as for the bare line; the third mode at 20 segments has 10 of them per half wave.",
            [.. table.SelectMany(Of)],
            new("N", "omega_2 at end mass 1, relative",
                [.. new[] { 5, 10, 20, 40 }.Select(n => ((double)n, Math.Abs((Frequency(n, 1.0, 4.081687) / 4.081687) - 1.0)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));
    }

    private static double Limit(int coarse, double mu, double wanted) =>
        Richardson.Limit(Frequency(coarse, mu, wanted), Frequency(2 * coarse, mu, wanted));

    /// <summary>omega sqrt(L/g) of the mode near a wanted one, from the zero crossings of its own shape.</summary>
    private static double Frequency(int segments, double mu, double wanted)
    {
        var mesh = new LineMesh(BenchMedia.Line(Mass / Length, 1e5), null, Length, segments);
        double omega = wanted * Math.Sqrt(BenchMedia.Gravity / Length);
        Vec3 Straight(double s) => new(0.0, 0.0, BenchMedia.High - (s * Length));
        var bench = new LineBench(mesh, BenchMedia.Vacuum, Straight);
        double[] shape = Shape(mesh, mu, wanted);
        double dt = 2.0 * Math.PI / omega / 2000.0;
        double end = mesh.Mass[segments] + (mu * Mass);
        var weight = new FreeEnd(end, new Vec3(0.0, 0.0, -end * BenchMedia.Gravity));
        var roof = LedEnd.Still(Straight(0.0));
        bench.Run(dt, 50 * dt, roof, weight);

        // 1e-4 of the length: the finite swing changes the frequency by 1e-8.
        bench.SetMotion(i => new Vec3(1e-4 * omega * shape[i], 0.0, 0.0));
        var crossing = new ZeroCrossings();
        bench.Run(dt, 3.2 * 2.0 * Math.PI / omega, roof, weight, () => crossing.Add(bench.Time, Projection(bench, shape, end)));
        return crossing.Omega * Math.Sqrt(Length / BenchMedia.Gravity);
    }

    private static double Projection(LineBench bench, double[] shape, double end)
    {
        double sum = end * shape[^1] * bench.Now.X[shape.Length - 1];
        for (int i = 1; i < shape.Length - 1; i++)
        {
            sum += bench.Mesh.Mass[i] * shape[i] * bench.Now.X[i];
        }

        return sum;
    }

    /// <summary>The chain's own mode nearest to a frequency, so that no other mode blurs the zero crossings.</summary>
    private static double[] Shape(LineMesh mesh, double mu, double wanted)
    {
        double w0 = wanted, w1 = 0.999 * wanted, f0 = March(mesh, mu, w0).Residual;
        for (int k = 0; k < 30 && Math.Abs(w1 - w0) > 1e-13; k++)
        {
            double f1 = March(mesh, mu, w1).Residual;
            (w0, w1, f0) = (w1, w1 - (f1 * (w1 - w0) / (f1 - f0)), f1);
        }

        double[] y = March(mesh, mu, w1).Shape;
        double top = y.Max(Math.Abs);
        return [.. y.Select(v => v / top)];
    }

    /// <summary>(T y')' + omega^2 m y = 0 marched from the roof, link by link; what is left over at the end mass.</summary>
    private static (double[] Shape, double Residual) March(LineMesh mesh, double mu, double omega)
    {
        int n = mesh.Segments;
        var y = new double[n + 1];
        double l = Length / n, w2 = omega * omega * BenchMedia.Gravity / Length;
        double below = ((mu + 1.0) * Mass) - mesh.Mass[0], pull = below * BenchMedia.Gravity;
        for (int i = 0; i < n; i++)
        {
            y[i + 1] = y[i] + (l * pull / (below * BenchMedia.Gravity));
            double mass = mesh.Mass[i + 1] + (i + 1 < n ? 0.0 : mu * Mass);
            pull -= w2 * mass * y[i + 1];
            below -= mesh.Mass[i + 1];
        }

        return (y, pull);
    }
}
