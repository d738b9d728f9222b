namespace LureSim.References.Ode;

/// <summary>One step of a one-step method with its interpolant. Memory is taken once, in the constructor.</summary>
internal abstract class Stepper(IOdeSystem system)
{
    /// <summary>Start of the step.</summary>
    public double T0 { get; private set; }

    /// <summary>End of the step.</summary>
    public double T1 { get; protected set; }

    /// <summary>State at T0.</summary>
    public double[] Y0 { get; private set; } = new double[system.Dimension];

    /// <summary>State at T1.</summary>
    public double[] Y1 { get; private set; } = new double[system.Dimension];

    /// <summary>Rates at T0.</summary>
    public double[] F0 { get; private set; } = new double[system.Dimension];

    /// <summary>Rates at T1: the first stage of the next step.</summary>
    public double[] F1 { get; private set; } = new double[system.Dimension];

    /// <summary>Calls of the right side so far.</summary>
    public long Evaluations { get; private set; }

    /// <summary>Length of the step.</summary>
    protected double H => T1 - T0;

    /// <summary>Places the start of the next step.</summary>
    public void Place(double t, ReadOnlySpan<double> y)
    {
        T0 = T1 = t;
        y.CopyTo(Y0);
    }

    /// <summary>Moves the start in time, state unchanged.</summary>
    public void Move(double t) => T0 = T1 = t;

    /// <summary>Rates at the start, needed after Place or Move.</summary>
    public void EvaluateStart() => Evaluate(T0, Y0, F0);

    /// <summary>Fills Y1 and F1 for a step from T0 to <paramref name="t1"/>.</summary>
    public void Attempt(double t1)
    {
        T1 = t1;
        Advance();
    }

    /// <summary>Makes the end of the step the start of the next.</summary>
    public void Accept()
    {
        T0 = T1;
        (Y0, Y1) = (Y1, Y0);
        (F0, F1) = (F1, F0);
    }

    /// <summary>State at a time of the step just tried.</summary>
    public void At(double t, Span<double> y)
    {
        if (t <= T0)
        {
            Y0.CopyTo(y);
        }
        else if (t >= T1)
        {
            Y1.CopyTo(y);
        }
        else
        {
            Interpolate((t - T0) / H, y);
        }
    }

    /// <summary>Weighted norm of the error estimate of the step just tried.</summary>
    public abstract double Error(AdaptiveSteps rule);

    /// <summary>Calls and counts the right side.</summary>
    public void Evaluate(double t, double[] y, double[] dydt)
    {
        system.Evaluate(t, y, dydt);
        Evaluations++;
    }

    /// <summary>Stages of the step from T0, Y0, F0 to T1.</summary>
    protected abstract void Advance();

    /// <summary>State at theta = (t - T0) / H, 0 to 1.</summary>
    protected abstract void Interpolate(double theta, Span<double> y);
}
