using static LureSim.References.Ode.DormandPrinceTableau;

namespace LureSim.References.Ode;

/// <summary>A step of the Dormand-Prince 5(4) pair: six evaluations, fifth order, interpolant of fourth order.</summary>
internal sealed class DormandPrinceStepper : Stepper
{
    private readonly double[] _k2, _k3, _k4, _k5, _k6, _stage;
    private readonly double[] _r3, _r4, _r5;
    private bool _interpolantReady;

    public DormandPrinceStepper(IOdeSystem system)
        : base(system)
    {
        int n = system.Dimension;
        (_k2, _k3, _k4, _k5, _k6) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        (_stage, _r3, _r4, _r5) = (new double[n], new double[n], new double[n], new double[n]);
    }

    public override double Error(AdaptiveSteps rule)
    {
        double h = H;
        double[] k1 = F0, k3 = _k3, k4 = _k4, k5 = _k5, k6 = _k6, k7 = F1, e = _stage;
        for (int i = 0; i < e.Length; i++)
        {
            e[i] = h * ((E1 * k1[i]) + (E3 * k3[i]) + (E4 * k4[i]) + (E5 * k5[i]) + (E6 * k6[i]) + (E7 * k7[i]));
        }

        return rule.Norm(e, Y0, Y1);
    }

    protected override void Advance()
    {
        _interpolantReady = false;
        double t = T0, h = H;
        double[] y = Y0, y1 = Y1, s = _stage, k1 = F0, k2 = _k2, k3 = _k3, k4 = _k4, k5 = _k5, k6 = _k6;
        int n = y.Length;
        for (int i = 0; i < n; i++)
        {
            s[i] = y[i] + (h * A21 * k1[i]);
        }

        Evaluate(t + (C2 * h), s, k2);
        for (int i = 0; i < n; i++)
        {
            s[i] = y[i] + (h * ((A31 * k1[i]) + (A32 * k2[i])));
        }

        Evaluate(t + (C3 * h), s, k3);
        for (int i = 0; i < n; i++)
        {
            s[i] = y[i] + (h * ((A41 * k1[i]) + (A42 * k2[i]) + (A43 * k3[i])));
        }

        Evaluate(t + (C4 * h), s, k4);
        for (int i = 0; i < n; i++)
        {
            s[i] = y[i] + (h * ((A51 * k1[i]) + (A52 * k2[i]) + (A53 * k3[i]) + (A54 * k4[i])));
        }

        Evaluate(t + (C5 * h), s, k5);
        for (int i = 0; i < n; i++)
        {
            s[i] = y[i] + (h * ((A61 * k1[i]) + (A62 * k2[i]) + (A63 * k3[i]) + (A64 * k4[i]) + (A65 * k5[i])));
        }

        Evaluate(T1, s, k6);
        for (int i = 0; i < n; i++)
        {
            y1[i] = y[i] + (h * ((B1 * k1[i]) + (B3 * k3[i]) + (B4 * k4[i]) + (B5 * k5[i]) + (B6 * k6[i])));
        }

        Evaluate(T1, y1, F1);
    }

    protected override void Interpolate(double theta, Span<double> y)
    {
        if (!_interpolantReady)
        {
            PrepareInterpolant();
        }

        double left = 1.0 - theta;
        for (int i = 0; i < y.Length; i++)
        {
            double rise = Y1[i] - Y0[i];
            y[i] = Y0[i] + (theta * (rise + (left * (_r3[i] + (theta * (_r4[i] + (left * _r5[i])))))));
        }
    }

    private void PrepareInterpolant()
    {
        double h = H;
        double[] k1 = F0, k3 = _k3, k4 = _k4, k5 = _k5, k6 = _k6, k7 = F1;
        for (int i = 0; i < k1.Length; i++)
        {
            double rise = Y1[i] - Y0[i];
            _r3[i] = (h * k1[i]) - rise;
            _r4[i] = rise - (h * k7[i]) - _r3[i];
            _r5[i] = h * ((D1 * k1[i]) + (D3 * k3[i]) + (D4 * k4[i]) + (D5 * k5[i]) + (D6 * k6[i]) + (D7 * k7[i]));
        }

        _interpolantReady = true;
    }
}
