namespace LureSim.Model.Reels;

/// <summary>How the torque of a spool brake grows with the speed of the spool.</summary>
public enum BrakeLaw
{
    /// <summary>~ w: magnets over a thin metal cup that always overlap it.</summary>
    Linear,

    /// <summary>~ w^2: blocks that spin out against a ring.</summary>
    Quadratic,

    /// <summary>~ w^3 below a knee, ~ w above it: magnets into which speed draws the cup.</summary>
    Cubic,

    /// <summary>The same at any speed: a cap screwed down.</summary>
    Constant,
}

/// <summary>
/// Torque of a spool brake. In free flight the lure slows as v' = -rho CdA/(2 m) v^2, the spool as w' = -M/I, with v = R w while the line runs
/// straight off; both agree at all speeds when M = c w^2, c = I R rho CdA/(2 m). That is the brake that matches the lure. Other laws match it
/// at the launch speed w_L: M = s c w_L^2 f(w/w_L), f = x, x^2, x^3 (1 + (w_L/w_k)^2)/(1 + (w/w_k)^2), 1.
/// </summary>
/// <remarks>An eddy-current torque is linear up to a knee that thin aluminium cups never reach in a cast (guess); the knee here is that of a cup that
/// speed draws fully into its magnets.</remarks>
/// <param name="Law">f.</param>
/// <param name="MatchedNms2">s c, strength times the matched coefficient, N m s2.</param>
/// <param name="LaunchRadS">w_L, rad/s.</param>
internal readonly record struct SpoolBrake(BrakeLaw Law, double MatchedNms2, double LaunchRadS)
{
    // w_k, rad/s, guess: three quarters of the highest spool speeds of hard casts.
    private const double KneeRadS = 1500.0;

    /// <summary>M/w at a speed, N m s; for the constant law see <see cref="DryNm"/>.</summary>
    /// <param name="w">Spool speed, 0 or more, rad/s.</param>
    public double Secant(double w) => Law switch
    {
        BrakeLaw.Linear => MatchedNms2 * LaunchRadS,
        BrakeLaw.Quadratic => MatchedNms2 * w,
        BrakeLaw.Cubic => MatchedNms2 * w * w / LaunchRadS * Knee(LaunchRadS) / Knee(w),
        _ => 0.0,
    };

    /// <summary>Torque that does not depend on speed, N m.</summary>
    public double DryNm => Law == BrakeLaw.Constant ? MatchedNms2 * LaunchRadS * LaunchRadS : 0.0;

    private static double Knee(double w) => 1.0 + (w * w / (KneeRadS * KneeRadS));
}
