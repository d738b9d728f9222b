using LureSim.Model.Lines;
using LureSim.Model.Lures;

namespace LureSim.Validation.Lures;

/// <summary>Friction, form factor, wetted surface, cross-flow ratio, wave flags.</summary>
public static class ResistanceChecks
{
    /// <summary>R1.</summary>
    [PublishedCheck]
    public static Check FrictionLines()
    {
        (double re, double cf)[] print =
        [
            (1e5, 0.008333), (5e5, 0.005482), (1e6, 0.004688), (5e6, 0.003397), (1e7, 0.003000), (5e7, 0.002309), (1e9, 0.001531), (1e10, 0.001172),
        ];
        List<Row> rows = [.. print.Select(p => new Row($"ITTC-57, Re {p.re:E0}", "-", p.cf, SkinFriction.Ittc57(p.re), 1e-6, Tol.Absolute))];
        rows.Add(new Row("ITTC-57, Re 5.62e6 (worked line)", "-", 3.325e-3, SkinFriction.Ittc57(5.62e6), 1e-6, Tol.Absolute));
        rows.Add(new Row("laminar plate, Re 1e4", "-", 0.01328, SkinFriction.Laminar(1e4), 1e-7, Tol.Absolute));
        rows.Add(new Row("laminar plate, Re 5e4", "-", 0.005939, SkinFriction.Laminar(5e4), 1e-6, Tol.Absolute));
        rows.Add(new Row("law for lures, Re 5e4: laminar", "-", 0.005939, SkinFriction.Coefficient(5e4), 1e-6, Tol.Absolute));
        double re0 = SkinFriction.TransitionRe;
        rows.Add(new Row(
            "law for lures is continuous at transition", "-", SkinFriction.Coefficient(re0), SkinFriction.Coefficient(re0 * (1.0 + 1e-9)), 1e-8, Tol.Relative));
        return new Check(
            "R1", "Friction lines", "ITTC 1957 as in Tupper, Introduction to Naval Architecture, Table 8.3, and Morrall 1970, NPL Ship Report 142; Blasius 1908",
            "Last printed digit; the printed value at 1e8 is left out (scan or print error).", rows);
    }

    /// <summary>R2.</summary>
    [PublishedCheck]
    public static Check FormFactor()
    {
        (double f, double value)[] table = [(3, 1.54793), (4, 1.29688), (5, 1.19016), (6, 1.13447), (8, 1.07996), (10, 1.05443)];
        return new Check(
            "R2", "Form factor of streamlined bodies of revolution", "Hoerner, Fluid-Dynamic Drag, ch. VI (formula from memory, recomputed)", "Five decimals.",
            [.. table.Select(p => new Row($"drag over friction, L/D {p.f}", "-", p.value, SkinFriction.FormFactor(p.f), 6e-6, Tol.Absolute))]);
    }

    /// <summary>R3.</summary>
    [PublishedCheck]
    public static Check SpheroidSurface()
    {
        (double f, double value)[] table = [(3, 7.72343), (4, 10.12438), (5, 12.54813), (6, 14.98466), (8, 19.87868), (10, 24.78776)];
        List<Row> rows = [.. table.Select(p => new Row($"S / D2, L/D {p.f}", "-", p.value, Spheroid.SurfaceM2(p.f, 1.0), 6e-6, Tol.Absolute))];
        HullForm hull = HullShape.Create(Samples.HalfSpheroid(0.1, 0.02));
        double exact = Spheroid.SurfaceM2(0.1, 0.02);
        rows.Add(new Row("S of the sampled hull, L/D 5, 201 panels", "m2", exact, hull.SurfaceM2(201), 2e-4, Tol.Relative));
        int[] counts = [10, 20, 40, 80, 160];
        return new Check(
            "R3", "Wetted surface of a spheroid", "closed form, any mathematics handbook; recomputed",
            "Five decimals; sampled hull: frustum panels, error of order N^-2.", rows,
            new Ladder("N", "sampled surface, relative", [.. counts.Select(n => ((double)n, Math.Abs((hull.SurfaceM2(n) / exact) - 1.0)))],
                1.9, "order 2 of frustum panels; 0.1 for the next term"));
    }

    /// <summary>R4.</summary>
    [PublishedCheck]
    public static Check CrossFlowRatio()
    {
        (double f, double value)[] curve = [(5, 0.62), (10, 0.68), (20, 0.77)];
        return new Check(
            "R4", "Cross-flow drag of a finite body over the infinite cylinder",
            "Allen and Perkins 1951, NACA Rep. 1048 (curve from memory) against the finite cylinders of Wieselsberger 1922",
            "Two readings of scattered data: 0.01 on the curve.",
            [.. curve.Select(p => new Row($"eta, L/D {p.f}", "-", p.value, FiniteLength.Factor(p.f), 0.01, Tol.Band))]);
    }

    /// <summary>R5.</summary>
    [PublishedCheck]
    public static Check WaveFlags() => new(
        "R5", "When a lure makes waves", "Kelvin 1871 and 1887; definitions; recomputed for a hull of 0.1 m at 20 C",
        "Digits of the recomputed numbers.",
        [
            new Row("Froude number, 0.3 m/s", "-", 0.30294, WaveRegime.FroudeNumber(0.3, 0.1), 6e-6, Tol.Absolute),
            new Row("Froude number, 1 m/s", "-", 1.00981, WaveRegime.FroudeNumber(1.0, 0.1), 6e-6, Tol.Absolute),
            new Row("speed at Froude number 0.4", "m/s", 0.396, WaveRegime.SpeedMS(0.4, 0.1), 5e-4, Tol.Absolute),
            new Row("Kelvin half angle", "deg", 19.4712, WaveRegime.KelvinHalfAngleRad * 180.0 / Math.PI, 6e-5, Tol.Absolute),
            new Row("gravity wave of 0.3 m/s", "mm", 57.66, 1e3 * WaveRegime.GravityWavelengthM(0.3), 6e-3, Tol.Absolute),
            new Row("gravity wave of 0.5 m/s", "mm", 160.2, 1e3 * WaveRegime.GravityWavelengthM(0.5), 0.06, Tol.Absolute),
            new Row("least phase speed of capillary-gravity waves", "m/s", 0.23122, WaveRegime.MinimumPhaseSpeedMS(Samples.Water), 6e-6, Tol.Absolute),
        ]);
}
