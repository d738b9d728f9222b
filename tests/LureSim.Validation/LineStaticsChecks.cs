using LureSim.Model.Lines;
using LureSim.Model.Media;
using LureSim.References.Lines;

namespace LureSim.Validation;

/// <summary>Stretch, waves, bending and sinking of a straight piece of line.</summary>
public static class LineStaticsChecks
{
    private static readonly WaterState Water = WaterModel.Evaluate(new(20.0));

    [PublishedCheck]
    public static Check StretchAndWaves()
    {
        LineSpec nylon = Line(LineMaterial.Nylon, 0.285, null, 2.5e9);
        LineSpec pvdf = Line(LineMaterial.Fluorocarbon, 0.285, null, 2.0e9);
        LineSpec soft = Line(LineMaterial.Braid, null, 1.0, 60e9);
        LineSpec stiff = Line(LineMaterial.Braid, null, 1.0, 100e9);
        double c = LineStatics.SoundSpeed(stiff);
        (double V, double E, double Kink)[] impact =
            [(2, 7.2264e-6, 27.22), (5, 2.4538e-5, 50.05), (10, 6.1891e-5, 79.25), (20, 1.5619e-4, 125.32)];
        return new(
            "L6", "Stretch, impedance and transverse impact",
            "Hooke; bar impact theory; Smith, McCrackin, Schiefer 1958, Textile Res. J. 28:288 (formula from memory, re-derived); values derived",
            "Last printed digit.",
            [
                new("stretch, nylon 30 m, 10 N", "m", 1.8811, LineStatics.Stretch(nylon, 10, 30), 6e-5, Tol.Absolute),
                new("stretch, fluorocarbon", "m", 2.3513, LineStatics.Stretch(pvdf, 10, 30), 6e-5, Tol.Absolute),
                new("stretch, braid number 1 at 60 GPa", "m", 0.21825, LineStatics.Stretch(soft, 10, 30), 6e-6, Tol.Absolute),
                new("sound speed, braid at 100 GPa", "m/s", 10153.46, c, 6e-3, Tol.Absolute),
                new("sound speed, nylon", "m/s", 1480.9, LineStatics.SoundSpeed(nylon), 0.06, Tol.Absolute),
                new("impedance, braid at 100 GPa", "kg/s", 0.22563, LineStatics.Impedance(stiff), 6e-6, Tol.Absolute),
                new("impedance, nylon", "kg/s", 0.10770, LineStatics.Impedance(nylon), 6e-6, Tol.Absolute),
                .. impact.Select(p => new Row($"strain at {p.V} m/s", "-", p.E, TransverseImpact.Strain(c, p.V), 6e-5, Tol.Relative)),
                .. impact.Select(p => new Row($"kink speed at {p.V} m/s", "m/s", p.Kink, TransverseImpact.KinkSpeed(c, TransverseImpact.Strain(c, p.V)), 6e-3, Tol.Absolute)),
            ]);
    }

