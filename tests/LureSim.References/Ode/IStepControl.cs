namespace LureSim.References.Ode;

/// <summary>Chooses the steps of one run.</summary>
internal interface IStepControl
{
    /// <summary>Called at the start and after every jump of state or right side, with the stepper at its new start.</summary>
    public void Restart(Stepper stepper, double limit);

    /// <summary>End of the next step, at most <paramref name="limit"/>.</summary>
    public double Next(double t, double limit);

    /// <summary>Judges the step just tried and prepares the next.</summary>
    public bool Accepts(Stepper stepper);

    /// <summary>After a rejection: why it is no use to try again, or null.</summary>
    public OdeStatus? Failure(double t);
}
