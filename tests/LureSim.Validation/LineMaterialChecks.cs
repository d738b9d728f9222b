using LureSim.Model.Lines;
using LureSim.References.Lines;

namespace LureSim.Validation;

/// <summary>Line materials, units, numbers and classes.</summary>
public static class LineMaterialChecks
{
    [PublishedCheck]
    public static Check PolymerBands()
    {
        MaterialProperties braid = LineMaterials.Of(LineMaterial.Braid);
        MaterialProperties nylon = LineMaterials.Of(LineMaterial.Nylon);
        MaterialProperties pvdf = LineMaterials.Of(LineMaterial.Fluorocarbon);
        return new(
            "L1", "Polymer data of braid, nylon and fluorocarbon",
            "Density of polyethylene fibre, drawn moduli of nylon and PVDF, braid at 30-70 % of its fibre: from memory; fibre modulus about "
            + "100 GPa: Sci. Rep. 11:8705 (2021); polyamide 66 data sheet (3100 MPa dry, 1400 conditioned; flexural 2800, 1200); nylon wet "
            + "strength and PVDF density: material tables",
            "Bands of the sources; only staying inside is claimed.",
            [
                BandRow.Of("braid density", "kg/m3", 970, 980, braid.DensityKgM3.Value),
                BandRow.Of("braid modulus over fibre modulus", "-", 0.3, 0.7, braid.DryModulusPa.Value / 100e9),
                BandRow.Of("nylon density", "kg/m3", 1100, 1150, nylon.DensityKgM3.Value),
                BandRow.Of("nylon modulus, dry", "GPa", 2, 5, 1e-9 * nylon.DryModulusPa.Value),
                BandRow.Of("nylon modulus, soaked over dry", "-", 1200.0 / 2800.0, 1, nylon.SoakedModulusPa.Value / nylon.DryModulusPa.Value),
                BandRow.Of("nylon strength, soaked over dry", "-", 0.80, 0.90, nylon.WetStrengthFactor.Value),
                BandRow.Of("fluorocarbon density", "kg/m3", 1750, 1780, pvdf.DensityKgM3.Value),
                BandRow.Of("fluorocarbon modulus", "GPa", 1.5, 3, 1e-9 * pvdf.DryModulusPa.Value),
            ]);
    }

    [PublishedCheck]
    public static Check TextileThreads()
    {
        (double Denier, double Tex, double Area, double Diameter)[] table =
            [(100, 11.111, 0.011455, 0.12077), (200, 22.222, 0.022910, 0.17079), (300, 33.333, 0.034364, 0.20917), (400, 44.444, 0.045819, 0.24153)];
        IEnumerable<Row> Of(double denier, double tex, double area, double diameter)
        {
            double mu = TextileUnits.FromDenier(denier);
            yield return new($"{denier} denier", "tex", tex, 1e6 * mu, 6e-4, Tol.Absolute);
            yield return new($"{denier} denier, solid area", "mm2", area, 1e6 * mu / 970.0, 6e-7, Tol.Absolute);
            yield return new($"{denier} denier, solid diameter", "mm", diameter, 1e3 * TextileUnits.SolidDiameter(mu, 970.0), 6e-6, Tol.Absolute);
        }

        LineSpec one = LineSizing.Resolve(LineMaterial.Braid, null, 1.0, null, SurfaceFilm.Dry).Spec;
        return new(
            "L2", "Textile units and the braid number",
            "Definitions of denier and tex; d = 11.3 um sqrt(dtex/sp.gr.) (textile formula collections); 200 denier per braid number",
            "Last printed digit of recomputed values; the collections' rounded constant 11.3 is good to 0.2 %; outside diameter of number 1 "
            + "at 75 % packing printed to 1 um.",
            [
                .. table.SelectMany(r => Of(r.Denier, r.Tex, r.Area, r.Diameter)),
                new("6.7 dtex at sp.gr. 0.91", "um", 11.3 * Math.Sqrt(6.7 / 0.91), 1e6 * TextileUnits.SolidDiameter(TextileUnits.FromTex(0.67), 910), 2e-3, Tol.Relative),
                new("braid number 1, outside", "mm", 0.197, 1e3 * one.DiameterM, 5.1e-4, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check NumberDiameters()
    {
        (double No, double Mm)[] table =
        [
            (0.1, .053), (0.2, .074), (0.3, .090), (0.4, .104), (0.5, .117), (0.6, .128), (0.8, .148), (1, .165), (1.2, .185),
            (1.5, .205), (2, .235), (2.5, .260), (3, .285), (4, .330), (5, .370), (6, .405), (8, .470), (10, .520),
        ];
        double Mm(double n) => 1e3 * LineLabels.MonofilamentDiameter(n);
        return new(
            "L3", "Standard diameters of monofilament numbers",
            "Trade standard of line numbers, 2010 (public reprint); law d = 0.165 mm sqrt(n)",
            "The print itself to its digits; between and beyond entries the law holds within 2.4 %, the worst entry's own distance (number 1.2).",
            [
                .. table.Select(r => new Row($"number {r.No}", "mm", r.Mm, Mm(r.No), 1e-9, Tol.Absolute)),
                .. new[] { 0.15, 0.7, 1.1, 1.75, 3.5, 7, 16, 30 }.Select(n => new Row($"law, number {n}", "mm", 0.165 * Math.Sqrt(n), Mm(n), 0.024, Tol.Relative)),
            ]);
    }

    [PublishedCheck]
    public static Check RecordClasses()
    {
        (double Lb, double LimitLb, double LimitN)[] table =
        [
            (2, 2.20, 9.807), (4, 4.41, 19.613), (6, 6.61, 29.420), (8, 8.82, 39.227), (12, 13.23, 58.840), (16, 17.64, 78.453),
            (20, 22.05, 98.066), (30, 33.07, 147.10), (50, 52.91, 235.36), (80, 81.57, 362.85), (130, 132.28, 588.40),
        ];
        return new(
            "L4", "Record line classes: the limit is the kilogram value",
            "IGFA line classes (public reprint of the table)",
            "Last printed digit (pounds to 0.005, newtons to 0.005). The 20 lb class ends at 98.07 N, not at 88.96 N.",
            [
                .. table.Select(r => new Row($"{r.Lb} lb class", "N", r.LimitN, LineClasses.LimitN(r.Lb), 0.0051, Tol.Absolute)),
                .. table.Select(r => new Row($"{r.Lb} lb class", "lb", r.LimitLb, LineClasses.LimitN(r.Lb) / LineLabels.NewtonPerLb, 0.0051, Tol.Absolute)),
                new("20 lb class over a 20 lb label", "N", 98.0665 - 88.9644, LineClasses.LimitN(20) - 20 * LineLabels.NewtonPerLb, 1e-3, Tol.Absolute),
            ]);
    }
}
