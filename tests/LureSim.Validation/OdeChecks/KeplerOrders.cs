using LureSim.Numerics.Steps;
using LureSim.References.Ode;

namespace LureSim.Validation.OdeChecks;

/// <summary>Two-body orbits: exact ends, measured orders.</summary>
public static class KeplerOrders
{
    private static readonly (double E, double X, double Y)[] Ends =
    [
        (0.1, 0.2198835352, 0.9427076846), (0.3, -0.1777027357, 0.9467784720), (0.5, -0.5780432953, 0.8633840009),
        (0.7, -0.9538990293, 0.6907409024), (0.9, -1.2952662510, 0.4003938964),
    ];

    /// <summary>O5, orbits.</summary>
    [PublishedCheck]
    public static Check TwoBodies() => new(
        "O5c", "Two-body orbits of eccentricity 0.1 to 0.9, position at t = 20",
        "Hull, Enright, Fellen, Sedgwick 1972, problems D1 to D5; positions from Kepler's equation E - e sin E = 20",
        "ten digits; the tolerance of the run is 1e-13 and close passages at e = 0.9 amplify about 1e3 times",
        [.. Ends.SelectMany(o =>
        {
            double[] y = Problem.Solve(20.0, 1e-13, Start(o.E), Attraction);
            return Problem.Rows([$"x, e = {o.E}", $"y, e = {o.E}"], [o.X, o.Y], [y[0], y[1]], 2e-9);
        })]);

    /// <summary>O7, classical method.</summary>
    [PublishedCheck]
    public static Check OrderFour() => Order(
        "O7", "Order of the classical Runge-Kutta method", 4.0, [3200, 6400, 12800],
        n => Error([.. ClassicalRk4.Solve(Orbit(), new FixedSteps(20.0 / n)).State]));

    /// <summary>O7, Dormand-Prince.</summary>
    [PublishedCheck]
    public static Check OrderFive() => Order(
        "O7b", "Order of the Dormand-Prince method at fixed step", 5.0, [1000, 2000],
        n => Error([.. DormandPrince54.Solve(Orbit(), new FixedSteps(20.0 / n)).State]));

    /// <summary>O7, driven problem.</summary>
    [PublishedCheck]
    public static Check OrderFourDriven() => Order(
        "O7c", "Order of the classical method where time stands in the right side (y' = y cos t)", 4.0, [1280, 2560, 5120],
        n => Math.Abs(ClassicalRk4.Solve(Driven(), new FixedSteps(20.0 / n)).State[0] - Math.Exp(Math.Sin(20.0))));

    /// <summary>O7, the two-step formula of the line.</summary>
    [PublishedCheck]
    public static Check OrderTwo() => Order(
        "O7d", "Order of the line's BDF2 with its first step and a step that changes (y' = y cos t)", 2.0, [2000, 4000, 8000, 16000], BackwardError);

    private static Check Order(string code, string title, double order, int[] steps, Func<int, double> error)
    {
        double[] errors = [.. steps.Select(error)];
        return new Check(
            code, title, "Halving a fixed step must cut the error by 2^p (standard practice)", "0.1, the next term of the error series at these steps",
            [.. errors.Skip(1).Select((e, i) => new Row($"p from {steps[i]} to {steps[i + 1]} steps", "", order, Math.Log2(errors[i] / e), 0.1, Tol.Absolute))],
            new Ladder("steps", "the end state", [.. steps.Zip(errors, (n, e) => ((double)n, e))],
                order - 0.1, "as the rows say"));
    }

    // Implicit in y, so solved exactly; the step doubles half-way, as the step rule of the line may demand.
    private static double BackwardError(int n)
    {
        double fine = 20.0 / (1.5 * n), t = 0.0, before = 0.0, y = 1.0, stepBefore = 0.0;
        for (int k = 0; t < 20.0 - 1e-9; k++)
        {
            double dt = t < 10.0 - 1e-9 ? fine : 2.0 * fine;
            Bdf2 step = k == 0 ? Bdf2.BackwardEuler(dt) : Bdf2.Step(dt, stepBefore);
            t += dt;
            (before, y) = (y, step.History(y, before) / (1.0 - (step.Q * Math.Cos(t))));
            stepBefore = dt;
        }

        return Math.Abs(y - Math.Exp(Math.Sin(20.0)));
    }

    private static OdeProblem Orbit() => new(new FunctionSystem(4, Attraction), 0.0, 20.0, Start(0.1));

    private static OdeProblem Driven() => new(new FunctionSystem(1, (t, y, f) => f[0] = y[0] * Math.Cos(t)), 0.0, 20.0, [1.0]);

    private static double Error(double[] y)
    {
        const double E = 0.1;
        double anomaly = 20.0;
        for (int i = 0; i < 50; i++)
        {
            anomaly = 20.0 + (E * Math.Sin(anomaly));
        }

        double x = Math.Cos(anomaly) - E, across = Math.Sqrt(1.0 - (E * E)) * Math.Sin(anomaly);
        return Math.Max(Math.Abs(y[0] - x), Math.Abs(y[1] - across));
    }

    private static double[] Start(double e) => [1.0 - e, 0.0, 0.0, Math.Sqrt((1.0 + e) / (1.0 - e))];

    private static void Attraction(double t, ReadOnlySpan<double> y, Span<double> f)
    {
        double r3 = Math.Pow((y[0] * y[0]) + (y[1] * y[1]), 1.5);
        (f[0], f[1], f[2], f[3]) = (y[2], y[3], -y[0] / r3, -y[1] / r3);
    }
}
