namespace LureSim.References.Ode;

/// <summary>A classical Runge-Kutta step with the cubic Hermite interpolant of its ends. The rates at the end are the
/// first stage of the next step, so a step costs four evaluations.</summary>
/// <remarks>W. Kutta, Z. Math. Phys. 46 (1901) 435 (from memory).</remarks>
internal sealed class Rk4Stepper(IOdeSystem system) : Stepper(system)
{
    private readonly double[] _k2 = new double[system.Dimension];
    private readonly double[] _k3 = new double[system.Dimension];
    private readonly double[] _k4 = new double[system.Dimension];
    private readonly double[] _stage = new double[system.Dimension];

    public override double Error(AdaptiveSteps rule) =>
        throw new NotSupportedException("the classical method has no error estimate");

    /// <summary>Fills Y1 only, three evaluations.</summary>
    public void AdvanceState(double t1)
    {
        T1 = t1;
        double h = H, half = 0.5 * h, middle = T0 + half;
        double[] y = Y0, y1 = Y1, k1 = F0, k2 = _k2, k3 = _k3, k4 = _k4, s = _stage;
        for (int i = 0; i < y.Length; i++)
        {
            s[i] = y[i] + (half * k1[i]);
        }

        Evaluate(middle, s, k2);
        for (int i = 0; i < y.Length; i++)
        {
            s[i] = y[i] + (half * k2[i]);
        }

        Evaluate(middle, s, k3);
        for (int i = 0; i < y.Length; i++)
        {
            s[i] = y[i] + (h * k3[i]);
        }

        Evaluate(T1, s, k4);
        for (int i = 0; i < y.Length; i++)
        {
            y1[i] = y[i] + (h / 6.0 * (k1[i] + (2.0 * (k2[i] + k3[i])) + k4[i]));
        }
    }

    protected override void Advance()
    {
        AdvanceState(T1);
        Evaluate(T1, Y1, F1);
    }

    protected override void Interpolate(double theta, Span<double> y)
    {
        double left = 1.0 - theta, h = H;
        for (int i = 0; i < y.Length; i++)
        {
            double rise = Y1[i] - Y0[i];
            double bend = (left * ((h * F0[i]) - rise)) + (theta * (rise - (h * F1[i])));
            y[i] = Y0[i] + (theta * (rise + (left * bend)));
        }
    }
}
