namespace LureSim.References.Ode;

/// <summary>Dormand-Prince 5(4): explicit, fifth order, for problems that are not stiff.</summary>
/// <remarks>On the negative real axis it is stable to h |lambda| of about 3.3: on stiff problems it stays right but needs
/// that many steps.</remarks>
public static class DormandPrince54
{
    /// <summary>Integrates a problem.</summary>
    /// <param name="problem">What to integrate.</param>
    /// <param name="rule">Tolerances, or fixed steps (for order measurements).</param>
    /// <param name="cancel">Asked before each step.</param>
    /// <exception cref="ArgumentException">The number of absolute tolerances is neither 1 nor the dimension.</exception>
    public static OdeSolution Solve(OdeProblem problem, StepRule rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(rule);
        int n = problem.System.Dimension;
        if (rule is AdaptiveSteps { Absolute.Count: > 1 } adaptive && adaptive.Absolute.Count != n)
        {
            throw new ArgumentException($"{adaptive.Absolute.Count} absolute tolerances for {n} components", nameof(rule));
        }

        return new OdeRun(problem, new DormandPrinceStepper(problem.System), rule).Execute(cancel);
    }
}
