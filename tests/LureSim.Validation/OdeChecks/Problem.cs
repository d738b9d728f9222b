using LureSim.References.Ode;

namespace LureSim.Validation.OdeChecks;

/// <summary>A test problem of the ODE literature and how to solve it.</summary>
internal static class Problem
{
    /// <summary>State at <paramref name="end"/> by the adaptive method at one tolerance.</summary>
    public static double[] Solve(double end, double tolerance, double[] start, OdeFunction f)
    {
        var problem = new OdeProblem(new FunctionSystem(start.Length, f), 0.0, end, start);
        OdeSolution s = DormandPrince54.Solve(problem, new AdaptiveSteps(tolerance, 1e-3 * tolerance) { MaxSteps = 3_000_000 });
        return s.Status == OdeStatus.Success ? [.. s.State] : throw new InvalidOperationException(s.Status.ToString());
    }

    /// <summary>Largest component error at falling tolerances: the ladder of an adaptive method.</summary>
    public static Ladder Tolerances(double[] expected, Func<double, double[]> solve) => new(
        "relative tolerance", "the largest component",
        [.. new[] { 1e-4, 1e-6, 1e-8, 1e-10 }.Select(t => (t, expected.Zip(solve(t), (a, b) => Math.Abs(a - b)).Max()))],
        0.8, "error follows tolerance, order 1 with local extrapolation; 0.2, as the steps that it takes are whole numbers");

    /// <summary>Rows of absolute errors.</summary>
    public static Row[] Rows(IReadOnlyList<string> names, double[] expected, double[] computed, double tolerance) =>
        [.. expected.Select((e, i) => new Row(names[i], "", e, computed[i], tolerance, Tol.Absolute))];
}
