using System.Globalization;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Lures;
using LureSim.Model.Retrieve;
using LureSim.Model.Rods;
using LureSim.Numerics;
using LureSim.Numerics.Steps;
using LureSim.Validation.LineChecks;

namespace LureSim.Validation.CrossChecks;

/// <summary>
/// The tethered lure of docs/cross-check.md: the product's coupled step with a rigid rod and a massless line of one segment, against
/// the same equations integrated by SciPy (Data/tethered-lure.py wrote Data/tethered-lure.csv).
/// </summary>
public static class TetheredLure
{
    private const double Length = 3.0, Stiffness = 100.0, Back = 0.30, Stroke = 0.16, Period = 0.5;

    private static readonly WalkHull Hull = new(
        0.11, 0.018, 0.019, 0.029, 1e-5, 2.1e-5, 0.054, 0.0,
        [-0.04, -0.02, 0.0, 0.02, 0.04], [0.12, 0.15, 0.16, 0.15, 0.12], 0.043, [0.005, -0.05], [0.03, 0.03], 1.0, 1.0, 1.0, [], []);

    [PublishedCheck]
    public static Check AgainstSciPy()
    {
        double[][] stored = [.. Read()];
        (double Dt, double[][] States)[] runs = [.. new[] { 1.0, 0.5, 0.25, 0.125, 0.0625 }.Select(ms => (ms, Run(1e-3 * ms, stored.Length)))];
        double[][] finest = runs[^1].States;
        string[] names = ["x", "y", "heading", "surge speed", "sway speed", "yaw rate"], units = ["m", "m", "rad", "m/s", "m/s", "rad/s"];
        double[] tolerance = [1e-5, 1e-5, 1e-4, 1e-5, 1e-5, 1e-4];
        return new(
            "X1", "A lure walked on an elastic tether, 4 s, against SciPy",
            "SciPy 1.10.1, DOP853 at 1e-13 and Radau at 1e-11, which agree to 1e-10; script and numbers in tests/LureSim.Validation/Data",
            "Discretisation: the ladder leaves 4e-6 m at 0.0625 ms; two to three times that, and in the other columns the same relative share of their range.",
            [
                .. new[] { 1.0, 2.0, 4.0 }.SelectMany(t => names.Select((name, j) => new Row(
                    $"{name} after {t} s", units[j], At(stored, t)[j + 1], At(finest, t)[j + 1], tolerance[j], Tol.Absolute))),
            ],
            new("dt, ms", "place of the lure, largest over 4 s, m", [.. runs.Select(r => (r.Dt, Distance(r.States, stored)))],
                1.8, "order 2 of BDF2; a path of ten twitches scatters about it from level to level (1.3 to 2.5)"));
    }

    private static double[] At(double[][] rows, double t) => rows.First(r => Math.Abs(r[0] - t) < 1e-9);

    private static double Distance(double[][] a, double[][] b) =>
        a.Zip(b, (p, q) => Math.Sqrt(Math.Pow(p[1] - q[1], 2) + Math.Pow(p[2] - q[2], 2))).Max();

    /// <summary>Rows of time, x, y, heading, surge, sway, yaw rate every quarter second.</summary>
    private static double[][] Run(double dt, int rows)
    {
        // A mass of 1e-15 kg/m only keeps the mesh from dividing by zero; one segment has no node of its own.
        var mesh = new LineMesh(BenchMedia.Line(1e-15, Stiffness * Length), null, Length, 1);
        var rigid = new ModalRod(new RodModeSet(1.0, [], [], [], [], 0.0));
        var step = new CoupledStep(mesh, BenchMedia.Vacuum, rigid, new PlanarLure(new WalkingHull(Hull), new HullState(3.049, 0.012, Math.PI + 0.3, 0, 0, 0, 0, 0)), false);
        step.Start(Tip(0.0));
        int each = (int)Math.Round(0.25 / dt);
        var result = new List<double[]>();
        for (int n = 0; ; n++)
        {
            if (n % each == 0)
            {
                HullState h = ((PlanarLure)step.Lure).Now;
                result.Add([n * dt, h.X, h.Y, h.Psi, h.U, h.V, h.R]);
                if (result.Count == rows)
                {
                    return [.. result];
                }
            }

            step.Try(n == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, dt), Tip((n + 1) * dt));
            step.Commit();
        }
    }

    private static TipFrame Tip(double t)
    {
        double w = 2.0 * Math.PI / Period;
        double x = (-Back * t) - (0.5 * Stroke * (1.0 - Math.Cos(w * t))), v = -Back - (0.5 * Stroke * w * Math.Sin(w * t));
        return new TipFrame(new Vec3(x, 0.0, 0.0), new Vec3(v, 0.0, 0.0), Vec3.Zero, Vec3.Zero, Vec3.Zero, 0.0);
    }

    private static IEnumerable<double[]> Read() => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "tethered-lure.csv"))
        .Skip(1).Select(line => line.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray());
}
