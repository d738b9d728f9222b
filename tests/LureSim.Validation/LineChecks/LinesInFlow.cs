using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;
using LureSim.Numerics.Steps;

namespace LureSim.Validation.LineChecks;

/// <summary>
/// Steady lines in flowing water. The product has no current: the ends move through still water instead, which is the same problem
/// seen from the moving ends.
/// </summary>
public static class LinesInFlow
{
    private const double Speed = 0.5, Depth = -50.0;

    [PublishedCheck]
    public static Check CriticalAngle()
    {
        (double Share, double Degrees)[] table =
        [
            (0.01, 5.72479), (0.05, 12.75775), (0.1, 17.96424), (0.2, 25.17839), (0.5, 38.66828), (1, 51.82729), (2, 65.53020), (5, 78.89647),
        ];
        WaterState water = WaterModel.Evaluate(new(20.0));
        (string Name, LineMaterial Material, double Mm, double Degrees)[] worked =
        [
            ("fluorocarbon 0.30 mm", LineMaterial.Fluorocarbon, 0.30, 5.907), ("nylon 0.30 mm", LineMaterial.Nylon, 0.30, 2.517),
        ];
        return new(
            "S7", "Slope of a long line towed through deep water at 0.5 m/s, by the line solver",
            "Critical angle, w cos phi = R sin^2 phi (Pode 1951, DTMB Rep. 687, from memory); values recomputed",
            "Last printed digit; the towed line is straight, so that no segment length enters, only how long it was towed (ladder).",
            [
                .. table.Select(r => new Row($"phi at w/R = {r.Share}", "deg", r.Degrees, Towed(r.Share, 60.0), 1e-4, Tol.Absolute)),
                .. worked.Select(r => new Row($"phi of {r.Name}, fresh water 20 deg C", "deg", r.Degrees, OfLine(r.Material, r.Mm, water, 60.0), 6e-4, Tol.Absolute)),
            ],
            new("towed, line lengths", "phi at w/R = 0.2, deg",
                [.. new[] { 1.0, 2.0, 3.0, 4.0 }.Select(n => (n, Math.Abs(Towed(0.2, n) - 25.17839)))],
                6.0, "what the start left dies away a hundredfold with every length, so any order is reached; beyond four lengths the last digit of the expected value is left"));
    }

    [PublishedCheck]
    public static Check AcrossACurrent()
    {
        (double fineBow, double fineTension) = Bow(80);
        (double coarseBow, double coarseTension) = Bow(40);
        return new(
            "S8", "A weightless line held across a current, by the line solver (extrapolated from 40 and 80 segments)",
            "Drag across the line only: tension constant, shape a catenary of parameter T/R; derived, integrated to 12 digits",
            "Last printed digit of the arc that sets the length: 1e-7 of it, multiplied by 6 in the bow.",
            [
                new("bow at the middle, span 20 m", "m", 2.552519, Richardson.Limit(coarseBow, fineBow), 1e-5, Tol.Absolute),
                new("tension at R = 0.1 N/m", "N", 2.0, Richardson.Limit(coarseTension, fineTension), 1e-5, Tol.Absolute),
            ],
            new("N", "bow at N segments, m", [.. new[] { 10, 20, 40, 80 }.Select(n => ((double)n, Math.Abs(Bow(n).Bow - 2.552519)))],
                1.9, "order 2 of equal links for a smooth curve; 0.1 for the next term"));
    }

    /// <summary>Angle below the path of a line of weight w and drag R per length, deg.</summary>
    private static double Towed(double share, double lengths)
    {
        const double Diameter = 1e-3, Cd = 1.2, Density = 2000.0;
        double drag = 0.5 * 1000.0 * Cd * Diameter * Speed * Speed;

        // mu g (1 - rho/rho_s) = share R.
        double mass = share * drag / (BenchMedia.Gravity * (1.0 - (1000.0 / Density)));
        return Settled(BenchMedia.Line(mass, 1e4, Density, Diameter), BenchMedia.DeepWater(Cd), lengths);
    }

