namespace LureSim.Model.Lures;

/// <summary>
/// Added mass and surface of a prolate spheroid in unbounded fluid; f = L/D is its length over diameter, 1 or more.
/// Lamb, Hydrodynamics, 6th ed., arts 114, 115, 373; Lamb 1918, ARC R&amp;M 623.
/// </summary>
public static class Spheroid
{
    /// <summary>k1, surge added mass over displaced mass: alpha0 / (2 - alpha0).</summary>
    /// <param name="f">L/D, 1 or more.</param>
    public static double Surge(double f)
    {
        double alpha0 = Alpha0(f);
        return alpha0 / (2.0 - alpha0);
    }

    /// <summary>k2, sway added mass over displaced mass: beta0 / (2 - beta0). Also exact over strip theory.</summary>
    /// <param name="f">L/D, 1 or more.</param>
    public static double Sway(double f)
    {
        double beta0 = Beta0(f);
        return beta0 / (2.0 - beta0);
    }

    /// <summary>k', yaw added inertia over the inertia of the displaced fluid (1/5) m (a^2 + b^2).</summary>
    /// <param name="f">L/D, 1 or more.</param>
    public static double Yaw(double f)
    {
        double e2 = EccentricitySquared(f);
        if (e2 == 0.0)
        {
            return 0.0;
        }

        double difference = Beta0(f) - Alpha0(f);
        double sum = 2.0 - e2;
        return e2 * e2 * difference / (sum * ((2.0 * e2) - (sum * difference)));
    }

    /// <summary>J = k' (1 + 1/f^2), exact yaw added inertia over strip theory (4/15) pi rho a^3 b^2.</summary>
    /// <param name="f">L/D, 1 or more.</param>
    public static double YawOverStrips(double f) => Yaw(f) * (1.0 + (1.0 / (f * f)));

    /// <summary>Surface of the spheroid, m2: 2 pi b^2 (1 + a asin e / (b e)).</summary>
    /// <param name="lengthM">L, m.</param>
    /// <param name="diameterM">D, m, at most L.</param>
    public static double SurfaceM2(double lengthM, double diameterM)
    {
        double f = lengthM / Require.Positive(diameterM);
        double e = Math.Sqrt(EccentricitySquared(f));
        double slope = e < 1e-6 ? 1.0 : Math.Asin(e) / e;
        return 0.5 * Math.PI * diameterM * diameterM * (1.0 + (f * slope));
    }

    /// <summary>
    /// Munk moment, N m: (1/2) rho U^2 V (k2 - k1) sin 2 beta, turns the body across the stream (Munk 1924, NACA
    /// Rep. 184, from memory).
    /// </summary>
    /// <param name="density">rho, kg/m3.</param>
    /// <param name="speedMS">U, m/s.</param>
    /// <param name="volumeM3">V, displaced volume, m3.</param>
    /// <param name="f">L/D.</param>
    /// <param name="driftRad">beta, drift angle, rad.</param>
    public static double MunkMomentNM(double density, double speedMS, double volumeM3, double f, double driftRad) =>
        0.5 * density * speedMS * speedMS * volumeM3 * (Sway(f) - Surge(f)) * Math.Sin(2.0 * driftRad);

    private static double EccentricitySquared(double f) => 1.0 - (1.0 / Math.Pow(Require.InRange(f, 1.0, 1e6), 2));

    // beta0 from the identity alpha0 + 2 beta0 = 2.
    private static double Beta0(double f) => 1.0 - (0.5 * Alpha0(f));

    // 2 (1 - e^2)/e^3 (atanh e - e); near the sphere as a series, where the difference cancels.
    private static double Alpha0(double f)
    {
        double e2 = EccentricitySquared(f);
        if (e2 > 0.05)
        {
            double e = Math.Sqrt(e2);
            return 2.0 * (1.0 - e2) / (e2 * e) * (Math.Atanh(e) - e);
        }

        double sum = 0.0;
        double power = 1.0;
        for (int n = 3; n < 27; n += 2)
        {
            sum += power / n;
            power *= e2;
        }

        return 2.0 * (1.0 - e2) * sum;
    }
}
