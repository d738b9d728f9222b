using LureSim.Model.Rods;

namespace LureSim.Validation.RodChecks;

/// <summary>Frequencies and tip flexibility of straight rods.</summary>
public static class BeamFrequencies
{
    private const int Fine = 64;
    private const string Reason =
        "Discretisation: the chain's error falls as 1/n^2 (ladder). Values are Richardson's limit of n = 32 and 64, whose "
        + "rest falls as 1/n^4: below 1e-5 in the first and 1e-4 in the second and third frequency.";

    [PublishedCheck]
    public static Check UniformCantilever()
    {
        double[] exact = [3.516015269, 22.03449156, 61.69721441];
        return new Check("B1", "Frequencies of a uniform clamped rod",
            "cos x cosh x = -1; Blevins 1979, Table 8-1 (from memory), recomputed to 10 digits", Reason,
            Rows(exact, n => Beam(1.0, 4.0, 2.0, n)), FirstLadder(exact[0], n => Beam(1.0, 4.0, 2.0, n)));
    }

    [PublishedCheck]
    public static Check UniformCantileverWithTipMass()
    {
        var rows = new List<Row>();
        foreach ((double mu, double exact) in new[] { (0.1, 2.967838), (0.5, 2.016299), (1.0, 1.557298), (10.0, 0.541375) })
        {
            rows.Add(Compare($"first frequency, tip mass {mu} of the rod", exact, Limit(n => Beam(1.0, 4.0, 2.0, n, mu), 0), 1e-5));
        }

        rows.Add(Compare("second frequency, tip mass 1", 16.25009, Limit(n => Beam(1.0, 4.0, 2.0, n, 1.0), 1), 1e-4));
        return new Check("B2", "Frequencies of a uniform clamped rod with a mass at the tip",
            "Math. Probl. Eng. 2017:1568019, Table 1 (tip mass 1); others from the frequency equation, recomputed to 7 digits",
            Reason, rows, FirstLadder(1.557298, n => Beam(1.0, 4.0, 2.0, n, 1.0)));
    }

    [PublishedCheck]
    public static Check TaperedCone()
    {
        double[] mild = [4.62515, 19.5476, 48.5789], strong = [6.19639, 18.3855, 39.8336];
        return new Check("B3", "Frequencies of conical rods (solid, or tube of constant diameter ratio), tip radius 0.5 and 0.2",
            "Int. J. Mech. Mater. Eng. 2015, doi 10.1186/s40712-015-0040-0, Table 1 (after Ozdemir and Kaya); recomputed", Reason,
            [.. Rows(mild, n => Beam(0.5, 4.0, 2.0, n)), .. Rows(strong, n => Beam(0.2, 4.0, 2.0, n))],
            FirstLadder(strong[0], n => Beam(0.2, 4.0, 2.0, n)));
    }

    [PublishedCheck]
    public static Check TaperedWedge()
    {
        double[] mild = [3.82378, 18.3173, 47.2648], strong = [4.29249, 15.7427, 36.8846];
        return new Check("B3b", "Frequencies of depth-tapered rods (thin tube of constant wall), tip radius 0.5 and 0.2",
            "Int. J. Mech. Mater. Eng. 2015, doi 10.1186/s40712-015-0040-0, Table 1 (after Ozdemir and Kaya); recomputed", Reason,
            [.. Rows(mild, n => Beam(0.5, 3.0, 1.0, n)), .. Rows(strong, n => Beam(0.2, 3.0, 1.0, n))],
            FirstLadder(strong[0], n => Beam(0.2, 3.0, 1.0, n)));
    }

    [PublishedCheck]
    public static Check TipFlexibility()
    {
        double Flex(double ratio, double p, double q, int n) => RodPower.Flexibility(Chain(ratio, p, q, n, 0.0));
        return new Check("B4", "Tip flexibility of tapered rods, delta EI_0/(P L^3)",
            "cone 1/(3 rho) exactly; thin tube recomputed to 6 digits",
            "The chain's springs carry the tip load exactly: left are quadrature and the last printed digit.",
            [
                Compare("cone, tip radius 0.5", 2.0 / 3.0, Flex(0.5, 4.0, 2.0, 10), 1e-6),
                Compare("cone, tip radius 0.2", 5.0 / 3.0, Flex(0.2, 4.0, 2.0, 10), 1e-6),
                Compare("cone, tip radius 0.1", 10.0 / 3.0, Flex(0.1, 4.0, 2.0, 10), 1e-6),
                Compare("thin tube, tip radius 0.5", 0.545177, Flex(0.5, 3.0, 1.0, 10), 1e-6),
                Compare("thin tube, tip radius 0.3", 0.755023, Flex(0.3, 3.0, 1.0, 10), 1e-6),
                Compare("thin tube, tip radius 0.1", 1.368429, Flex(0.1, 3.0, 1.0, 10), 1e-6),
            ]);
    }

