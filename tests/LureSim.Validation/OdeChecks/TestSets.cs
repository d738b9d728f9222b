using LureSim.References.Ode;

namespace LureSim.Validation.OdeChecks;

/// <summary>Problems of the classical test sets.</summary>
public static class TestSets
{
    private const string Detest = "Hull, Enright, Fellen, Sedgwick 1972, SIAM J. Numer. Anal. 9:603; Enright and Pryce 1987, ACM TOMS 13:1";

    /// <summary>O3.</summary>
    [PublishedCheck]
    public static Check Brusselator()
    {
        double[] end = [0.4986370712683478, 4.596780349452011];
        double[] Run(double tolerance) => Problem.Solve(20.0, tolerance, [1.5, 3.0], (_, y, f) =>
        {
            f[0] = 1.0 + (y[0] * y[0] * y[1]) - (4.0 * y[0]);
            f[1] = (3.0 * y[0]) - (y[0] * y[0] * y[1]);
        });
        return new Check(
            "O3", "Brusselator at t = 20", "Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, p. 116; digits as in a public sample",
            "ten digits at a tolerance of 1e-12", Problem.Rows(["y1", "y2"], end, Run(1e-12), 1e-9), Problem.Tolerances(end, Run));
    }

    /// <summary>O4.</summary>
    [PublishedCheck]
    public static Check Robertson()
    {
        (double T, double[] Y)[] ends =
        [
            (0.4, [0.985172113861, 3.38639537897e-5, 0.0147940221852]), (4.0, [0.905518678584, 2.24047568756e-5, 0.0944589166588]),
        ];
        double[] Run(double t) => Problem.Solve(t, 1e-9, [1.0, 0.0, 0.0], (_, y, f) =>
        {
            double slow = 0.04 * y[0], fast = 1e4 * y[1] * y[2], square = 3e7 * y[1] * y[1];
            (f[0], f[1], f[2]) = (fast - slow, slow - fast - square, square);
        });
        return new Check(
            "O4", "Robertson's stiff reactions, early times", "Hairer and Wanner, Solving Ordinary Differential Equations II, sec. IV.1; digits as in public files",
            "an explicit method follows a stiff problem at its stability limit, where the error stays near the tolerance of 1e-9 times the count of steps",
            [.. ends.SelectMany(e => Problem.Rows([$"y1({e.T})", $"y2({e.T})", $"y3({e.T})"], e.Y, Run(e.T), 1e-7))]);
    }

    /// <summary>O5, one equation each.</summary>
    [PublishedCheck]
    public static Check SingleEquations()
    {
        (string Name, double Start, double End, OdeFunction F)[] cases =
        [
            ("A1 y' = -y", 1.0, Math.Exp(-20.0), (_, y, f) => f[0] = -y[0]),
            ("A2 y' = -y^3/2", 1.0, 0.2182178902, (_, y, f) => f[0] = -0.5 * y[0] * y[0] * y[0]),
            ("A3 y' = y cos t", 1.0, 2.491650271850, (t, y, f) => f[0] = y[0] * Math.Cos(t)),
            ("A4 y' = (y/4)(1 - y/20)", 1.0, 17.73016648131, (_, y, f) => f[0] = 0.25 * y[0] * (1.0 - (y[0] / 20.0))),
            ("A5 y' = (y - t)/(y + t)", 4.0, -0.788782668896, (t, y, f) => f[0] = (y[0] - t) / (y[0] + t)),
        ];
        return new Check(
            "O5", "Test set of non-stiff problems, one equation, t = 20", Detest, "the ten digits given; tolerance of the run 1e-12",
            [.. cases.Select(c => new Row(c.Name, "", c.End, Problem.Solve(20.0, 1e-12, [c.Start], c.F)[0], 2e-10 * Math.Max(1.0, Math.Abs(c.End)), Tol.Absolute))]);
    }

    /// <summary>O5, systems.</summary>
    [PublishedCheck]
    public static Check Systems()
    {
        (string Name, double[] Start, double[] End, OdeFunction F)[] cases =
        [
            ("B1 rival species", [1, 3], [0.6761876008576667, 0.1860816099640036], (_, y, f) => (f[0], f[1]) = (2.0 * (y[0] - (y[0] * y[1])), -(y[1] - (y[0] * y[1])))),
            ("B4 torus", [3, 0, 0], [0.9826950928, 2.1984470817, 0.9129452507], Torus),
            ("B5 rigid body", [0, 1, 1], [-0.93965707988, -0.34211777541, 0.74141265962], (_, y, f) => (f[0], f[1], f[2]) = (y[1] * y[2], -y[0] * y[2], -0.51 * y[0] * y[1])),
            ("E2 Van der Pol", [2, 0], [2.00814976217, -0.04250887527], (_, y, f) => (f[0], f[1]) = (y[1], ((1.0 - (y[0] * y[0])) * y[1]) - y[0])),
            ("E3 driven Duffing", [0, 0], [-0.10041788586, 0.24114001321], (t, y, f) => (f[0], f[1]) = (y[1], (y[0] * y[0] * y[0] / 6.0) - y[0] + (2.0 * Math.Sin(2.78535 * t)))),
        ];
        return new Check(
            "O5b", "Test set of non-stiff problems, systems, t = 20", Detest, "the ten digits given; tolerance of the run 1e-12",
            [.. cases.SelectMany(c => Problem.Rows([.. c.End.Select((_, i) => $"{c.Name}, y{i + 1}")], c.End, Problem.Solve(20.0, 1e-12, c.Start, c.F), 2e-9))]);
    }

    private static void Torus(double t, ReadOnlySpan<double> y, Span<double> f)
    {
        double r = Math.Sqrt((y[0] * y[0]) + (y[1] * y[1]));
        f[0] = -y[1] - (y[0] * y[2] / r);
        f[1] = y[0] - (y[1] * y[2] / r);
        f[2] = y[0] / r;
    }
}
