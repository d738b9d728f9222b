using LureSim.Model.Lines;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Mapping;

/// <summary>Table <c>[leader]</c> to <see cref="LeaderSpec"/>; no key of it given, or material "none", means no leader.</summary>
internal static class LeaderMapper
{
    /// <summary>Maps; null without a leader or when something is missing or refused.</summary>
    public static LeaderSpec? Map(MapContext c)
    {
        LineKeySet keys = LeaderKeys.Set;
        if (!LeaderKeys.All.Any(c.Values.Has) || c[keys.Material] == LineKeySet.NoMaterial)
        {
            return null;
        }

        if (!c.Values.Has(keys.Material))
        {
            c.Fault(keys.Material, $"missing; {EntryReader.ShortMeaning(keys.Material)}");
        }

        if (!c.Values.Has(LeaderKeys.Length))
        {
            c.Fault(LeaderKeys.Length, $"missing; {LeaderKeys.Length.Due}");
        }

        LineSpec? line = LineMapper.Map(c, keys);
        double length = c[LeaderKeys.Length], knot = c[LeaderKeys.Knot];
        return line is null || double.IsNaN(length + knot) ? null : new(line, length, (TieKnot)(int)knot);
    }
}
