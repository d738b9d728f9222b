using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios;

/// <summary>Which units a scenario file is written in.</summary>
public enum UnitFamily
{
    /// <summary>Some of each, or no unit at all.</summary>
    Mixed,

    /// <summary>Feet, inches, yards, ounces, pounds.</summary>
    Trade,

    /// <summary>Metres, centimetres, millimetres, grams, kilograms, newtons.</summary>
    Metric,
}

/// <summary>Finds the units of a file by what stands in it.</summary>
internal static class FamilyOfFile
{
    private static readonly KeySpec[] AlwaysMetric =
        [LineKeys.Set.Diameter, LeaderKeys.Set.Diameter, ReelKeys.SpoolDiameter, SpoolKeys.SpoolWidth, LureKeys.TieX, LureKeys.TieZ];

    /// <summary>The units of the file itself; where it holds none, those of the files that it builds on.</summary>
    /// <param name="entries">Values of the files, without overrides.</param>
    public static UnitFamily Of(IReadOnlyList<Entry?> entries)
    {
        List<Entry> given = [.. entries.OfType<Entry>().Where(Counts)];
        List<Entry> own = given.FindAll(e => e.Layer == LayerReader.OwnLayer);
        return Of((own.Count > 0 ? own : given).Select(e => e.Value.Unit));
    }

    /// <summary>The family of units of a text.</summary>
    /// <param name="units">Its units; others count for nothing.</param>
    public static UnitFamily Of(IEnumerable<string> units)
    {
        bool trade = false, metric = false;
        foreach (string unit in units)
        {
            (bool isTrade, bool isMetric) = Side(unit);
            (trade, metric) = (trade || isTrade, metric || isMetric);
        }

        return trade == metric ? UnitFamily.Mixed : trade ? UnitFamily.Trade : UnitFamily.Metric;
    }

    // Everybody writes the diameter of a line or a spool in mm, and the places on a lure as on a drawing. Items of lists (places of hooks and weights on a drawing in mm) have no value of their own.
    private static bool Counts(Entry entry)
    {
        (bool trade, bool metric) = Side(entry.Value.Unit);
        return (trade || metric) && Array.IndexOf(AlwaysMetric, entry.Key) < 0;
    }

    private static (bool Trade, bool Metric) Side(string unit) => unit.Replace("/turn", "", StringComparison.Ordinal) switch
    {
        "ft" or "in" or "yd" or "oz" or "lb" => (true, false),
        "m" or "cm" or "mm" or "g" or "mg" or "kg" or "N" => (false, true),
        _ => (false, false),
    };
}
