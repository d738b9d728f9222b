using LureSim.Model.Lures;
using LureSim.Model.Margin;

namespace LureSim.Studies.Design;

/// <summary>What varies beside the place of the weight.</summary>
public enum MapSecond
{
    /// <summary>Mass of the weight, kg.</summary>
    Mass,

    /// <summary>Height of the weight over the axis, m.</summary>
    Up,
}

/// <summary>How a map is made.</summary>
/// <param name="FromXM">Place furthest back, m from the middle.</param>
/// <param name="ToXM">Place furthest forward, m.</param>
/// <param name="Second">What varies beside.</param>
/// <param name="From">Its least value.</param>
/// <param name="To">Its largest value.</param>
/// <param name="Keeps">What stays when the mass of the weight varies.</param>
/// <param name="Height">How the weight is held where its mass varies.</param>
/// <param name="Columns">Places, 2 to 400.</param>
/// <param name="Rows">Values beside, 2 to 400.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
public sealed record MapTask(
    double FromXM, double ToXM, MapSecond Second, double From, double To, KeptMass Keeps = KeptMass.Total, BallastHeight Height = BallastHeight.Kept,
    int Columns = 40, int Rows = 40, int Threads = 0)
{
    /// <summary>The usual map of a lure: a quarter of its length either way where the body has room, and a quarter to twice the weight, or from the belly to the axis.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="second">What varies beside.</param>
    /// <param name="keeps">What stays.</param>
    /// <param name="height">How the weight is held.</param>
    public static MapTask Of(LureSpec lure, MapSecond second, KeptMass keeps, BallastHeight height)
    {
        ArgumentNullException.ThrowIfNull(lure);
        var slot = BallastSlot.Of(lure, height, keeps == KeptMass.Total);
        BallastSpec w = slot.Weight;
        double mass = w.MassKg > 0.0 ? w.MassKg : 0.15 * lure.MassKg, half = 0.45 * lure.LengthM;
        (double low, double high) = second == MapSecond.Mass ? (0.25 * mass, 2.0 * mass) : (-0.45 * lure.HeightM, 0.1 * lure.HeightM);
        return new(Math.Max(-half, w.XM - (0.25 * lure.LengthM)), Math.Min(half, w.XM + (0.25 * lure.LengthM)), second, low, high, keeps, slot.Height);
    }

    /// <summary>Places, back to front, m.</summary>
    public double[] Xs() => Spread(FromXM, ToXM, Columns);

    /// <summary>Values beside, rising.</summary>
    public double[] Seconds() => Spread(From, To, Rows);

    /// <summary>The lure of a cell.</summary>
    /// <param name="lure">Lure as it is.</param>
    /// <param name="x">Place of the weight, m.</param>
    /// <param name="second">Value beside.</param>
    public LureSpec At(LureSpec lure, double x, double second)
    {
        var slot = BallastSlot.Of(lure, Height, Keeps == KeptMass.Total);
        return Second == MapSecond.Mass ? slot.With(second, x) : slot.With(slot.Weight with { XM = x, ZM = second });
    }

    /// <summary>Throws <see cref="ArgumentOutOfRangeException"/> when a number makes no sense.</summary>
    public void Check()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Columns, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Columns, 400);
        ArgumentOutOfRangeException.ThrowIfLessThan(Rows, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Rows, 400);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(ToXM, FromXM);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(To, From);
    }

    private static double[] Spread(double from, double to, int count) => [.. Enumerable.Range(0, count).Select(i => from + ((to - from) * i / (count - 1)))];
}

/// <summary>One cell of a map; numbers that do not exist are NaN.</summary>
/// <param name="Word">What becomes of it.</param>
/// <param name="TrimRad">Float angle, nose up positive, rad.</param>
/// <param name="FreeboardM">Back amidships over the water, m.</param>
/// <param name="GmM">GM across, m.</param>
/// <param name="GrowthPerS">Growth of the leading root of the straight tow, 1/s.</param>
/// <param name="CriticalShedding">Least chi from which the straight tow is kept, to 0.016; NaN where it is left whatever chi.</param>
/// <param name="SheddingMargin">chi less its critical value: above 0 it comes straight on a tight line.</param>
/// <param name="Reason">Why it is refused or sinks; null where it floats.</param>
public sealed record MapCell(FloatWord Word, double TrimRad, double FreeboardM, double GmM, double GrowthPerS, double CriticalShedding, double SheddingMargin, string? Reason)
{
    /// <summary>The cell of a point.</summary>
    /// <param name="point">Point.</param>
    public static MapCell Of(DesignPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return new(
            point.Word, point.Trim?.Rest.TrimRad ?? double.NaN, point.FreeboardM ?? double.NaN, point.GmM ?? double.NaN, point.GrowthPerS ?? double.NaN,
            point.CriticalShedding ?? double.NaN, point.SheddingMargin ?? double.NaN, point.Reason);
    }
}

/// <summary>What a lure does over place and mass, or place and height, of its weight.</summary>
/// <param name="Lure">Lure as it is.</param>
/// <param name="Task">How the map was made.</param>
/// <param name="Tow">Straight tow that was looked at.</param>
/// <param name="XM">Places, back to front, m: columns.</param>
/// <param name="Second">Values beside, rising, kg or m: rows.</param>
/// <param name="Cells">Cells row by row: row r, column c at r * columns + c.</param>
/// <param name="Windows">Walk windows at some of the cells; null where they were not asked for.</param>
public sealed record BallastMap(
    LureSpec Lure, MapTask Task, MarginTask Tow, IReadOnlyList<double> XM, IReadOnlyList<double> Second, IReadOnlyList<MapCell> Cells, MapWindows? Windows = null)
{
    /// <summary>A cell.</summary>
    /// <param name="column">Column.</param>
    /// <param name="row">Row.</param>
    public MapCell At(int column, int row) => Cells[(row * XM.Count) + column];
}
