namespace LureSim.Numerics.Steps;

/// <summary>
/// Coefficients of one step of the two-step backward differentiation formula with variable step:
/// y(n+1) = HistoryNow y(n) + HistoryBefore y(n-1) + Q y'(n+1). Order 2; with no history it is backward Euler (order 1).
/// Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, sec. III.5 (from memory); stable for step ratios
/// below 1 + sqrt 2.
/// </summary>
/// <param name="Q">q, s: weight of the new derivative, 2 dt/3 at constant step.</param>
/// <param name="HistoryNow">Weight of y(n), 4/3 at constant step.</param>
/// <param name="HistoryBefore">Weight of y(n-1), -1/3 at constant step.</param>
/// <param name="Dt">Step, s.</param>
/// <param name="Ratio">This step over the one before; 0 without history.</param>
public readonly record struct Bdf2(double Q, double HistoryNow, double HistoryBefore, double Dt, double Ratio)
{
    /// <summary>First step, no history.</summary>
    /// <param name="dt">Step, s, positive.</param>
    public static Bdf2 BackwardEuler(double dt) => new(dt, 1.0, 0.0, dt, 0.0);

    /// <summary>Step after a step of length <paramref name="dtBefore"/>.</summary>
    /// <param name="dt">Step, s, positive, at most 2.4 times the step before.</param>
    /// <param name="dtBefore">Step before, s, positive.</param>
    public static Bdf2 Step(double dt, double dtBefore)
    {
        double w = dt / dtBefore;
        double scale = 1.0 / (1.0 + (2.0 * w));
        return new Bdf2(dt * (1.0 + w) * scale, (1.0 + w) * (1.0 + w) * scale, -w * w * scale, dt, w);
    }

    /// <summary>(q^2, q): v = v* + q a, x = x* + q v.</summary>
    public StepGains Gains => new(Q * Q, Q);

    /// <summary>The part of the new value that history fixes.</summary>
    /// <param name="now">y(n).</param>
    /// <param name="before">y(n-1).</param>
    public double History(double now, double before) => (HistoryNow * now) + (HistoryBefore * before);

    /// <summary>Linear extrapolation to the end of the step, the guess of the first pass.</summary>
    /// <param name="now">y(n).</param>
    /// <param name="before">y(n-1).</param>
    public double Extrapolate(double now, double before) => now + (Ratio * (now - before));
}
