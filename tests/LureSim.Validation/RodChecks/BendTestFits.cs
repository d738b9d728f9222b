using LureSim.Model;
using LureSim.Model.Bend;
using LureSim.Model.Rods;

namespace LureSim.Validation.RodChecks;

/// <summary>Bend tests of beams that are known exactly: the fit must give their stiffness back.</summary>
public static class BendTestFits
{
    // A beam of 1 m beyond the clamp and EI = 1 N m2 at it, next to weightless.
    private const double LengthM = 1.0, StiffnessNm2 = 1.0, MassKg = 1e-9;

    private static readonly BendErrors Exact = new(1e-8, 1e-6, 1e-6, 1e-6, 1e-6, 1e-12, 1e-8);

    [PublishedCheck]
    public static Check TipFlexibility()
    {
        var rows = new List<Row>();
        foreach ((string name, double ratio, double exponent, double flexibility) in new[]
        {
            ("cone, tip radius 0.5", 0.5, 4.0, 2.0 / 3.0), ("cone, tip radius 0.2", 0.2, 4.0, 5.0 / 3.0),
            ("thin tube, tip radius 0.5", 0.5, 3.0, 0.545177), ("thin tube, tip radius 0.3", 0.3, 3.0, 0.755023),
        })
        {
            // So small a load that its square does not count.
            double[] loads = [2e-4, 4e-4, 6e-4];
            rows.Add(Compare($"EI at the clamp, {name}", Fit(ratio, exponent, [.. loads.Select(p => new BendReading(p, p * flexibility))])));
        }

        return new Check("B4b", "Bend test of tapered beams with small drops: stiffness from exact drops",
            "drops P L^3 times the flexibilities of check B4 (cone 1/(3 rho) exactly; thin tube recomputed to 6 digits)",
            "The last digit of the thin tubes is 1e-6; drops of 1e-3 L add their square; doubt about weights leaves the fit where it is.", rows);
    }

    [PublishedCheck]
    public static Check LargeDrops()
    {
        (double Load, double Angle, double Drop)[] table =
        [
            (0.2, 0.0996362, 0.06636448), (0.5, 0.2445337, 0.16214358), (1.0, 0.4613520, 0.30172077), (2.0, 0.7817498, 0.49345748), (3.0, 0.9860170, 0.60325344),
        ];
        return new Check("B6b", "Bend test of a uniform beam with large drops: stiffness from tabulated drops and angles",
            "Bisshopp and Drucker 1945, Q. Appl. Math. 3:272; Mattiasson 1981, Int. J. Numer. Meth. Eng. 17:145 (from memory); recomputed from elliptic integrals to 8 digits",
            "Discretisation: the fit has 40 links, whose large bends err by some 1e-4 (ladder of check B6: order 2).",
            [
                Compare("EI, drops alone", Fit(1.0, 4.0, [.. table.Select(t => new BendReading(t.Load, t.Drop))])) with { Tolerance = 3e-4 },
                Compare("EI, drops and angles", Fit(1.0, 4.0, [.. table.Select(t => new BendReading(t.Load, t.Drop, t.Angle))])) with { Tolerance = 3e-4 },
                Compare("EI, one drop", Fit(1.0, 4.0, [new(1.0, 0.30172077)])) with { Tolerance = 3e-4 },
            ]);
    }

    [PublishedCheck]
    public static Check HangingChain()
    {
        double Scaled(int n)
        {
            // So soft that it hangs straight down like a chain: frequency times sqrt(L/g).
            RodChain chain = RodChain.Build(new RodTaper(1.0, 1e-9, 1.0, 1.0, 4.0, 2.0, 0.01), n);
            RodShape shape = RodStatics.Solve(chain, -Math.PI / 2.0, 0.0, 0.0, 1.0);
            return 2.0 * Math.PI * BentFrequency.FirstHz(chain, shape, 1.0);
        }

        const double exact = 1.2024128;
        return new Check("B11", "First frequency of a rod so soft that it hangs like a chain, omega sqrt(L/g)",
            "j_0,1/2 with the first zero 2.4048 of J_0; Hagedorn and DasGupta 2007 (from memory), recomputed to 8 digits",
            "The clamp holds the first half piece straight, 1/(2n) of the length, so the frequency errs by 1/(4n): order 1. Richardson's limit of n = 40 and 80 for "
            + "that order leaves terms of (1/(2n))^2 = 4e-5; a stiffness of 1e-9 still stiffens a boundary layer of sqrt(EI/(w L^3)) = 3e-5.",
            [new Row("omega sqrt(L/g)", "-", exact, (2.0 * Scaled(80)) - Scaled(40), 2e-4, Tol.Relative)],
            new Ladder("n", "omega, relative", [.. new[] { 5, 10, 20, 40 }.Select(n => ((double)n, Math.Abs((Scaled(n) / exact) - 1.0)))],
                0.9, "order 1 of the half piece that the clamp holds; 0.1 for the next term"));
    }

    private static BendFit Fit(double ratio, double exponent, ValueList<BendReading> rows)
    {
        var test = new BendTest(LengthM + 0.3, 0.3, rows, false, null, null, [], null, Exact);
        var guesses = new BendGuesses(Known(ratio, 1.0), Known(exponent), Known(2.0), Known(MassKg), Known(0.5));
        return BendFitter.Fit(test, guesses).Demand();
    }

    private static BendGuess Known(double value, double most = double.MaxValue) => new(value * (1.0 - 1e-7), Math.Min(value * (1.0 + 1e-7), most), value * 0.5, Math.Min(value * 2.0, most));

    private static Row Compare(string quantity, BendFit fit) => new(quantity, "N m2", StiffnessNm2, fit.RootStiffnessNm2, 5e-6, Tol.Relative);
}
