using LureSim.Model;
using LureSim.Model.Media;
using LureSim.References.Media;

namespace LureSim.References.Lines;

/// <summary>
/// Exact two-dimensional support of a horizontal cylinder (radius R, contact angle theta) by a water surface: meniscus and displaced
/// water (Keller 1998, Phys. Fluids 10:3009, the generalised law of Archimedes).
/// </summary>
/// <remarks>
/// phi: angle of the contact line from the bottom of the cylinder. Slope of the meniscus there psi = phi + theta - pi; depth of
/// the contact line h = 2 l_c sin(psi/2); load F = 2 sigma sin(psi) + rho g (R^2 (phi - sin phi cos phi) + 2 R h sin phi). The two
/// menisci are taken not to touch each other.
/// </remarks>
public sealed class SurfaceFilmForce
{
    private readonly double _radiusM;
    private readonly double _thetaRad;
    private readonly double _sigma;
    private readonly double _rhoG;
    private readonly double _capillaryLengthM;

    /// <summary>Creates the support law of one line on one water.</summary>
    /// <param name="water">Water.</param>
    /// <param name="diameterM">D, m, 1e-5 to 2e-3.</param>
    /// <param name="contactAngleRad">theta, rad, 0.1 to 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public SurfaceFilmForce(WaterState water, double diameterM, double contactAngleRad)
    {
        ArgumentNullException.ThrowIfNull(water);
        _radiusM = 0.5 * Require.InRange(diameterM, 1e-5, 2e-3);
        _thetaRad = Require.InRange(contactAngleRad, 0.1, 3.0);
        _sigma = water.SurfaceTensionNM;
        _rhoG = water.DensityKgM3 * Physics.GravityMS2;
        _capillaryLengthM = CapillaryNumbers.Length(water);
        BreakThroughRad = LargestSupport();
        MaximumSupportNM = Load(BreakThroughRad);
    }

    /// <summary>Contact angle position phi at which the line goes through the surface, rad.</summary>
    public double BreakThroughRad { get; }

    /// <summary>Largest load per length the surface carries, N/m.</summary>
    public double MaximumSupportNM { get; }

    /// <summary>Depth of the cylinder's axis below the far surface when it goes through, m.</summary>
    public double BreakThroughDepthM => AxisDepth(BreakThroughRad);

    /// <summary>Load per length F carried with the contact line at phi, N/m, upward on the cylinder.</summary>
    /// <param name="phiRad">phi, rad, 0 to pi.</param>
    /// <exception cref="ArgumentOutOfRangeException">phi outside its range.</exception>
    public double Load(double phiRad)
    {
        double phi = Require.InRange(phiRad, 0.0, Math.PI);
        (double sin, double cos) = Math.SinCos(phi);
        double submerged = _radiusM * _radiusM * (phi - sin * cos) + 2.0 * _radiusM * ContactDepth(phi) * sin;
        return 2.0 * _sigma * Math.Sin(Slope(phi)) + _rhoG * submerged;
    }

    /// <summary>Depth of the axis below the far surface with the contact line at phi: h - R cos(phi), m.</summary>
    /// <inheritdoc cref="Load" path="/param"/>
    /// <inheritdoc cref="Load" path="/exception"/>
    public double AxisDepth(double phiRad) => ContactDepth(Require.InRange(phiRad, 0.0, Math.PI)) - _radiusM * Math.Cos(phiRad);

    /// <summary>True when an unwetted line of that weight in air per length floats, false when it goes through.</summary>
    /// <param name="weightNM">Weight in air per length, N/m, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Weight below 0 or not a number.</exception>
    public bool Floats(double weightNM) => Require.InRange(weightNM, 0.0, double.MaxValue) <= MaximumSupportNM;

    private double Slope(double phi) => phi + _thetaRad - Math.PI;

    private double ContactDepth(double phi) => 2.0 * _capillaryLengthM * Math.Sin(0.5 * Slope(phi));

    private double LoadDerivative(double phi)
    {
        (double sin, double cos) = Math.SinCos(phi);
        double rise = _capillaryLengthM * Math.Cos(0.5 * Slope(phi)) * sin + ContactDepth(phi) * cos;
        return 2.0 * _sigma * Math.Cos(Slope(phi)) + 2.0 * _rhoG * _radiusM * (_radiusM * sin * sin + rise);
    }

    // The load rises from the level meniscus (psi = 0) and, unless the contact line reaches the top first, has one maximum.
    private double LargestSupport()
    {
        double low = Math.Max(0.0, Math.PI - _thetaRad);
        double high = Math.PI;
        if (LoadDerivative(high) >= 0.0)
        {
            return high;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = LoadDerivative(middle) > 0.0 ? (middle, high) : (low, middle);
        }

        return low;
    }
}
