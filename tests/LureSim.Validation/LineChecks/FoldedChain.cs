using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Validation.LineChecks;

/// <summary>
/// A line folded in two, one end fixed, the other let go beside it: the falling leg hands its energy to less and less line and
/// outruns free fall. The hardest test of a line solver's energy and of its slack-to-taut changes.
/// </summary>
public static class FoldedChain
{
    private const double Length = 1.0, Mass = 0.01;

    [PublishedCheck]
    public static Check FallsFasterThanFree()
    {
        (double U, double Ratio)[] table = [(0.25, 1.08012), (0.5, 1.22474), (0.75, 1.58114), (0.9, 2.34521)];
        double[] fine = Fall(401);
        return new(
            "S5", "A folded line falls faster than a free body, by the line solver (401 segments)",
            "Calkin and March 1989, Am. J. Phys. 57:154; Wong and Yasui 2006, Am. J. Phys. 74:490: energy conservation; values recomputed",
            "Discretisation: the fold is one segment wide and swings each node round; the error falls with N (ladder), twice that of 401 segments.",
            [
                .. table.Select((r, k) => new Row($"v/v_free after a fall of {r.U} L", "-", r.Ratio, fine[k], 0.01, Tol.Relative)),
                new("time of the whole fall sqrt(g/L)", "-", 1.19814, fine[^1], 0.005, Tol.Relative),
            ],
            new("N", "v/v_free at 0.75 L, relative",
                [.. new[] { 101, 201, 401, 801 }.Select(n => ((double)n, Math.Abs((Fall(n)[2] / 1.58114) - 1.0)))],
                0.6, "order 1, of a fold one segment wide, which swings each node round; the last two halvings show 0.6. 51 segments, which by chance err less than 101 (0.017), are left out"));
    }

    /// <summary>v/v_free at the four falls, then the time to 0.99 L, the end of the fall but for 1e-3 of it.</summary>
    private static double[] Fall(int segments)
    {
        double l = Length / segments;
        int leg = segments / 2;
        var mesh = new LineMesh(BenchMedia.Line(Mass / Length, 1e5), null, Length, segments);
        Vec3 Shape(double s)
        {
            double i = s * segments;
            return i <= leg + 0.5
                ? new Vec3(0.0, 0.0, BenchMedia.High - (i * l))
                : new Vec3(l, 0.0, BenchMedia.High - ((segments - i) * l));
        }

        var bench = new LineBench(mesh, BenchMedia.Vacuum, Shape);
        double end = mesh.Mass[segments], wave = Math.Sqrt(BenchMedia.Gravity * Length);
        double[] falls = [0.25, 0.5, 0.75, 0.9], result = [0, 0, 0, 0, 0];
        int next = 0;
        bench.Run(0.05 * l / wave, 1.3 / wave, LedEnd.Still(Shape(0.0)), new FreeEnd(end, new Vec3(0.0, 0.0, -end * BenchMedia.Gravity)), () =>
        {
            double fall = BenchMedia.High - bench.Now.Z[segments];
            if (next < falls.Length && fall >= falls[next] * Length)
            {
                result[next++] = -bench.Now.VZ[segments] / Math.Sqrt(2.0 * BenchMedia.Gravity * fall);
            }

            if (result[4] == 0.0 && fall >= 0.99 * Length)
            {
                result[4] = bench.Time * wave;
            }
        });
        return result;
    }
}
