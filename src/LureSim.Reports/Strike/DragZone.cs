using LureSim.Reports.Kit.Charts;
using LureSim.Studies.Strike;
using OxyPlot;

namespace LureSim.Reports.Strike;

/// <summary>A stretch of drag settings with one outcome.</summary>
/// <param name="FromN">From, N.</param>
/// <param name="ToN">To, N.</param>
/// <param name="Sets">All points go in.</param>
/// <param name="Spares">Nothing gives.</param>
internal sealed record DragZone(double FromN, double ToN, bool Sets, bool Spares)
{
    /// <summary>Colour of its ground.</summary>
    public OxyColor Color => (Sets, Spares) switch
    {
        (true, true) => ChartStyle.Pale(ChartStyle.Green, 0.45),
        (false, true) => ChartStyle.Pale(ChartStyle.Sky, 0.35),
        (true, false) => ChartStyle.Pale(ChartStyle.Vermilion, 0.45),
        _ => ChartStyle.Light,
    };

    /// <summary>What happens there, whatever gives.</summary>
    public string Kind => (Sets, Spares) switch
    {
        (true, true) => "sets, nothing gives",
        (false, true) => "does not set",
        (true, false) => "sets, something gives",
        _ => "neither sets nor spares",
    };

    /// <summary>Stretches from no drag to the reel's maximum.</summary>
    /// <param name="range">Window.</param>
    /// <param name="lockedN">The reel's maximum, N.</param>
    public static IReadOnlyList<DragZone> Of(DragRange range, double lockedN)
    {
        ArgumentNullException.ThrowIfNull(range);
        double low = range.LowN ?? double.PositiveInfinity, high = range.HighN ?? 0.0;
        double[] ends = [.. new[] { 0.0, low, high, lockedN }.Where(e => e <= lockedN).Distinct().Order()];
        return [.. ends.Zip(ends.Skip(1), (a, b) => new DragZone(a, b, 0.5 * (a + b) > low, 0.5 * (a + b) < high))];
    }
}
