namespace LureSim.References.Ode;

/// <summary>Equal steps: between two stops (start, breakpoints, mapped events, end) the largest step not above
/// <see cref="Step"/> that fits a whole number of times.</summary>
public sealed class FixedSteps : StepRule
{
    /// <summary>Creates the rule.</summary>
    /// <param name="step">h, finite, above 0, in the problem's time unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not finite or not above 0.</exception>
    public FixedSteps(double step)
    {
        if (!(double.IsFinite(step) && step > 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "the step must be finite and above 0");
        }

        Step = step;
    }

    /// <summary>h.</summary>
    public double Step { get; }

    internal override IStepControl CreateControl() => new FixedControl(Step);
}