    [PublishedCheck]
    public static Check TaperedWithTipMass()
    {
        var rows = new List<Row>();
        foreach ((double ratio, double r, double exact) in new[]
        {
            (0.5, 0.1, 3.45357), (0.5, 1.0, 1.52105), (0.5, 2.0, 1.10368), (0.2, 0.1, 3.33287), (0.2, 0.5, 1.65626), (0.2, 2.0, 0.84587),
        })
        {
            double rod = (1.0 + ratio + (ratio * ratio)) / 3.0;
            rows.Add(Compare($"tip radius {ratio}, tip mass {r} of the rod", exact, Limit(n => Beam(ratio, 4.0, 2.0, n, r * rod), 0), 1e-5));
        }

        return new Check("B5", "First frequency of conical rods with a mass at the tip",
            "derived (Rayleigh-Ritz), 6 digits; no published table of this case was found", Reason, rows,
            FirstLadder(3.33287, n => Beam(0.2, 4.0, 2.0, n, 0.1 * 1.24 / 3.0)));
    }

    [PublishedCheck]
    public static Check CarbonTube()
    {
        const double length = 1.5, modulus = 120e9, density = 1550.0, outer = 0.008, inner = 0.006;
        double ei = modulus * Math.PI * (Math.Pow(outer, 4) - Math.Pow(inner, 4)) / 64.0;
        double mass = density * Math.PI * ((outer * outer) - (inner * inner)) / 4.0;
        RodTaper taper = new(length, ei, mass, 1.0, 4.0, 2.0, outer);
        double Hz(int n) => RodModes.Compute(RodChain.Build(taper, n), 0.0).AngularFrequency(0) / (2.0 * Math.PI);
        return new Check("B10", "Worked carbon tube, 8 mm outside, 6 mm inside, 1.5 m",
            "derived from B1", Reason,
            [
                Compare("tip stiffness", 14.6608, 1.0 / RodPower.Flexibility(RodChain.Build(taper, 10)), 5e-6) with { Unit = "N/m" },
                Compare("first frequency", 5.47084, ((4.0 * Hz(Fine)) - Hz(Fine / 2)) / 3.0, 1e-5) with { Unit = "Hz" },
            ],
            new Ladder("n", "first frequency", [.. new[] { 8, 16, 32, 64 }.Select(n => ((double)n, Math.Abs((Hz(n) / 5.47084) - 1.0)))],
                1.9, "order 2 of a chain of links; 0.1 for the next term and the 7e-7 of the six digits"));
    }

    private static List<Row> Rows(double[] exact, Func<int, RodModeSet> beam) =>
        [.. exact.Select((x, k) => Compare($"frequency {k + 1}", x, Limit(beam, k), k == 0 ? 1e-5 : 1e-4))];

    private static Ladder FirstLadder(double exact, Func<int, RodModeSet> beam) => new(
        "n", "first frequency, relative",
        [.. new[] { 8, 16, 32, 64 }.Select(n => ((double)n, Math.Abs((beam(n).AngularFrequency(0) / exact) - 1.0)))],
        1.9, "order 2 of a chain of links; 0.1 for the next term");

    private static double Limit(Func<int, RodModeSet> beam, int mode) =>
        ((4.0 * beam(Fine).AngularFrequency(mode)) - beam(Fine / 2).AngularFrequency(mode)) / 3.0;

    private static RodModeSet Beam(double ratio, double p, double q, int n, double tipMass = 0.0) =>
        RodModes.Compute(Chain(ratio, p, q, n, tipMass), 0.0);

    private static RodChain Chain(double ratio, double p, double q, int n, double tipMass) =>
        RodChain.Build(new RodTaper(1.0, 1.0, 1.0, ratio, p, q, 0.01), n, tipMass);

    private static Row Compare(string quantity, double expected, double computed, double tolerance) =>
        new(quantity, "-", expected, computed, tolerance, Tol.Relative);
}
