using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Validation.LineChecks;

/// <summary>Lines hung between two points.</summary>
public static class HangingShapes
{
    private const double Mass = 1.0 / BenchMedia.Gravity;

    [PublishedCheck]
    public static Check Catenary()
    {
        (double Sag, double H, double Length, double Peak)[] table =
        [
            (0.05, 2.5082893, 1.0066358, 2.5582893), (0.1, 1.2663244, 1.0261869, 1.3663244),
            (0.2, 0.65586259, 1.0997182, 0.85586259), (0.3, 0.45944707, 1.2094102, 0.75944707),
        ];
        IEnumerable<Row> Of((double Sag, double H, double Length, double Peak) r)
        {
            (double sag, double h, double peak) = Hang(r.Length, 80);
            yield return new($"sag/span, length/span {r.Length:F4}", "-", r.Sag, sag, 1e-4, Tol.Relative);
            yield return new($"H/(w span), sag {r.Sag}", "-", r.H, h, 1e-4, Tol.Relative);
            yield return new($"Tmax/(w span), sag {r.Sag}", "-", r.Peak, peak, 1e-4, Tol.Relative);
        }

        return new(
            "S1", "A line hung between two points, by the line solver (80 segments, settled by drag)",
            "Catenary; closed form, values recomputed to 8 digits",
            "Discretisation: a polygon of N equal links through a shallow curve is shorter than it by 1/(2 N^2) of the excess length, 8e-5 here.",
            [.. table.SelectMany(Of)],
            new("N", "H/(w span) at sag 0.3, relative",
                [.. new[] { 10, 20, 40, 80 }.Select(n => ((double)n, Math.Abs((Hang(1.2094102, n).H / 0.45944707) - 1.0)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));
    }

    private static (double Sag, double H, double Peak) Hang(double length, int segments)
    {
        // 3e-8 of stretch: sag and pull of the shallowest curve (excess length 0.7 %) change by 2e-6.
        var mesh = new LineMesh(BenchMedia.Line(Mass, 1e8), null, length, segments);
        double depth = 0.5 * Math.Sqrt((length * length) - 1.0);
        Vec3 V(double s) => new(s, 0.0, BenchMedia.High - (depth * (1.0 - Math.Abs((2.0 * s) - 1.0))));
        var bench = new LineBench(mesh, BenchMedia.LinearDrag(30.0 * Mass), V);
        double dt = 0.2 * (length / segments) * Math.Sqrt(Mass / 2.6);
        bench.Run(dt, 3.0, LedEnd.Still(V(0.0)), LedEnd.Still(V(1.0)));
        Vec3 t = bench.Tension(0) * bench.Pass.Direction(0);
        double vertical = (mesh.Mass[0] * BenchMedia.Gravity) - t.Z;
        return (BenchMedia.High - bench.Now.Z[segments / 2], t.X, Math.Sqrt((t.X * t.X) + (vertical * vertical)));
    }
}
