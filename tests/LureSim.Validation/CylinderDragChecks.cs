using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Numerics;
using LureSim.Validation.LineChecks;

namespace LureSim.Validation;

/// <summary>Drag of cylinders: the line's and, by strips, the hull's.</summary>
public static class CylinderDragChecks
{
    // The look-up table of the line's step.
    private static readonly DragCurve Table = DragCurve.FromLaw(CylinderDrag.Cd);

    private static readonly double[] TableRe = [0.1, 1, 10, 50, 100, 200, 500, 1e3, 2e3, 5e3, 1e4, 1e5];

    [PublishedCheck]
    public static Check MeasuredDrag()
    {
        (double Re, double Cd)[] data =
        [
            (0.116, 54.1), (0.241, 30.5), (0.728, 13.2), (3.18, 4.87), (8.01, 2.94), (17.7, 2.12), (31.7, 1.73), (63.6, 1.48),
            (196, 1.27), (356, 1.15), (892, 0.964), (2270, 0.886), (5150, 0.944), (9180, 1.06), (1.50e4, 1.14), (3.03e4, 1.16),
            (6.55e4, 1.17), (1.07e5, 1.17),
        ];
        return new(
            "C1", "Drag of a long cylinder against measurement",
            "Wieselsberger 1922 (NACA TN 84, 121), digitised pairs from a public source file, up to Re 1.1e5",
            "The correlation's own scatter around these data: -5.3 to +7.8 %. The drag crisis above Re 2e5 is left out of the model.",
            [.. data.Select(p => new Row($"Cd at Re {p.Re:G4}", "-", p.Cd, Table.At(p.Re), 0.0785, Tol.Relative))]);
    }

    [PublishedCheck]
    public static Check Correlation()
    {
        double[] own = [60.16, 9.940, 2.672, 1.646, 1.449, 1.301, 1.111, 0.9633, 0.9059, 1.013, 1.095, 1.175];
        double[] cheng = [62.76, 11.90, 2.873, 1.535, 1.329, 1.229, 1.114, 0.9842, 0.9101, 0.9727, 1.088, 1.211];
        return new(
            "C2", "Cylinder drag correlation",
            "Sucker and Brauer 1975 in White, Viscous Fluid Flow; second correlation: Cheng 2013, J. Hydraul. Eng. 139:602; values recomputed",
            "Four printed digits, plus 2e-4 of the look-up table. Against the second correlation 19 %: the two lie within -5 to +8 % and -3 to "
            + "+14 % of the same data.",
            [
                .. TableRe.Select((re, i) => new Row($"Cd at Re {re:G4}", "-", own[i], CylinderDrag.Cd(re), 5.1e-4, Tol.Relative)),
                .. TableRe.Select((re, i) => new Row($"look-up table at Re {re:G4}", "-", own[i], Table.At(re), 7.1e-4, Tol.Relative)),
                .. TableRe.Select((re, i) => new Row($"second correlation at Re {re:G4}", "-", cheng[i], CylinderDrag.Cd(re), 0.19, Tol.Relative)),
            ]);
    }

    [PublishedCheck]
    public static Check CreepingFlow()
    {
        (double Re, double Cd)[] lamb = [(0.1, 58.383), (0.2, 34.794), (0.5, 18.649), (1, 12.552)];
        return new(
            "C3", "Creeping flow across a cylinder",
            "Lamb 1911 (Hydrodynamics art. 343, from memory); measured: Wieselsberger 1922",
            "Last printed digit against the formula; 5 % against measurement at Re below 0.5 (first order in 1/ln Re).",
            [
                .. lamb.Select(p => new Row($"Lamb, Re {p.Re}", "-", p.Cd, CylinderDrag.LambCd(p.Re), 6e-4, Tol.Absolute)),
                new("Lamb against measured, Re 0.116", "-", 54.1, CylinderDrag.LambCd(0.116), 0.05, Tol.Relative),
                new("Lamb against measured, Re 0.241", "-", 30.5, CylinderDrag.LambCd(0.241), 0.05, Tol.Relative),
                new("limit law below Re 1e-4 joins the correlation", "-", CylinderDrag.Cd(1.0001e-4), CylinderDrag.Cd(0.9999e-4), 3e-4, Tol.Relative),
            ]);
    }

    [PublishedCheck]
    public static Check FreeEnds()
    {
        (double X, double Cd)[] measured =
            [(0, 1.19), (0.0237, 0.986), (0.0490, 0.926), (0.0998, 0.820), (0.200, 0.737), (0.341, 0.744), (0.498, 0.687), (0.998, 0.614)];
        (double R, double Cd)[] white = [(1, 0.64), (2, 0.68), (3, 0.74), (5, 0.74), (10, 0.82), (20, 0.91), (40, 0.98)];
        return new(
            "C4", "Free ends of a cylinder",
            "Wieselsberger 1922 (digitised pairs, Re about 1e5); rounded table in White, Fluid Mechanics (from memory)",
            "The print to its digits; 5 % against the rounded table, whose entries differ from the data by up to 4 %.",
            [
                .. measured.Select(p => new Row($"Cd at D/L {p.X}", "-", p.Cd, 1.19 * FiniteLength.Factor(1.0 / p.X), 6e-4, Tol.Absolute)),
                .. white.Select(p => new Row($"rounded table, L/D {p.R}", "-", p.Cd, 1.19 * FiniteLength.Factor(p.R), 0.05, Tol.Relative)),
            ]);
    }

