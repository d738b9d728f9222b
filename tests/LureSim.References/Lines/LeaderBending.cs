using LureSim.Model;
using LureSim.Model.Lines;

namespace LureSim.References.Lines;

/// <summary>What the bending stiffness EI of a leader does: how far it holds itself out, how little it changes its tone.</summary>
public static class LeaderBending
{
    /// <summary>
    /// Length scale of a heavy elastica, l_w = (EI/w)^(1/3), m: a level leader of that length, clamped at one end, droops by 12 % of
    /// its length, one of twice that length by 64 %. 0 for a limp line.
    /// </summary>
    /// <param name="bendingStiffnessNm2">EI, N m2, 0 or more.</param>
    /// <param name="weightNM">w, weight per length in the medium, N/m, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SelfSupportLength(double bendingStiffnessNm2, double weightNM) =>
        Math.Cbrt(Require.InRange(bendingStiffnessNm2, 0.0, 1e3) / Require.Positive(weightNM));

    /// <summary>
    /// Shape of a leader clamped level at one end and bent by its own weight: EI theta'' = -w u cos(theta), u from the free end
    /// (heavy elastica), solved by shooting with Runge-Kutta 4.
    /// </summary>
    /// <param name="bendingStiffnessNm2">EI, N m2, above 0.</param>
    /// <param name="weightNM">w, N/m, above 0.</param>
    /// <param name="lengthM">L, m, above 0.</param>
    /// <param name="steps">Steps along the leader, 2 to 10000; 200 give seven digits up to w L^3/EI = 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or w L^3/EI above 200: that leader hangs.</exception>
    public static Droop OwnWeight(double bendingStiffnessNm2, double weightNM, double lengthM, int steps = 200)
    {
        Require.InRange(steps, 2, 10000);
        double q = Require.Positive(weightNM) * Math.Pow(Require.Positive(lengthM), 3) / Require.Positive(bendingStiffnessNm2);
        return Solve(Require.InRange(q, 0.0, 200.0, "w L^3/EI"), lengthM, steps);
    }

    /// <summary>
    /// n-th frequency of a stiff string, f_n = n f_0 sqrt(1 + B n^2), B = pi^2 EI/(T L^2), pinned ends (Fletcher 1964, J. Acoust.
    /// Soc. Am. 36:203), Hz.
    /// </summary>
    /// <param name="line">Line.</param>
    /// <param name="tensionN">T, N, above 0.</param>
    /// <param name="lengthM">L, m, above 0.</param>
    /// <param name="n">Mode, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double StringFrequency(LineSpec line, double tensionN, double lengthM, int n)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        double f0 = Math.Sqrt(Require.Positive(tensionN) / line.LinearDensityKgM) / (2.0 * Require.Positive(lengthM));
        return n * f0 * Math.Sqrt(1.0 + Inharmonicity(line, tensionN, lengthM) * n * n);
    }

    /// <summary>B = pi^2 EI/(T L^2); for a round strand pi^3 E d^4/(64 T L^2).</summary>
    public static double Inharmonicity(LineSpec line, double tensionN, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Math.PI * Math.PI * line.BendingStiffnessNm2 / (Require.Positive(tensionN) * lengthM * lengthM);
    }

    private static Droop Solve(double q, double lengthM, int steps)
    {
        double low = 0.0;
        double high = Math.PI / 2.0;
        // The clamp angle found grows with the tip angle tried.
        for (int i = 0; i < 52; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Shoot(q, middle, steps).ClampRad < 0.0 ? (middle, high) : (low, middle);
        }

        double tip = 0.5 * (low + high);
        (_, double x, double z) = Shoot(q, tip, steps);
        return new Droop(tip, lengthM * x, lengthM * z);
    }

    /// <summary>From the free end (angle tried, no moment) to the clamp, lengths over L.</summary>
    private static (double ClampRad, double X, double Z) Shoot(double q, double tipRad, int steps)
    {
        double h = 1.0 / steps;
        double a = tipRad, m = 0.0, x = 0.0, z = 0.0;
        for (int i = 0; i < steps; i++)
        {
            double u = i * h;
            double k1 = -q * u * Math.Cos(a);
            double a2 = a + 0.5 * h * m, m2 = m + 0.5 * h * k1;
            double k2 = -q * (u + 0.5 * h) * Math.Cos(a2);
            double a3 = a + 0.5 * h * m2, m3 = m + 0.5 * h * k2;
            double k3 = -q * (u + 0.5 * h) * Math.Cos(a3);
            double a4 = a + h * m3, m4 = m + h * k3;
            double k4 = -q * (u + h) * Math.Cos(a4);
            x += h / 6.0 * (Math.Cos(a) + 2.0 * Math.Cos(a2) + 2.0 * Math.Cos(a3) + Math.Cos(a4));
            z += h / 6.0 * (Math.Sin(a) + 2.0 * Math.Sin(a2) + 2.0 * Math.Sin(a3) + Math.Sin(a4));
            a += h / 6.0 * (m + 2.0 * m2 + 2.0 * m3 + m4);
            m += h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
        }

        return (a, x, z);
    }
}

/// <summary>Shape of a drooping leader.</summary>
/// <param name="TipAngleRad">Angle of the free end below level, rad.</param>
/// <param name="ReachM">Horizontal distance of the free end from the clamp, m.</param>
/// <param name="DropM">Depth of the free end below the clamp, m.</param>
public readonly record struct Droop(double TipAngleRad, double ReachM, double DropM);
