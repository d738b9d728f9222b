using LureSim.Model;
using LureSim.Model.Media;
using LureSim.References.Media;

namespace LureSim.References.Lines;

/// <summary>
/// Surface film on a line much thinner than the capillary length: force per length against the depth the line has drawn the
/// surface down to. Cheap enough for inner loops.
/// </summary>
/// <remarks>
/// A straight meniscus of slope psi at the contact line reaches the depth h = 2 l_c sin(psi/2) and carries F = 2 sigma sin(psi)
/// (both sides). Eliminating psi: F(h) = (2 sigma h/l_c) sqrt(1 - (h/(2 l_c))^2), rising up to psi = 90 deg: h = sqrt(2) l_c, F = 2 sigma.
/// On a thin line the slope cannot pass the contact angle theta either: with theta below 90 deg the water closes over the line at
/// psi = theta. Upward: psi cannot pass pi - theta when a line is lifted off (negative h). Weight of the displaced water is left
/// out; the exact cylinder is <see cref="SurfaceFilmForce"/>.
/// </remarks>
public sealed class ThinLineFilm
{
    private readonly double _sigma;
    private readonly double _capillaryLengthM;

    /// <summary>Creates the law for a water and a contact angle.</summary>
    /// <param name="water">Water.</param>
    /// <param name="contactAngleRad">theta, rad, 0.1 to 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">Contact angle outside its range.</exception>
    public ThinLineFilm(WaterState water, double contactAngleRad = Math.PI / 2.0)
    {
        ArgumentNullException.ThrowIfNull(water);
        Require.InRange(contactAngleRad, 0.1, 3.0);
        _sigma = water.SurfaceTensionNM;
        _capillaryLengthM = CapillaryNumbers.Length(water);
        double down = Math.Min(contactAngleRad, Math.PI / 2.0);
        double up = Math.Min(Math.PI - contactAngleRad, Math.PI / 2.0);
        BreakThroughDepthM = 2.0 * _capillaryLengthM * Math.Sin(0.5 * down);
        LiftOffHeightM = 2.0 * _capillaryLengthM * Math.Sin(0.5 * up);
        MaximumSupportNM = 2.0 * _sigma * Math.Sin(down);
    }

    /// <summary>Depth at which the film closes over the line, m: sqrt(2) l_c for theta of 90 deg or more.</summary>
    public double BreakThroughDepthM { get; }

    /// <summary>Height at which a lifted line leaves the film, m.</summary>
    public double LiftOffHeightM { get; }

    /// <summary>Largest upward force per length, N/m: 2 sigma for theta of 90 deg or more.</summary>
    public double MaximumSupportNM { get; }

    /// <summary>Upward force per length at a depth h (below zero: lifted, force downward); 0 once broken through or lifted off, N/m.</summary>
    public double Force(double depthM) => SecantStiffness(depthM) * depthM;

    /// <summary>F(h)/h, N/m2: the vertical spring of the film; 0 once broken through or lifted off.</summary>
    public double SecantStiffness(double depthM)
    {
        if (depthM > BreakThroughDepthM || depthM < -LiftOffHeightM)
        {
            return 0.0;
        }

        double s = 0.5 * depthM / _capillaryLengthM;
        return 2.0 * _sigma / _capillaryLengthM * Math.Sqrt(1.0 - s * s);
    }
}