    [PublishedCheck]
    public static Check BodyOfRevolution()
    {
        (double R, double Eta)[] data = [(5, 0.619), (10, 0.689), (20, 0.778), (42, 0.829)];
        (double R, double Eta)[] curve = [(5, 0.62), (10, 0.68), (20, 0.77)];
        return new(
            "R4", "Cross-flow factor of slender bodies",
            "Ratios of Wieselsberger 1922; eta curve of Allen and Perkins 1951, NACA Rep. 1048 (from memory)",
            "1.5 % for the rounded ratios, whose L/D are rounded too; 0.02 for a curve read from memory.",
            [
                .. data.Select(p => new Row($"eta at L/D {p.R}", "-", p.Eta, FiniteLength.Factor(p.R), 0.015, Tol.Relative)),
                .. curve.Select(p => new Row($"eta curve at L/D {p.R}", "-", p.Eta, FiniteLength.Factor(p.R), 0.02, Tol.Absolute)),
            ]);
    }

    [PublishedCheck]
    public static Check Inclined()
    {
        (double Deg, double Cd)[] hoerner = [(10, 0.02576), (30, 0.1575), (45, 0.40891), (60, 0.73447), (90, 1.12)];
        return new(
            "C5", "Inclined cylinder, cross-flow principle, by the line solver",
            "Hoerner, Fluid-Dynamic Drag, ch. III: 1.1 sin^3(alpha) + 0.02; his friction of 0.02 is added to the solver's force across the line",
            "Last printed digit; for the ratio 1e-6, since the line moves on a little in the step that reads its drag.",
            [
                .. hoerner.Select(p => new Row($"drag at {p.Deg} deg", "-", p.Cd, (Normal(p.Deg, 1.1) * Math.Sin(p.Deg * Math.PI / 180)) + 0.02, 6e-6, Tol.Absolute)),
                new("normal force at 30 deg over that at 90", "-", 0.25, Normal(30, 1.2) / Normal(90, 1.2), 1e-6, Tol.Absolute),
            ]);
    }

    // Force across a straight line that is led through deep water at an angle, over 1/2 rho v^2 d l.
    private static double Normal(double deg, double cd)
    {
        const double Length = 1.0, Diameter = 1e-3, Speed = 1.0, Density = 1000.0, Instant = 1e-9;
        const int Segments = 4;
        double alpha = deg * Math.PI / 180.0;
        Vec3 Place(double s) => new(s * Length * Math.Cos(alpha), s * Length * Math.Sin(alpha), -5.0);
        var flow = new Vec3(Speed, 0.0, 0.0);
        var bench = new LineBench(new LineMesh(BenchMedia.Line(1e-3, 1e4, Density, Diameter), null, Length, Segments), BenchMedia.DeepWater(cd), Place);
        bench.SetMotion(_ => flow);
        bench.Run(Instant, Instant, LedEnd.Towed(Place(0.0), flow), LedEnd.Towed(Place(1.0), flow));
        double across = bench.Pass.Drag(Segments / 2).Across * Speed * Math.Sin(alpha);
        return across / (0.5 * Density * Speed * Speed * Diameter * Length / Segments);
    }

    [PublishedCheck]
    public static Check Tangential()
    {
        // 15 m of line at 1 m/s in water of 20 deg C, and the shortest and slowest of the towed cylinders (30 m, 2.4 m/s).
        (double low, double high) = TangentialDrag.Band(15.0 / 1.0034e-6);
        (double towLow, double towHigh) = TangentialDrag.Band(30 * 2.4 / 1.0034e-6);
        double used = LineSizing.Resolve(LineMaterial.Braid, null, 3, null, SurfaceFilm.Wetted).Spec.TangentialDragCoefficient;
        return new(
            "C6", "Drag of a line along itself",
            "Towed thin cylinders, ASME Fluids Eng. Div. Summer Meeting 2002 (abstract): 2 to 3 times a flat plate; smooth 0.002-0.006, ropes "
            + "0.01-0.02 (Berteaux 1976, Casarella and Parsons 1970, from memory)",
            "Bands; the value used is a guess between smooth cylinder and rope.",
            [
                BandRow.Of("Ct of a line", "-", 0.002, 0.02, used),
                BandRow.Of("2 x flat plate, 15 m at 1 m/s", "-", 0.002, 0.006, low),
                BandRow.Of("3 x flat plate, 15 m at 1 m/s, below the value used", "-", low, used, high),
                BandRow.Of("2 x flat plate, towed cylinder", "-", 0.002, 0.006, towLow),
                BandRow.Of("3 x flat plate, towed cylinder", "-", 0.002, 0.0075, towHigh),
            ]);
    }
}
