namespace LureSim.Reports.Kit.Charts;

/// <summary>Fewer points for the same picture.</summary>
internal static class Thinned
{
    /// <summary>Keeps the lowest and the highest point of every bin, in order, so that no peak is lost.</summary>
    /// <param name="x">Abscissae, rising.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="most">Largest number of points to keep.</param>
    public static (double[] X, double[] Y) MinMax(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int most)
    {
        if (x.Length <= most)
        {
            return (x.ToArray(), y.ToArray());
        }

        int bins = most / 2;
        var outX = new double[2 * bins];
        var outY = new double[2 * bins];
        for (int b = 0; b < bins; b++)
        {
            int from = (int)((long)b * x.Length / bins), to = (int)((long)(b + 1) * x.Length / bins);
            int low = from, high = from;
            for (int i = from; i < to; i++)
            {
                low = y[i] < y[low] ? i : low;
                high = y[i] > y[high] ? i : high;
            }

            (int first, int second) = (Math.Min(low, high), Math.Max(low, high));
            (outX[2 * b], outY[2 * b]) = (x[first], y[first]);
            (outX[(2 * b) + 1], outY[(2 * b) + 1]) = (x[second], y[second]);
        }

        return (outX, outY);
    }
}
