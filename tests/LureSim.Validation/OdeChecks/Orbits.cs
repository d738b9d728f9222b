using LureSim.References.Ode;

namespace LureSim.Validation.OdeChecks;

/// <summary>Orbits with known ends.</summary>
public static class Orbits
{
    private static readonly double[] PleiadesEnd =
    [
        0.3706139143970502, 3.237284092057233, -3.222559032418324, 0.6597091455775310, 0.3425581707156584, 1.562172101400631,
        -0.7003092922212495, -3.943437585517392, -3.271380973972550, 5.225081843456543, -2.590612434977470, 1.198213693392275,
        -0.2429682344935824, 1.091449240428980,
    ];

    /// <summary>O1.</summary>
    [PublishedCheck]
    public static Check Arenstorf()
    {
        double[] start = [0.994, 0.0, 0.0, -2.00158510637908252240537862224];
        double[] Run(double tolerance) => Problem.Solve(17.0652165601579625588917206249, tolerance, start, ThreeBody);
        return new Check(
            "O1", "Closed orbit of a small body near earth and moon",
            "Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, sec. II.0; start and period as in public test files",
            "the orbit passes the earth so close that errors grow about 1e5 times; at a tolerance of 1e-12 closure within 1e-6",
            Problem.Rows(["x", "y", "x'", "y'"], start, Run(1e-12), 1e-6),
            new Ladder("relative tolerance", "the largest component", [.. new[] { 1e-8, 1e-10, 1e-12 }.Select(t => (t, start.Zip(Run(t), (a, b) => Math.Abs(a - b)).Max()))],
                0.6, "error follows tolerance, order 1; errors grow 1e5 times on this orbit and the loosest run is not yet in that regime"));
    }

    /// <summary>O2.</summary>
    [PublishedCheck]
    public static Check Pleiades()
    {
        double[] start =
        [
            3, 3, -1, -3, 2, -2, 2, 3, -3, 2, 0, 0, -4, 4, 0, 0, 0, 0, 0, 1.75, -1.5, 0, 0, 0, -1.25, 1, 0, 0,
        ];
        double[] Run(double tolerance) => [.. Problem.Solve(3.0, tolerance, start, SevenStars).Take(14)];
        string[] names = [.. Enumerable.Range(1, 7).Select(i => $"x{i}(3)"), .. Enumerable.Range(1, 7).Select(i => $"y{i}(3)")];
        return new Check(
            "O2", "Seven stars in a plane at t = 3", "IVP test set, problem Pleiades; values as in public test files",
            "close encounters amplify; at a tolerance of 1e-12 eight digits", Problem.Rows(names, PleiadesEnd, Run(1e-12), 1e-7),
            Problem.Tolerances(PleiadesEnd, Run));
    }

    private static void ThreeBody(double t, ReadOnlySpan<double> y, Span<double> f)
    {
        const double Mu = 0.012277471, Rest = 1.0 - Mu;
        double d1 = Math.Pow(((y[0] + Mu) * (y[0] + Mu)) + (y[1] * y[1]), 1.5);
        double d2 = Math.Pow(((y[0] - Rest) * (y[0] - Rest)) + (y[1] * y[1]), 1.5);
        (f[0], f[1]) = (y[2], y[3]);
        f[2] = y[0] + (2.0 * y[3]) - (Rest * (y[0] + Mu) / d1) - (Mu * (y[0] - Rest) / d2);
        f[3] = y[1] - (2.0 * y[2]) - (Rest * y[1] / d1) - (Mu * y[1] / d2);
    }

    private static void SevenStars(double t, ReadOnlySpan<double> y, Span<double> f)
    {
        for (int i = 0; i < 7; i++)
        {
            double ax = 0.0, ay = 0.0;
            for (int j = 0; j < 7; j++)
            {
                double dx = y[j] - y[i], dy = y[7 + j] - y[7 + i];
                double r3 = Math.Pow((dx * dx) + (dy * dy), 1.5);
                ax += i == j ? 0.0 : (j + 1) * dx / r3;
                ay += i == j ? 0.0 : (j + 1) * dy / r3;
            }

            (f[i], f[7 + i], f[14 + i], f[21 + i]) = (y[14 + i], y[21 + i], ax, ay);
        }
    }
}
