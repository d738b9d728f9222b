namespace LureSim.References.Ode;

/// <summary>First step of an adaptive run.</summary>
/// <remarks>Hairer, Norsett, Wanner I, II.4, "starting step size" (from memory): a step whose explicit Euler increment is a
/// hundredth of the state, and one whose fifth-order error term is about a hundredth of the tolerance.</remarks>
internal static class InitialStep
{
    /// <summary>A first step, at most limit - T0. One evaluation. Uses Y1 and F1 as scratch.</summary>
    public static double Guess(Stepper s, AdaptiveSteps rule, double limit)
    {
        double[] y0 = s.Y0, f0 = s.F0, y1 = s.Y1, f1 = s.F1;
        double length = Math.Min(limit - s.T0, rule.LargestStep);
        double d0 = rule.Norm(y0, y0, y0), d1 = rule.Norm(f0, y0, y0);
        double h0 = Math.Min(d0 < 1e-5 || d1 < 1e-5 ? 1e-6 : 0.01 * d0 / d1, length);
        if (!double.IsFinite(h0))
        {
            return length;
        }

        for (int i = 0; i < y0.Length; i++)
        {
            y1[i] = y0[i] + (h0 * f0[i]);
        }

        s.Evaluate(s.T0 + h0, y1, f1);
        for (int i = 0; i < y0.Length; i++)
        {
            f1[i] -= f0[i];
        }

        double steepest = Math.Max(d1, rule.Norm(f1, y0, y0) / h0);
        double h1 = steepest <= 1e-15 ? Math.Max(1e-6, h0 * 1e-3) : Math.Pow(0.01 / steepest, 0.2);
        double h = Math.Min(100.0 * h0, h1);
        return double.IsFinite(h) ? Math.Min(h, length) : h0;
    }
}
