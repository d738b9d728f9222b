using LureSim.Model;
using LureSim.Reports.Kit.Text;
using OxyPlot;

namespace LureSim.Reports.Retrieve;

/// <summary>From the water, m, to the picture from above: its unit, along the cast from the rodward end of the path.</summary>
/// <param name="unit">Unit of both axes.</param>
/// <param name="alongM">Path along the cast, m, at least one point.</param>
internal readonly struct TopPlace(ShownUnit unit, ReadOnlySpan<double> alongM)
{
    private readonly double _zeroM = Least(alongM);

    /// <summary>Unit of both axes.</summary>
    public ShownUnit Unit { get; } = unit;

    /// <summary>Places along the cast, m, as drawn.</summary>
    public ValueList<double> X(ValueList<double> m)
    {
        (ShownUnit to, double zero) = (Unit, _zeroM);
        return [.. m.Select(v => to.Of(v - zero))];
    }

    /// <summary>Places across it, m, as drawn.</summary>
    public ValueList<double> Y(ValueList<double> m) => [.. m.Select(Unit.Of)];

    /// <summary>A point, m, as drawn.</summary>
    public DataPoint At(DataPoint m) => new(Unit.Of(m.X - _zeroM), Unit.Of(m.Y));

    private static double Least(ReadOnlySpan<double> values)
    {
        double least = double.PositiveInfinity;
        foreach (double v in values)
        {
            least = Math.Min(least, v);
        }

        return least;
    }
}
