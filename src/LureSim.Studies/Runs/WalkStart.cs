namespace LureSim.Studies.Runs;

/// <summary>How a retrieve starts: what luck decides on the water.</summary>
/// <param name="HeadingRad">Nose from pointing at the rod, rad.</param>
/// <param name="SidewaysM">Sideways offset of the lure, m.</param>
public readonly record struct WalkStart(double HeadingRad, double SidewaysM)
{
    /// <summary>Largest start heading to either side, rad: a lure that lands across or askew.</summary>
    public const double WidestHeadingRad = 100.0 * Math.PI / 180.0;

    /// <summary>Largest sideways offset, m.</summary>
    public const double WidestSidewaysM = 0.3;

    // Inverse powers of the plastic number, x^3 = x + 1: an additive sequence that fills the square evenly for every
    // count (Roberts 2018, from memory).
    private const double First = 0.7548776662466927, Second = 0.5698402909980532;

    /// <summary>Starts spread evenly over both ranges; the first few of a longer list are the shorter list.</summary>
    /// <param name="count">How many, 1 to 1000.</param>
    public static WalkStart[] Spread(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, 1000);
        var starts = new WalkStart[count];
        for (int i = 0; i < count; i++)
        {
            starts[i] = new(WidestHeadingRad * Share(i, First), WidestSidewaysM * Share(i, Second));
        }

        return starts;
    }

    // -1 to 1.
    private static double Share(int i, double step) => (2.0 * ((0.5 + ((i + 1) * step)) % 1.0)) - 1.0;
}
