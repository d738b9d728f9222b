using LureSim.Model;

namespace LureSim.Reports.Retrieve;

/// <summary>What the picture from above covers, in its unit.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Lower edge.</param>
/// <param name="Top">Upper edge.</param>
internal readonly record struct TopFrame(double Left, double Right, double Bottom, double Top)
{
    /// <summary>The frame around paths with a hull at their ends.</summary>
    /// <param name="xs">Paths, along the cast.</param>
    /// <param name="ys">The same, across it.</param>
    /// <param name="w">Samples.</param>
    /// <param name="hull">Length of the hull.</param>
    public static TopFrame Around(ReadOnlySpan<ValueList<double>> xs, ReadOnlySpan<ValueList<double>> ys, TwitchWindow w, double hull)
    {
        (double left, double right) = Range(xs, w);
        (double bottom, double top) = Range(ys, w);

        // Room for the hull's ends, and below for arrow and scale bar.
        double width = right - left + hull, height = Math.Max(top - bottom + (2 * hull), 0.40 * width);
        double middle = 0.5 * (top + bottom);
        return new TopFrame(left - (0.5 * hull), right + (0.5 * hull), middle - (0.58 * height), middle + (0.42 * height));
    }

    private static (double Low, double High) Range(ReadOnlySpan<ValueList<double>> channels, TwitchWindow w)
    {
        (double low, double high) = (double.MaxValue, double.MinValue);
        foreach (ValueList<double> values in channels)
        {
            foreach (double v in values[w.From..w.To])
            {
                (low, high) = (Math.Min(low, v), Math.Max(high, v));
            }
        }

        return (low, high);
    }
}