    [PublishedCheck]
    public static Check StiffString()
    {
        LineSpec nylon = Line(LineMaterial.Nylon, 0.3, null, 2.5e9);
        double Ratio(int n) => LeaderBending.StringFrequency(nylon, 5, 1, n) / (n * 124.548);
        double b = LeaderBending.Inharmonicity(nylon, 5, 1);
        return new(
            "L7", "Bending of a leader: tone of a stiff string",
            "Fletcher 1964, J. Acoust. Soc. Am. 36:203 (formula from memory, values recomputed)",
            "Last printed digit; that of f_5 is cut off, not rounded.",
            [
                new("B", "1e-6", 1.96212, 1e6 * b, 6e-6, Tol.Absolute),
                new("f_0", "Hz", 124.548, LeaderBending.StringFrequency(nylon, 5, 1, 1) / Math.Sqrt(1 + b), 6e-4, Tol.Absolute),
                new("f_5/(5 f_0)", "-", 1.00002452, Ratio(5) / (Ratio(1) / Math.Sqrt(1 + b)), 1e-8, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check LeaderUnderOwnWeight()
    {
        LineSpec nylon = Line(LineMaterial.Nylon, 0.45, null, 2.5e9);
        double weight = 9.80665 * nylon.LinearDensityKgM;
        double scale = LeaderBending.SelfSupportLength(nylon.BendingStiffnessNm2, weight);
        Droop At(double q, int steps = 200) => LeaderBending.OwnWeight(nylon.BendingStiffnessNm2, weight, scale * Math.Cbrt(q), steps);
        (double Q, double Tip, double X, double Z)[] table =
        [
            (0.5, 4.76338, 0.997779, 0.062306), (1, 9.46042, 0.991246, 0.123471), (2, 18.42597, 0.966893, 0.238507),
            (4, 33.72386, 0.890111, 0.425159), (8, 53.86500, 0.724425, 0.640631), (10, 60.31201, 0.656354, 0.700200),
            (20, 76.74778, 0.445232, 0.829881),
        ];
        IEnumerable<Row> Of((double Q, double Tip, double X, double Z) r)
        {
            double length = scale * Math.Cbrt(r.Q);
            yield return new($"tip angle, q {r.Q}", "deg", r.Tip, At(r.Q).TipAngleRad * 180 / Math.PI, 6e-6, Tol.Absolute);
            yield return new($"reach/L, q {r.Q}", "-", r.X, At(r.Q).ReachM / length, 6e-7, Tol.Absolute);
            yield return new($"droop/L, q {r.Q}", "-", r.Z, At(r.Q).DropM / length, 6e-7, Tol.Absolute);
        }

        return new(
            "B7", "Leader held level, bent by its own weight (0.45 mm nylon)",
            "Heavy elastica, q = w L^3/(EI); values recomputed to the printed digits",
            "Last printed digit; the solver's own error at 200 steps is below 1e-8.",
            [.. table.SelectMany(Of)],
            new("steps", "tip angle at q = 10, deg",
                [.. new[] { 10, 20, 40, 80 }.Select(n => ((double)n, Math.Abs(At(10, n).TipAngleRad - At(10, 2000).TipAngleRad) * 180 / Math.PI))],
                3.7, "order 4 of the Runge-Kutta steps; 0.3 for the next term at ten of them"));
    }

    [PublishedCheck]
    public static Check SinkingSpeed()
    {
        double Speed(LineMaterial material, double mm)
        {
            LineSpec strand = Line(material == LineMaterial.Braid ? LineMaterial.Nylon : material, mm, null, 2e9);
            // A solid polyethylene strand: the published case has no packing.
            LineSpec line = material == LineMaterial.Braid
                ? strand with { DensityKgM3 = 970, LinearDensityKgM = strand.LinearDensityKgM * 970 / 1140 }
                : strand;
            return LineStatics.SinkingSpeed(line, Water);
        }

        double pvdf = Speed(LineMaterial.Fluorocarbon, 0.30);
        double re = pvdf * 0.30e-3 / Water.KinematicViscosityM2S;
        return new(
            "C9", "Sinking speed of a level, wetted line in fresh water at 20 deg C",
            "Net weight against drag with the cylinder law C2a; values derived",
            "Last printed digit.",
            [
                new("fluorocarbon 0.30 mm", "m/s", 0.03770, pvdf, 6e-6, Tol.Absolute),
                new("its Re", "-", 11.27, re, 6e-3, Tol.Absolute),
                new("its Cd", "-", 2.547, CylinderDrag.Cd(re), 6e-4, Tol.Absolute),
                new("fluorocarbon 0.165 mm", "m/s", 0.02108, Speed(LineMaterial.Fluorocarbon, 0.165), 6e-6, Tol.Absolute),
                new("nylon 0.30 mm", "m/s", 0.01231, Speed(LineMaterial.Nylon, 0.30), 6e-6, Tol.Absolute),
                new("polyethylene 0.165 mm (rises)", "m/s", -0.00164, Speed(LineMaterial.Braid, 0.165), 6e-6, Tol.Absolute),
            ]);
    }

    private static LineSpec Line(LineMaterial material, double? mm, double? number, double modulusPa) =>
        LineSizing.Resolve(material, 1e-3 * mm, number, null, SurfaceFilm.Wetted, new(ModulusPa: modulusPa)).Spec;
}
