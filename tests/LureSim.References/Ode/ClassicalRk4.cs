namespace LureSim.References.Ode;

/// <summary>Classical fourth-order Runge-Kutta method with fixed steps: the plain reference integrator.</summary>
/// <remarks>An instance steps one system by hand without allocating; it is good for one thread at a time.</remarks>
public sealed class ClassicalRk4
{
    private readonly Rk4Stepper _stepper;
    private readonly int _dimension;

    /// <summary>Takes the memory for stepping one system.</summary>
    /// <param name="system">Right side.</param>
    public ClassicalRk4(IOdeSystem system)
    {
        ArgumentNullException.ThrowIfNull(system);
        _stepper = new Rk4Stepper(system);
        _dimension = system.Dimension;
    }

    /// <summary>Integrates a problem with equal steps; events, breakpoints and saving as with the adaptive method.</summary>
    /// <param name="problem">What to integrate.</param>
    /// <param name="rule">Step.</param>
    /// <param name="cancel">Asked before each step.</param>
    public static OdeSolution Solve(OdeProblem problem, FixedSteps rule, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(rule);
        return new OdeRun(problem, new Rk4Stepper(problem.System), rule).Execute(cancel);
    }

    /// <summary>One step from t to t + h, four evaluations, nothing allocated and nothing checked: a state that is not finite
    /// passes through.</summary>
    /// <param name="t">Time.</param>
    /// <param name="h">Step; may be negative.</param>
    /// <param name="y">State at t; replaced by that at t + h.</param>
    /// <exception cref="ArgumentException">The state has the wrong length.</exception>
    public void Step(double t, double h, Span<double> y)
    {
        if (y.Length != _dimension)
        {
            throw new ArgumentException($"state has {y.Length} values, the system {_dimension}", nameof(y));
        }

        _stepper.Place(t, y);
        _stepper.EvaluateStart();
        _stepper.AdvanceState(t + h);
        _stepper.Y1.CopyTo(y);
    }
}
