namespace LureSim.Model.Lines;

/// <summary>
/// A printed table read as a chain of power laws: straight between its entries on log-log axes, continued beyond its ends
/// with a stated exponent. Label tables follow such laws (strength ~ d^2), so no entry is lost and no kink is larger than the print.
/// </summary>
internal sealed class PowerTable
{
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double _endExponent;

    /// <summary>Creates a table; both columns positive and rising.</summary>
    public PowerTable(double[] x, double[] y, double endExponent) => (_x, _y, _endExponent) = (x, y, endExponent);

    /// <summary>y at x &gt; 0.</summary>
    public double At(double x) => Read(_x, _y, x, _endExponent);

    /// <summary>x at y &gt; 0.</summary>
    public double InverseAt(double y) => Read(_y, _x, y, 1.0 / _endExponent);

    private static double Read(double[] from, double[] to, double x, double endExponent)
    {
        if (x <= from[0])
        {
            return to[0] * Math.Pow(x / from[0], endExponent);
        }

        if (x >= from[^1])
        {
            return to[^1] * Math.Pow(x / from[^1], endExponent);
        }

        int i = 1;
        while (from[i] < x)
        {
            i++;
        }

        double exponent = Math.Log(to[i] / to[i - 1]) / Math.Log(from[i] / from[i - 1]);
        return to[i - 1] * Math.Pow(x / from[i - 1], exponent);
    }
}
