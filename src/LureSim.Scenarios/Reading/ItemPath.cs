using System.Globalization;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Reading;

/// <summary>Paths into lists: <c>lure.hooks[2].x</c>; items count from 1.</summary>
internal static class ItemPath
{
    /// <summary>Splits a path; false when it does not lead into a list.</summary>
    public static bool TrySplit(string path, out KeySpec? list, out int number, out string column)
    {
        (list, number, column) = (null, 0, "");
        int open = path.IndexOf('[', StringComparison.Ordinal);
        int close = path.IndexOf("].", StringComparison.Ordinal);
        if (open < 0 || close < open || ScenarioSchema.Find(path[..open]) is not { Kind: QuantityKind.List } found)
        {
            return false;
        }

        list = found;
        column = path[(close + 2)..];
        return int.TryParse(path[(open + 1)..close], NumberStyles.None, CultureInfo.InvariantCulture, out number);
    }
}
