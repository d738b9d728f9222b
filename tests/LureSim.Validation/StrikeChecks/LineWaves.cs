using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Validation.LineChecks;

namespace LureSim.Validation.StrikeChecks;

/// <summary>First contact of a strike: what a sudden pull on a long line makes of its speed.</summary>
public static class LineWaves
{
    private const double Length = 10.0, Speed = 5.0;

    [PublishedCheck]
    public static Check Impedance()
    {
        (double Behind, double Doubled) nylon = Pulled(0.285e-3, 2.5e9, 1140.0, 200), braid = Pulled(Math.Sqrt(4.0 * 2.2222222e-5 / (Math.PI * 970.0)), 100e9, 970.0, 200);
        return new Check("L6w", "A line pulled at one end at 5 m/s: v Z behind the wave, twice that at a fixed end",
            "bar-impact theory, Z = A sqrt(E rho), for example Goldsmith, Impact, 1960 (from memory); numbers recalculated from the formula",
            "The wave front rings over some segments; the mean well behind it is right to the strain of the line, 3.4e-3 for nylon and 5e-4 for braid, and to what rings.",
            [
                new Row("nylon of 0.285 mm and 2.5 GPa, behind the wave", "N", 0.5385, nylon.Behind, 0.01, Tol.Relative),
                new Row("nylon, at the fixed end", "N", 1.0770, nylon.Doubled, 0.02, Tol.Relative),
                new Row("fibre of 200 denier and 100 GPa, behind the wave", "N", 1.1281, braid.Behind, 0.01, Tol.Relative),
                new Row("fibre, at the fixed end", "N", 2.2563, braid.Doubled, 0.02, Tol.Relative),
            ],
            new Ladder("segments", "pull behind the wave in nylon, relative to v Z",
                [.. new[] { 25, 50, 100 }.Select(n => ((double)n, Math.Abs((Pulled(0.285e-3, 2.5e9, 1140.0, n).Behind / 0.53850) - 1.0)))],
                0.3, "what rings behind a jump falls slowly with the mesh"));
    }

    // Pull near the driven end when the wave is half way, and at the fixed end when it is half way back.
    private static (double Behind, double Doubled) Pulled(double diameter, double modulus, double density, int segments)
    {
        double area = 0.25 * Math.PI * diameter * diameter, wave = Math.Sqrt(modulus / density), dt = Length / wave / (6.0 * segments);
        var mesh = new LineMesh(BenchMedia.Line(area * density, modulus * area, density, diameter), null, Length, segments);
        var bench = new LineBench(mesh, BenchMedia.Vacuum, s => new Vec3(s * Length, 0.0, 5.0));
        var head = LedEnd.Towed(Vec3.Zero + new Vec3(0.0, 0.0, 5.0), new Vec3(-Speed, 0.0, 0.0));
        var tail = LedEnd.Still(new Vec3(Length, 0.0, 5.0));
        double behind = 0.0;
        bench.Run(dt, 1.5 * Length / wave, head, tail, () =>
        {
            behind = bench.Time <= 0.5 * Length / wave ? Mean(bench, 0, segments / 4) : behind;
        });
        return (behind, Mean(bench, segments - (segments / 4), segments));
    }

    private static double Mean(LineBench bench, int from, int to) => Enumerable.Range(from, to - from).Average(bench.Tension);
}
