using System.Runtime.CompilerServices;

namespace LureSim.Model.Lines.Chain;

/// <summary>
/// A drag coefficient over Reynolds number as a table that the inner loop can afford: the leading bits of Re pick one of
/// 32 buckets in an octave, linear interpolation inside a bucket. Against the cylinder law the error stays below 2e-4
/// relative. Below and above the table the end values hold.
/// </summary>
internal sealed class DragCurve
{
    private const int BucketBits = 5;
    private const int Shift = 52 - BucketBits;
    private const int LowestExponent = -10;
    private const int Octaves = 31;
    private const long Origin = ((1023L + LowestExponent) << 52) >> Shift;
    private const double FractionScale = 1.0 / (1L << Shift);
    private readonly double[] _values;

    private DragCurve(double[] values) => _values = values;

    /// <summary>Tabulates a law between Re = 2^-10 and 2^21.</summary>
    /// <param name="law">Cd(Re), finite and positive.</param>
    public static DragCurve FromLaw(Func<double, double> law)
    {
        ArgumentNullException.ThrowIfNull(law);
        var values = new double[(Octaves << BucketBits) + 1];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = law(BitConverter.Int64BitsToDouble((Origin + i) << Shift));
        }

        return new DragCurve(values);
    }

    /// <summary>The same coefficient at every Reynolds number.</summary>
    /// <param name="cd">Cd.</param>
    public static DragCurve Constant(double cd) => FromLaw(_ => cd);

    /// <summary>Cd at a Reynolds number of 0 or more.</summary>
    /// <param name="re">Re.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double At(double re)
    {
        long bits = BitConverter.DoubleToInt64Bits(re);
        long index = (bits >> Shift) - Origin;
        if (index < 0)
        {
            return _values[0];
        }

        if (index >= _values.Length - 1)
        {
            return _values[^1];
        }

        double fraction = (bits & ((1L << Shift) - 1)) * FractionScale;
        double low = _values[index];
        return low + (fraction * (_values[index + 1] - low));
    }
}
