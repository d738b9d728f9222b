using LureSim.Model;
using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;
using LureSim.Model.Media;
using LureSim.Numerics;
using LureSim.References.Lines;
using LureSim.References.Media;
using LureSim.Validation.LineChecks;

namespace LureSim.Validation;

/// <summary>What a water surface carries.</summary>
public static class SurfaceFilmChecks
{
    private static readonly WaterState Water = WaterModel.Evaluate(new(20.0));

    [PublishedCheck]
    public static Check LineOnTheFilm()
    {
        double[] mm = [0.1, 0.3, 0.5, 1, 2];
        double[] at90 = [145.60, 146.57, 148.47, 156.96, 188.29];
        double[] at110 = [146.87, 150.26, 154.43, 168.00, 207.57];
        double Support(double d, double deg) => 1e3 * Film(d, deg).MaximumSupportNM;
        double twoSigma = 2e3 * Water.SurfaceTensionNM;
        var thin = new ThinLineFilm(Water);
        return new(
            "H7", "Line carried by the surface film at 20 deg C",
            "Two-dimensional meniscus with the generalised law of Archimedes (Keller 1998, Phys. Fluids 10:3009); values derived",
            "Last printed digit. The thin-line law leaves out the displaced water: its share is the difference to the exact 0.1 mm cylinder, "
            + "0.13 mN/m of 145.5 (0.1 %).",
            [
                .. mm.Select((d, i) => new Row($"theta 90 deg, D {d} mm", "mN/m", at90[i], Support(d, 90), 6e-3, Tol.Absolute)),
                .. mm.Select((d, i) => new Row($"theta 110 deg, D {d} mm", "mN/m", at110[i], Support(d, 110), 6e-3, Tol.Absolute)),
                new("theta 60 deg, D 0.1 mm, over 2 sigma", "-", 0.8666, Support(0.1, 60) / twoSigma, 6e-5, Tol.Absolute),
                new("thin line, 2 sigma", "mN/m", 145.47, 1e3 * thin.MaximumSupportNM, 6e-3, Tol.Absolute),
                new("thin line against 0.1 mm cylinder", "-", 1, thin.MaximumSupportNM / Film(0.1, 90).MaximumSupportNM, 1e-3, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check FloatsOrIsPulledThrough()
    {
        LineSpec pvdf = Strand(LineMaterial.Fluorocarbon);
        LineSpec nylon = Strand(LineMaterial.Nylon);
        double film = Film(0.30, 90).MaximumSupportNM;
        // Steel bars either side of the largest that floats in the exact theory, weight in air rho g pi D^2/4.
        double Load(double mm) => 7850 * 9.80665 * Math.PI * mm * mm * 1e-6 / 4.0;
        double Floats(double mm) => Film(mm, 90).Floats(Load(mm)) ? 1 : 0;
        double smallBond = 1e3 * Math.Sqrt(8 * Water.SurfaceTensionNM / (Math.PI * (7850 - Water.DensityKgM3) * 9.80665));
        return new(
            "H7", "What floats and what is pulled through",
            "Net weights and the small-Bond diameter sqrt(8 sigma/(pi (rho_s - rho) g)) = 1.660 mm for steel; derived",
            "Last printed digit. A steel bar 5 % thinner than the small-Bond diameter floats; one 10 % thicker does not, since the film's own share of "
            + "pressure lifts the exact limit by a few per cent only.",
            [
                new("net weight, fluorocarbon 0.30 mm", "mN/m", 0.5419, 1e3 * LineStatics.NetWeight(pvdf, Water), 6e-5, Tol.Absolute),
                new("net weight, nylon 0.30 mm", "mN/m", 0.0983, 1e3 * LineStatics.NetWeight(nylon, Water), 6e-5, Tol.Absolute),
                BandRow.Of("film over net weight, fluorocarbon", "-", 200, 400, film / LineStatics.NetWeight(pvdf, Water)),
                new("small-Bond diameter, steel", "mm", 1.660, smallBond, 6e-4, Tol.Absolute),
                new("steel bar 1.58 mm floats", "-", 1, Floats(1.58), 0, Tol.Absolute),
                new("steel bar 1.83 mm floats", "-", 0, Floats(1.83), 0, Tol.Absolute),
            ]);
    }

    [PublishedCheck]
    public static Check LyingOnTheFilm()
    {
        double[] loads = [20, 60, 100, 130];
        double lc = CapillaryNumbers.Length(Water);
        double Exact(double mN) => 2e3 * lc * Math.Sin(0.5 * Math.Asin(1e-3 * mN / (2.0 * Water.SurfaceTensionNM)));
        return new(
            "H7", "Depth at which a heavy line comes to rest on the film, by the line solver",
            "Meniscus of slope psi: load 2 sigma sin(psi), depth 2 l_c sin(psi/2) (Keller 1998); derived",
            "The line settles through the drag of the water; a thousandth of its depth is left after 20 s.",
            [.. loads.Select(w => new Row($"load {w} mN/m", "mm", Exact(w), Resting(1e-3 * w, 1e-3 * Exact(w)), 1e-3, Tol.Relative))]);
    }

    private static double Resting(double load, double depth)
    {
        // So dense that the water it displaces is of no account.
        const double Density = 1e9, Length = 1.0;
        const int Segments = 10;
        LineSpec line = BenchMedia.Line(load / Physics.GravityMS2, 1e4, Density) with { Film = SurfaceFilm.Dry };
        var medium = new LineMedium(Water, new AirState(1.2, 1.8e-5), DragCurve.FromLaw(CylinderDrag.Cd));
        var bench = new LineBench(new LineMesh(line, null, 1.001 * Length, Segments), medium, s => new Vec3(s * Length, 0.0, -0.9 * depth));
        bench.Run(1e-3, 20.0, LedEnd.Still(new Vec3(0.0, 0.0, -depth)), LedEnd.Still(new Vec3(Length, 0.0, -depth)));
        return -1e3 * bench.Node(Segments / 2).Z;
    }

    private static SurfaceFilmForce Film(double mm, double deg) => new(Water, 1e-3 * mm, deg * Math.PI / 180.0);

    private static LineSpec Strand(LineMaterial material) =>
        LineSizing.Resolve(material, 0.30e-3, null, null, SurfaceFilm.Dry).Spec;
}
