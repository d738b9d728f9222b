using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;

namespace LureSim.Validation.LineChecks;

/// <summary>
/// An elastic line with a point load. The published line (304.8 m) is shrunk so that the product's own mesh, which cuts a long
/// leader into 0.3 m pieces, puts a node under the load; statics depends on EA/(w L) and P/(w L) only.
/// </summary>
public static class PointLoad
{
    private const double Span = 304.8, Weight = 46.12, Stiffness = 548.4e-6 * 131e9, Load = 35586.0, LoadAt = 121.92;
    private const double FirstPull = 17796.7, Unstressed = 312.7022;

    [PublishedCheck]
    public static Check ElasticCatenary()
    {
        (double coarseDown, double coarseToward) = Displacement(30);
        (double fineDown, double fineToward) = Displacement(60);
        double down = Richardson.Limit(coarseDown, fineDown), toward = Richardson.Limit(coarseToward, fineToward);
        return new(
            "S2", "An elastic line under a point load at 0.4 of its span, by the line solver (extrapolated from 50 and 100 segments)",
            "Michalos and Birnstiel 1962 case as used by Jayaraman and Knudson 1981, Comput. Struct. 14:243 (feet, from memory); metres recomputed from the elastic catenary",
            "Half the last digit of each value; the error falls as 1/N^2 (ladder), so the limit is known to 1e-5.",
            [
                new("down at the load", "ft", 18.46, down / 0.3048, 0.005, Tol.Absolute),
                new("toward the near support", "ft", 2.82, toward / 0.3048, 0.005, Tol.Absolute),
                new("down at the load", "m", 5.62558, down, 3e-5, Tol.Absolute),
                new("toward the near support", "m", 0.85936, toward, 3e-5, Tol.Absolute),
            ],
            new("N", "displacement down at N segments, m",
                [.. new[] { 6, 15, 30, 60 }.Select(far => (far / 0.6, Math.Abs(Displacement(far).Down - 5.62558)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));
    }

    /// <summary>Displacement of the load with so many segments beyond it.</summary>
    private static (double Down, double Toward) Displacement(int far)
    {
        int near = far * 2 / 3;
        double s0 = UnstressedTo(LoadAt);
        double scale = 0.3 * far / (Unstressed - s0);
        LineSpec line = BenchMedia.Line(Weight * scale * scale / BenchMedia.Gravity, Stiffness * scale * scale * scale);
        LineSpec damped = line with { DampingTimeS = 0.01 };
        var mesh = new LineMesh(damped, new LeaderSpec(damped, scale * (Unstressed - s0)), scale * Unstressed, near + far);
        double depth = 0.1 * scale * Span;
        Vec3 Start(double s) => new(scale * Span * s, 0.0, 100.0 - (4.0 * depth * s * (1.0 - s)));
        double w = Weight * scale * scale, length = scale * Unstressed;
        var bench = new LineBench(mesh, BenchMedia.LinearDrag(6.0 * Math.Sqrt(w * w / (BenchMedia.Gravity * length))), Start);
        double dt = 0.3 * 0.3 * Math.Sqrt(w / BenchMedia.Gravity / (9e4 * scale * scale * scale));
        void Settle() => bench.Run(dt, 4.0 * Math.Sqrt(length), LedEnd.Still(Start(0.0)), LedEnd.Still(Start(1.0)));
        Settle();
        Vec3 unloaded = bench.Node(near);
        bench.Pass.ForceZ[near] = -Load * scale * scale * scale;
        Settle();
        Vec3 moved = (1.0 / scale) * (bench.Node(near) - unloaded);
        return (-moved.Z, -moved.X);
    }

    /// <summary>Unstressed length from the near support to a place x of the unloaded line: elastic catenary by Irvine's closed form.</summary>
    private static double UnstressedTo(double x)
    {
        double a = FirstPull / Weight, low = 0.0, high = Unstressed;
        double up = 0.5 * Weight * Unstressed;
        double X(double s) => (FirstPull * s / Stiffness)
            + (a * (Math.Asinh(up / FirstPull) - Math.Asinh((up - (Weight * s)) / FirstPull)));
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = X(middle) < x ? (middle, high) : (low, middle);
        }

        return low;
    }
}
