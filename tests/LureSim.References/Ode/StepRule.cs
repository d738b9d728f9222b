namespace LureSim.References.Ode;

/// <summary>How long steps are and how many may be taken.</summary>
public abstract class StepRule
{
    private readonly int _maxSteps = 1_000_000;

    private protected StepRule()
    {
    }

    /// <summary>Most steps, accepted and rejected together, at least 1. A guard against endless runs, not an accuracy.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public int MaxSteps
    {
        get => _maxSteps;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            _maxSteps = value;
        }
    }

    internal abstract IStepControl CreateControl();
}
