namespace LureSim.Numerics.Steps;

/// <summary>
/// One step of the implicit midpoint rule in the acceleration a, which holds over the whole step: forces are taken at the midpoint.
/// Order 2, no numerical damping, energy of a linear spring kept exactly (Hairer, Lubich, Wanner, Geometric Numerical Integration,
/// sec. II.1, from memory). What is linear goes into the matrix by the gains, the rest is taken at the midpoint of the last pass.
/// </summary>
/// <param name="Dt">h, step, s, positive.</param>
public readonly record struct Midpoint(double Dt)
{
    /// <summary>Half a step, s.</summary>
    public double Half => 0.5 * Dt;

    /// <summary>(h^2/4, h/2): spring and dashpot both at the midpoint.</summary>
    public StepGains Gains => new(0.25 * Dt * Dt, 0.5 * Dt);

    /// <summary>(h^2/4, h): the dashpot at the end of the step. It damps modes that the step does not resolve, which the midpoint leaves ringing, and
    /// is of order 1 in the dashpot alone.</summary>
    public StepGains LateDamping => new(0.25 * Dt * Dt, Dt);

    /// <summary>Place at the midpoint.</summary>
    /// <param name="place">x at the start.</param>
    /// <param name="rate">v at the start.</param>
    /// <param name="acceleration">a.</param>
    public double PlaceOf(double place, double rate, double acceleration) =>
        place + (0.5 * Dt * rate) + (0.25 * Dt * Dt * acceleration);

    /// <summary>Rate at the midpoint.</summary>
    /// <param name="rate">v at the start.</param>
    /// <param name="acceleration">a.</param>
    public double RateOf(double rate, double acceleration) => rate + (0.5 * Dt * acceleration);

    /// <summary>Way over the whole step.</summary>
    /// <param name="rate">v at the start.</param>
    /// <param name="acceleration">a.</param>
    public double Way(double rate, double acceleration) => (Dt * rate) + (0.5 * Dt * Dt * acceleration);
}
