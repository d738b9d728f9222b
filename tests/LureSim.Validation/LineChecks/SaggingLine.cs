using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Validation.LineChecks;

/// <summary>
/// A taut line with a little sag, swinging symmetrically in its own plane: stretch and sag together set the frequency
/// (Irvine's lambda^2 = (w L/H)^2 L/(H Le/EA)), from the flat string to the inextensible line.
/// </summary>
public static class SaggingLine
{
    private const double Span = 1.0, Mass = 1.0 / BenchMedia.Gravity;

    // Sag 1/400 of the span: the theory is for flat curves, its error is of the order (w L/H)^2 = 4e-4.
    private const double WeightShare = 0.02, Pull = Mass * BenchMedia.Gravity * Span / WeightShare;

    [PublishedCheck]
    public static Check FirstSymmetricMode()
    {
        (double Lambda2, double W)[] table =
        [
            (1, 1.040200), (5, 1.186499), (10, 1.345125), (20, 1.609536), (4 * Math.PI * Math.PI, 2.0), (100, 2.597185), (400, 2.825864),
        ];
        return new(
            "S4", "First symmetric in-plane frequency of a taut, sagging line, by the line solver (extrapolated from 32 and 64 segments)",
            "Irvine and Caughey 1974, Proc. R. Soc. A 341:299 (equation from memory), its roots recomputed to 7 digits",
            "The theory's own flatness: terms of order (w L/H)^2 = 4e-4 are left out of it.",
            [.. table.Select(r => new Row($"omega L sqrt(m/H)/pi, lambda^2 {r.Lambda2:G4}", "-", r.W, Limit(r.Lambda2), 4e-4, Tol.Relative))],
            new("N", "frequency at lambda^2 = 4 pi^2, relative",
                [.. new[] { 8, 16, 32, 64 }.Select(n => ((double)n, Math.Abs((Frequency(4 * Math.PI * Math.PI, 2.0, n) / 2.0) - 1.0)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));

        double Limit(double lambda2)
        {
            double w = table.First(r => r.Lambda2 == lambda2).W;
            return Richardson.Limit(Frequency(lambda2, w, 32), Frequency(lambda2, w, 64));
        }
    }

    private static double Frequency(double lambda2, double expected, int segments)
    {
        double sag = WeightShare * Span / 8.0;
        double arc = Span * (1.0 + (WeightShare * WeightShare / 24.0));
        double effective = Span * (1.0 + (WeightShare * WeightShare / 8.0));
        double stiffness = lambda2 * Pull * effective / (WeightShare * WeightShare * Span);
        var mesh = new LineMesh(BenchMedia.Line(Mass, stiffness), null, arc / (1.0 + (Pull / stiffness)), segments);
        Vec3 Parabola(double s) => new(Span * s, 0.0, -4.0 * sag * s * (1.0 - s));
        double wave = Math.Sqrt(Pull / Mass);
        var bench = new LineBench(mesh, BenchMedia.LinearDrag(2.0 * Math.PI * wave * Mass), s => Parabola(s) + new Vec3(0.0, 0.0, BenchMedia.High));
        var left = LedEnd.Still(bench.Node(0));
        var right = LedEnd.Still(bench.Node(segments));
        bench.Run(0.3 * Span / segments / wave, 12.0 / wave, left, right);
        double[] rest = [.. bench.Now.Z];
        double pull = bench.Tension(segments / 2);

        // A push of 1e-5 of the sag in the shape of the theory's mode; no fluid from here on.
        bench.Enter(BenchMedia.Vacuum);
        double omega = expected * Math.PI * wave / Span, half = 0.5 * expected * Math.PI;
        double Mode(double s) => 1.0 - (Math.Tan(half) * Math.Sin(2.0 * half * s)) - Math.Cos(2.0 * half * s);
        bool antisymmetricTangent = Math.Abs(Math.Cos(half)) < 1e-6;
        double Shape(double s) => antisymmetricTangent ? Math.Sin(Math.PI * s) : Mode(s);
        double top = Enumerable.Range(0, segments + 1).Max(i => Math.Abs(Shape((double)i / segments)));
        double[] shape = [.. Enumerable.Range(0, segments + 1).Select(i => Shape((double)i / segments) / top)];
        bench.SetMotion(i => new Vec3(0.0, 0.0, 1e-5 * sag * omega * shape[i]));
        var crossing = new ZeroCrossings();
        bench.Run(2.0 * Math.PI / omega / 1500.0, 4.2 * 2.0 * Math.PI / omega, left, right, () =>
            crossing.Add(bench.Time, Enumerable.Range(1, segments - 1).Sum(i => shape[i] * (bench.Now.Z[i] - rest[i]))));
        return crossing.Omega * Span * Math.Sqrt(Mass / pull) / Math.PI;
    }
}
