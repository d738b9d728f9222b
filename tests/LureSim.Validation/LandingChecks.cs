using LureSim.Model.Cover;
using LureSim.Model.Landing;
using LureSim.Model.Rods;
using MathNet.Numerics;

namespace LureSim.Validation;

/// <summary>Holding and landing: line over plants, lift of a bent rod, waves of a towed body.</summary>
public static class LandingChecks
{
    [PublishedCheck]
    public static Check Capstan()
    {
        (double Mu, double Degrees, double Ratio)[] table =
        [
            (0.1, 90, 1.17010), (0.1, 180, 1.36911), (0.1, 360, 1.87446), (0.2, 90, 1.36911), (0.2, 180, 1.87446), (0.2, 360, 3.51359),
            (0.3, 90, 1.60198), (0.3, 180, 2.56633), (0.3, 360, 6.58606),
        ];
        IEnumerable<Row> Of((double Mu, double Degrees, double Ratio) r)
        {
            var stems = new CoverSpec(DragNM: 0.0, TurnRadM: r.Degrees * Math.PI / 180.0, LineFriction: r.Mu);
            yield return new($"tip over fish, mu {r.Mu}, {r.Degrees} deg", "-", r.Ratio, PlantLine.TipN(stems, 1.0, 10.0) / 10.0, 1.2e-5, Tol.Absolute);
            yield return new($"fish over tip, mu {r.Mu}, {r.Degrees} deg", "-", 1.0 / r.Ratio, PlantLine.FishN(stems, 1.0, 10.0) / 10.0, 1.2e-5, Tol.Absolute);
        }

        return new("L8", "Capstan: line turned about stems of plants", "Euler and Eytelwein, e^(mu theta)",
            "One unit of the last printed digit and a little: the first is printed one too high, e^(0.05 pi) = 1.170089.", [.. table.SelectMany(Of)]);
    }

    [PublishedCheck]
    public static Check LiftOfABentRod()
    {
        // Torque at the clamp over EI/L is alpha times the reach x/L, alpha = W L^2/EI: the weight that a torque holds is alpha again.
        (double Alpha, double Shortening)[] table = [(0.5, 0.01591896), (1.0, 0.05643324), (3.0, 0.25442018), (5.0, 0.38762836), (10.0, 0.55499560)];
        return new(
            "B6c", "Largest weight that a torque holds on a level uniform rod",
            "Bisshopp and Drucker 1945, Q. Appl. Math. 3:272; Mattiasson 1981, Int. J. Numer. Meth. Eng. 17:145 (from memory); recomputed from elliptic "
            + "integrals to 8 digits",
            "Discretisation: the error falls as 1/n^2 (ladder), and is 2e-4 with 100 links; the rod's own weight, 0.1 g, shifts the load by 1e-5.",
            [.. table.Select(r => new Row($"W L^2/EI, alpha = {r.Alpha}", "-", r.Alpha, Held(100, r.Alpha, r.Shortening), 3e-4, Tol.Relative))],
            new("n", "load at alpha = 5, relative",
                [.. new[] { 8, 16, 32 }.Select(n => ((double)n, Math.Abs((Held(n, 5.0, 0.38762836) / 5.0) - 1.0)))],
                1.9, "order 2 of a chain of links; 0.1 for the next term"));
    }

    [PublishedCheck]
    public static Check WavesOfASphere()
    {
        const double density = 1000.0, radius = 0.05, depth = 0.12;
        double Sphere(double speed)
        {
            double wave = 9.80665 / (speed * speed), q = wave * depth;
            return Math.PI * density * 9.80665 * Math.Pow(wave, 3) * Math.Pow(radius, 6) * Math.Exp(-q)
                * (SpecialFunctions.BesselK(0, q) + ((1.0 + (0.5 / q)) * SpecialFunctions.BesselK(1, q)));
        }

        double Body(double speed, double e) => new WaveDrag(2.0 * radius, radius * Math.Sqrt(1.0 - (e * e)), depth).At(density, speed);
        return new(
            "F1", "Wave resistance of a body under the surface: the sphere",
            "Havelock 1917, Proc. R. Soc. A 93:520, and 1931, A 131:275 (formulas from memory, derived again); Bessel functions by a library",
            "A body of eccentricity 0.01 in place of the sphere: its waves differ by the square of that, 1e-4, times a factor of 1 to 3.",
            [.. new[] { 0.6, 0.9, 1.3, 2.0 }.Select(v => new Row($"R at {v} m/s, depth 0.12 m, radius 0.05 m", "N", Sphere(v), Body(v, 0.01), 4e-4, Tol.Relative))],
            new("eccentricity", "R at 0.9 m/s, relative",
                [.. new[] { 0.4, 0.2, 0.1, 0.05 }.Select(e => (e, Math.Abs((Body(0.9, e) / Sphere(0.9)) - 1.0)))], 1.9, "order 2 in the eccentricity; 0.1 for the next term"));
    }

    // A uniform rod of next to no mass, clamped level.
    private static double Held(int links, double alpha, double shortening)
    {
        var rod = new RodSpec(2.0, 0.3, 10.0, 1e-4, 1.0, Links: links);
        double unit = RodTaper.FromSpec(rod).RootStiffnessNm2 / rod.FreeLengthM;
        var held = new HeldRod(rod, 1.0);
        return RodHold.PullN(n => held.Hung(0.0, n), s => s.ButtMomentNm, alpha * (1.0 - shortening) * unit) * rod.FreeLengthM / unit;
    }
}
