using LureSim.Model;

namespace LureSim.References.Lines;

/// <summary>
/// A long straight elastic line struck sideways at constant speed V (Smith, McCrackin, Schiefer 1958, Textile Res. J. 28:288; formula
/// from memory, re-derived): V = c sqrt(2 e sqrt(e (1 + e)) - e^2), c the longitudinal sound speed, e the strain behind its front.
/// </summary>
public static class TransverseImpact
{
    /// <summary>V that makes the strain e, m/s.</summary>
    /// <param name="soundSpeedMS">c, m/s, above 0.</param>
    /// <param name="strain">e, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Speed(double soundSpeedMS, double strain)
    {
        double e = Require.InRange(strain, 0.0, 1.0);
        return Require.Positive(soundSpeedMS) * Math.Sqrt(2.0 * e * Math.Sqrt(e * (1.0 + e)) - e * e);
    }

    /// <summary>Strain e of an impact at V.</summary>
    /// <param name="soundSpeedMS">c, m/s, above 0.</param>
    /// <param name="speedMS">V, m/s, above 0 and below c.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Strain(double soundSpeedMS, double speedMS)
    {
        Require.InRange(Require.Positive(speedMS), 0.0, Require.Positive(soundSpeedMS));
        double low = 1e-18;
        double high = 1.0;
        for (int i = 0; i < 80; i++)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = Speed(soundSpeedMS, middle) < speedMS ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Speed of the kink along the line, seen from the ground: c (sqrt(e (1 + e)) - e), m/s.</summary>
    /// <inheritdoc cref="Speed"/>
    public static double KinkSpeed(double soundSpeedMS, double strain) =>
        Require.Positive(soundSpeedMS) * (Math.Sqrt(Require.InRange(strain, 0.0, 1.0) * (1.0 + strain)) - strain);
}