    private static double OfLine(LineMaterial material, double mm, WaterState water, double lengths)
    {
        // Friction along the line does not enter the slope; without it a nearly weightless line has no tension and flutters.
        LineSpec line = LineSizing.Resolve(material, 1e-3 * mm, null, null, SurfaceFilm.Wetted, new()).Spec;
        double cd = CylinderDrag.Cd(Speed * line.DiameterM / water.KinematicViscosityM2S);
        return Settled(line, new LineMedium(water, new AirState(1.2, 1.8e-5), DragCurve.Constant(cd), AddedMassCoefficient: 0.0), lengths);
    }

    private static double Settled(LineSpec line, LineMedium medium, double lengths)
    {
        const double Length = 2.0;
        const int Segments = 10;
        var mesh = new LineMesh(line, null, Length, Segments);
        var head = new Vec3(0.0, 0.0, Depth);

        // Trailing at 45 degrees at first; the end carries the half segment of line that belongs to it.
        var bench = new LineBench(mesh, medium, s => head + (Length * s * Math.Sqrt(0.5) * new Vec3(-1.0, 0.0, -1.0)));
        bench.SetMotion(_ => new Vec3(Speed, 0.0, 0.0));
        var tail = new LineTail(bench, medium);
        bench.Run(2e-3, lengths * Length / Speed, LedEnd.Towed(head, new Vec3(Speed, 0.0, 0.0)), tail);
        Vec3 chord = bench.Node(Segments) - bench.Node(0);
        return Math.Atan2(-chord.Z, Math.Abs(chord.X)) * 180.0 / Math.PI;
    }

    private static (double Bow, double Tension) Bow(int segments)
    {
        const double Half = 10.0, Arc = 10.421906, Diameter = 1e-3, Stiffness = 2e6;
        const double Cd = 0.1 / (0.5 * 1000.0 * Diameter * Speed * Speed);
        double unstretched = 2.0 * Arc / (1.0 + (2.0 / Stiffness));
        var mesh = new LineMesh(BenchMedia.Line(1e-3, Stiffness, 1000.0, Diameter) with { DampingTimeS = 1e-3 }, null, unstretched, segments);
        double dip = Math.Sqrt((Arc * Arc) - (Half * Half));
        Vec3 Start(double s) => new(-dip * (1.0 - Math.Abs((2.0 * s) - 1.0)), (2.0 * s - 1.0) * Half, Depth);
        var bench = new LineBench(mesh, BenchMedia.DeepWater(Cd), Start);
        var flow = new Vec3(Speed, 0.0, 0.0);
        bench.SetMotion(_ => flow);
        double dt = 0.3 * (2.0 * Arc / segments) * Math.Sqrt(1e-3 / 2.0);
        bench.Run(dt, 60.0, LedEnd.Towed(Start(0.0), flow), LedEnd.Towed(Start(1.0), flow));
        return (bench.Node(0).X - bench.Node(segments / 2).X, bench.Tension(segments / 2));
    }

    /// <summary>The half segment at a free end: its weight, and its drag across the line as a secant, like any other node's.</summary>
    private sealed record LineTail(LineBench Bench, LineMedium Medium) : IBenchEnd
    {
        public LineEnd At(Bdf2 step, double t, LineState before, LineState now, int node)
        {
            LineMesh mesh = Bench.Mesh;
            Vec3 u = (Bench.Node(node) - Bench.Node(node - 1)).Unit();
            var v = new Vec3(now.VX[node], now.VY[node], now.VZ[node]);
            double rho = Medium.Water.DensityKgM3, m = mesh.Mass[node];
            double drag = 0.5 * rho * mesh.DragArea[node] * Medium.NormalDrag.At(1.0) * (v - (Vec3.Dot(v, u) * u)).Length;
            LineEnd end = new FreeEnd(m, new Vec3(0.0, 0.0, ((rho * mesh.Volume[node]) - m) * Medium.GravityMS2), drag)
                .At(step, t, before, now, node);

            // No drag along the line: the part of the motion along u goes on as if there were none.
            double more = (1.0 / m) - end.Wxx;
            end.AddYield(more, u);
            Vec3 change = (step.Q * drag / m) * Vec3.Dot(end.FreeVelocity, u) * u;
            end.FreeVelocity += change;
            end.FreePosition += step.Q * change;
            return end;
        }
    }
}
