namespace LureSim.Model.Landing;

/// <summary>
/// Wave resistance of a slender body of revolution that is drawn along under the surface: that of a prolate spheroid by its sources between the foci,
/// linear waves, deep water (Havelock 1931, Proc. R. Soc. A 131:275; from memory, derived again, docs/landing.md):
/// R = 128 pi^2 rho g c^3 A^2 e^-p integral from 0 of e^(-p t^2) J_3/2(q sqrt(1 + t^2))^2 dt, p = 2 K f, q = K c, K = g/V^2, c = a e,
/// 1/A = 4 e/(1 - e^2) - 2 ln((1 + e)/(1 - e)).
/// </summary>
/// <remarks>Holds while the body is well under: f above its radius by half at least. A body that breaks the surface is beyond it.</remarks>
/// <param name="LengthM">2 a, m, positive.</param>
/// <param name="RadiusM">b, half of its thickness, m, positive, below a.</param>
/// <param name="DepthM">f, depth of its axis, m, positive.</param>
internal sealed record WaveDrag(double LengthM, double RadiusM, double DepthM)
{
    // The trapezoid rule on a smooth integrand that dies as e^(-p t^2) is good to round-off long before this many steps.
    private const int Steps = 160;
    private const double DeadExponent = 40.0;

    /// <summary>R, N.</summary>
    /// <param name="densityKgM3">rho, kg/m3.</param>
    /// <param name="speedMS">V, m/s, not negative.</param>
    public double At(double densityKgM3, double speedMS)
    {
        double a = 0.5 * LengthM, share = 1.0 - (RadiusM * RadiusM / (a * a)), e = Math.Sqrt(share);
        double wave = Physics.GravityMS2 / (speedMS * speedMS), c = a * e, p = 2.0 * wave * DepthM, q = wave * c;
        if (!(p < DeadExponent))
        {
            return 0.0;
        }

        double strength = 1.0 / ((4.0 * e / (1.0 - share)) - (2.0 * Math.Log((1.0 + e) / (1.0 - e))));
        double step = Math.Sqrt(DeadExponent / p) / Steps, sum = 0.5 * Square(q);
        for (int i = 1; i <= Steps; i++)
        {
            double t = i * step;
            sum += Math.Exp(-p * t * t) * Square(q * Math.Sqrt(1.0 + (t * t)));
        }

        return 128.0 * Math.PI * Math.PI * densityKgM3 * Physics.GravityMS2 * c * c * c * strength * strength * Math.Exp(-p) * step * sum;
    }

    // J_3/2(z)^2 = (2/(pi z)) (sin z/z - cos z)^2; by its series where the bracket would lose digits.
    private static double Square(double z)
    {
        double bracket = z > 0.05 ? (Math.Sin(z) / z) - Math.Cos(z) : z * z / 3.0 * (1.0 - (z * z / 10.0));
        return 2.0 / (Math.PI * z) * bracket * bracket;
    }
}
