using LureSim.Model.Rods;

namespace LureSim.Validation.RodChecks;

/// <summary>Elastica: rods bent far by a tip load or by their own weight.</summary>
public static class LargeBends
{
    private const int Fine = 100;
    private const string Reason =
        "Discretisation: the error falls as 1/n^2 (ladder); Richardson's limit of n = 50 and 100 is good to 1e-6.";

    [PublishedCheck]
    public static Check TipLoad()
    {
        var rows = new List<Row>();
        foreach ((double alpha, double angle, double drop, double shortening) in new[]
        {
            (0.1, 0.0499543, 0.03329532, 0.00066540), (1.0, 0.4613520, 0.30172077, 0.05643324),
            (3.0, 0.9860170, 0.60325344, 0.25442018), (5.0, 1.2153681, 0.71379152, 0.38762836),
            (10.0, 1.4302855, 0.81060902, 0.55499560),
        })
        {
            rows.Add(Compare($"deflection/L, P L^2/EI = {alpha}", drop, Limit(n => -Bend(n, alpha, 0.0).TipYM)));
            rows.Add(Compare($"shortening/L, P L^2/EI = {alpha}", shortening, Limit(n => 1.0 - Bend(n, alpha, 0.0).TipXM)));
            rows.Add(Compare($"tip angle, rad, P L^2/EI = {alpha}", angle, Limit(n => EndAngle(Bend(n, alpha, 0.0)))));
        }

        return new Check("B6", "Elastica: clamped rod with a dead load across its rest line",
            "Bisshopp and Drucker 1945, Q. Appl. Math. 3:272; Mattiasson 1981, Int. J. Numer. Meth. Eng. 17:145 (from memory); "
            + "recomputed from elliptic integrals to 8 digits",
            Reason, rows, Steps(n => -Bend(n, 5.0, 0.0).TipYM, 0.71379152));
    }

    [PublishedCheck]
    public static Check OwnWeight()
    {
        var rows = new List<Row>();
        foreach ((double q, double degrees, double x, double droop) in new[]
        {
            (0.5, 4.76338, 0.997779, 0.062306), (2.0, 18.42597, 0.966893, 0.238507),
            (8.0, 53.86500, 0.724425, 0.640631), (20.0, 76.74778, 0.445232, 0.829881),
        })
        {
            rows.Add(Compare($"droop/L, w L^3/EI = {q}", droop, Limit(n => -Bend(n, 0.0, q).TipYM)));
            rows.Add(Compare($"reach/L, w L^3/EI = {q}", x, Limit(n => Bend(n, 0.0, q).TipXM)));
            rows.Add(new Row($"tip angle, w L^3/EI = {q}", "deg", degrees,
                Limit(n => -Bend(n, 0.0, q).TipAngleRad) * 180.0 / Math.PI, 1e-3, Tol.Absolute));
        }

        return new Check("B7", "Heavy elastica: level clamped rod under its own weight",
            "Rohde 1953, Q. Appl. Math. 11:337; Wang 1986, Int. J. Mech. Sci. 28:549 (from memory); recomputed as a boundary "
            + "value problem to 1e-10",
            Reason + " The tip angle is read on the last link, whose own droop vanishes as 1/n^2 too.", rows,
            Steps(n => -Bend(n, 0.0, 8.0).TipYM, 0.640631));
    }

    [PublishedCheck]
    public static Check OwnWeightBuckling()
    {
        const double exact = 7.837347;
        double Critical(int n)
        {
            // Bisection on the sign of the smallest stiffness: a slightly leaning column stays up or falls over.
            double low = 7.0, high = 9.0;
            for (int i = 0; i < 40; i++)
            {
                double mid = 0.5 * (low + high);
                double bend = Math.Abs(Column(n, mid));
                (low, high) = bend < 1e-3 ? (mid, high) : (low, mid);
            }

            return low;
        }

        double Column(int n, double q) => RodStatics.Solve(
            RodChain.Build(new RodTaper(1.0, 1.0, 1.0, 1.0, 4.0, 2.0, 0.01), n), (Math.PI / 2.0) - 1e-9, 0.0, 0.0, q).TipXM;
        return new Check("B7b", "Height at which an upright rod buckles under its own weight, w L^3/EI",
            "Greenhill 1881: (9/4) j^2 with J_-1/3(j) = 0, recomputed to 9 digits",
            "Discretisation 1/n^2, Richardson's limit of n = 32 and 64; a lean of 1e-9 rad rounds the corner off by 1e-6.",
            [Compare("critical load", exact, ((4.0 * Critical(64)) - Critical(32)) / 3.0) with { Tolerance = 2e-5 }],
            new Ladder("n", "critical load, relative", [.. new[] { 8, 16, 32 }.Select(n => ((double)n, Math.Abs((Critical(n) / exact) - 1.0)))],
                1.9, "order 2 of a chain of links; 0.1 for the next term"));
    }

    private static RodShape Bend(int n, double tipLoad, double weight) => RodStatics.Solve(
        RodChain.Build(new RodTaper(1.0, 1.0, 1.0, 1.0, 4.0, 2.0, 0.01), n), 0.0, 0.0, -tipLoad, weight);

    private static double EndAngle(RodShape shape) => -shape.TipAngleRad;

    private static double Limit(Func<int, double> value) => ((4.0 * value(Fine)) - value(Fine / 2)) / 3.0;

    private static Ladder Steps(Func<int, double> value, double exact) => new(
        "n", "tip deflection, relative",
        [.. new[] { 8, 16, 32, 64 }.Select(n => ((double)n, Math.Abs((value(n) / exact) - 1.0)))],
        1.9, "order 2 of a chain of links; 0.1 for the next term");

    private static Row Compare(string quantity, double expected, double computed) =>
        new(quantity, "-", expected, computed, 1e-5, Tol.Relative);
}
