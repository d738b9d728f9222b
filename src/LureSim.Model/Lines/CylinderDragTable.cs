namespace LureSim.Model.Lines;

/// <summary>
/// <see cref="CylinderDrag"/> for inner loops: linear interpolation between 64 knots per octave from Re = 2^-10 to 2^20. The knot
/// is read off the exponent and the top six mantissa bits of Re, so a look-up needs no logarithm and no division.
/// </summary>
/// <remarks>
/// Error of the interpolation: h^2/8 |Cd''| with h = Re/64 and Cd ~ Re^-0.89 at worst gives 5e-5 relative; 1e-4 is kept.
/// Below the range Cd is held at its end value, so that a body at rest gets no infinite coefficient; the force there is of no
/// account (Re 1e-3 is 3e-6 m/s for a line in water). Above, it is held too.
/// </remarks>
public static class CylinderDragTable
{
    /// <summary>Lowest tabulated Re.</summary>
    public const double MinRe = 1.0 / 1024.0;

    /// <summary>Highest tabulated Re.</summary>
    public const double MaxRe = 1048576.0;

    private const int KnotBits = 6;
    private const int Octaves = 30;
    private const int FractionBits = 52 - KnotBits;
    private const long FractionMask = (1L << FractionBits) - 1;
    private const double FractionUnit = 1.0 / (1L << FractionBits);

    private static readonly long FirstKnot = BitConverter.DoubleToInt64Bits(MinRe) >> FractionBits;

    // Value and step of each interval side by side: one cache line per look-up.
    private static readonly double[] Knots = Build();

    /// <summary>Cd(Re), held at its end values outside <see cref="MinRe"/> to <see cref="MaxRe"/>.</summary>
    /// <param name="re">Re, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Re is negative or not a number.</exception>
    public static double Cd(double re)
    {
        if (!(re >= MinRe && re < MaxRe))
        {
            return Held(re);
        }

        long bits = BitConverter.DoubleToInt64Bits(re);
        int i = 2 * (int)((bits >> FractionBits) - FirstKnot);
        double[] knots = Knots;
        return knots[i] + (bits & FractionMask) * FractionUnit * knots[i + 1];
    }

    /// <summary>
    /// Re Cd(Re): drag per length and speed is 1/2 mu Re Cd. Below the range it is held, which is creeping flow (force ~ speed), so
    /// that a secant drag coefficient stays above zero at rest.
    /// </summary>
    /// <inheritdoc cref="Cd" path="/param"/>
    /// <inheritdoc cref="Cd" path="/exception"/>
    public static double ReCd(double re) => Cd(re) * Math.Max(re, MinRe);

    private static double Held(double re)
    {
        if (!(re >= 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(re), re, "Reynolds number is negative or not a number.");
        }

        return re < MinRe ? Knots[0] : Knots[^2];
    }

    private static double[] Build()
    {
        int count = Octaves << KnotBits;
        var knots = new double[2 * (count + 1)];
        for (int i = 0; i <= count; i++)
        {
            knots[2 * i] = CylinderDrag.Cd(Knot(i));
        }

        for (int i = 0; i < count; i++)
        {
            knots[2 * i + 1] = knots[2 * i + 2] - knots[2 * i];
        }

        return knots;
    }

    private static double Knot(int i) => BitConverter.Int64BitsToDouble((FirstKnot + i) << FractionBits);
}
