namespace LureSim.Numerics.Steps;

/// <summary>
/// What a step scheme makes of an unknown acceleration a that acts through it: a spring sees the place x = x_free + gx a, a dashpot
/// the rate v = v_free + gv a. A spring k with a dashpot c between bodies of inverse mass W then pulls with
/// T = k (gap + gx W' T) + c (rate + gv W' T), W' = -W: one linear equation, T (1/(gx k + gv c) + W) = (k gap + c rate)/(gx k + gv c).
/// The lines of water and air, and the rods of both, are such rows; their schemes differ in nothing but the two gains.
/// </summary>
/// <param name="Place">gx, s2.</param>
/// <param name="Rate">gv, s.</param>
public readonly record struct StepGains(double Place, double Rate)
{
    /// <summary>gx k + gv c, kg: the mass that spring and dashpot stand for in this step.</summary>
    /// <param name="stiffness">k, N/m, 0 or more.</param>
    /// <param name="damping">c, N s/m, 0 or more.</param>
    public double Mass(double stiffness, double damping) => (Place * stiffness) + (Rate * damping);
}
