namespace LureSim.Model.Landing;

/// <summary>
/// Lift of a surface that glides on water, without the part that is buoyancy: C_L0 = 0.0120 lambda^(1/2) tau^1.1, tau in degrees, less 0.0065 beta C_L0^0.6 for a
/// bottom that rises to its sides by beta degrees; lift = rho V^2 b^2 C_L/2 (Savitsky 1964, Marine Technology 1:71, equations 15 and 16). Measured for
/// trims of 2 to 15 deg, lengths up to 4 breadths and V above 0.6 sqrt(g b), on boats' bottoms: a fish is softer and rounder.
/// </summary>
internal static class PlaningLift
{
    /// <summary>Largest wetted length over breadth that the formula was measured for.</summary>
    public const double MostSlender = 4.0;

    /// <summary>C_L on the breadth squared; not below 0.</summary>
    /// <param name="slenderness">lambda, wetted length over breadth, 0 to 4.</param>
    /// <param name="trimRad">tau, rad.</param>
    /// <param name="deadriseRad">beta, rad.</param>
    public static double Coefficient(double slenderness, double trimRad, double deadriseRad)
    {
        const double degree = Math.PI / 180.0;
        double flat = 0.0120 * Math.Sqrt(slenderness) * Math.Pow(trimRad / degree, 1.1);
        return Math.Max(0.0, flat - (0.0065 * (deadriseRad / degree) * Math.Pow(flat, 0.6)));
    }
}
