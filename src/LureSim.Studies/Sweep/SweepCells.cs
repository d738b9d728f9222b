using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Variation;

namespace LureSim.Studies.Sweep;

/// <summary>What varies as columns: a number in SI where all values of an axis are numbers, else one column of texts per key.</summary>
public static class SweepCells
{
    /// <summary>Names of an axis's columns.</summary>
    public static IEnumerable<string> Columns(Axis axis) => axis.IsNumeric ? [ColumnUnit.Append(axis.Name, axis.Kind)] : axis.Name.Split('+');

    /// <summary>Cells of a value, in the order of <see cref="Columns"/>.</summary>
    public static IEnumerable<string> Cells(Axis axis, AxisValue value) => axis.IsNumeric
        ? [CsvLine.Number(value.Si)]
        : value.Overrides.Select(o => o[(o.IndexOf('=', StringComparison.Ordinal) + 1)..]);
}
