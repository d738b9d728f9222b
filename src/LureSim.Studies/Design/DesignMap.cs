using LureSim.Model.Lures;
using LureSim.Model.Margin;

namespace LureSim.Studies.Design;

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
    /// <summary>A cell of a lure that cannot be made.</summary>
    /// <param name="reason">Why.</param>
    public static MapCell Refused(string reason) => new(FloatWord.Refused, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, reason);

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

/// <summary>What a lure does over two things that a builder can change.</summary>
/// <param name="Lure">Lure as it is.</param>
/// <param name="Task">How the map was made.</param>
/// <param name="Tow">Straight tow that was looked at.</param>
/// <param name="Columns">Values of the columns, rising (<see cref="MapAxis"/>).</param>
/// <param name="Rows">Values of the rows, rising.</param>
/// <param name="Cells">Cells row by row: row r, column c at r * columns + c.</param>
/// <param name="Windows">Walk windows at some of the cells; null where they were not asked for.</param>
public sealed record DesignMap(
    LureSpec Lure, MapTask Task, MarginTask Tow, IReadOnlyList<double> Columns, IReadOnlyList<double> Rows, IReadOnlyList<MapCell> Cells, MapWindows? Windows = null)
{
    /// <summary>A cell.</summary>
    /// <param name="column">Column.</param>
    /// <param name="row">Row.</param>
    public MapCell At(int column, int row) => Cells[(row * Columns.Count) + column];
}
