using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Mapping;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Reading;

/// <summary>The range that a file gives for a value of its own or of a layer below.</summary>
/// <param name="Range">Key and ends, SI.</param>
/// <param name="Layer">Layer that gave it.</param>
/// <param name="Place">Where it stands.</param>
internal sealed record GivenRange(RangedKey Range, int Layer, Place Place)
{
    /// <summary>Whether another layer's value, of the key or of one that says the same, makes it void.</summary>
    public bool FallsWith(Entry later) =>
        later.Layer != Layer && (later.Key == Range.Key || (later.Key.Group.Length > 0 && later.Key.Group == Range.Key.Group));
}

/// <summary>
/// Table <c>ranges</c>, at the top of a file or in a table (so also in a part): how well values are known, for studies of doubt.
/// <c>"rod.mass" = "110 g to 120 g"</c>; in the table of the key, or in its part, <c>mass</c> is enough.
/// </summary>
/// <remarks>A range belongs to the value that stands in its own layer or below; where a later layer gives another value, it falls.</remarks>
internal static class RangeReader
{
    /// <summary>Name of the table.</summary>
    public const string Name = "ranges";

    private const string Due = "two values are due, the lower first, for example \"4.1 N to 4.6 N\"";

    /// <summary>Whether a path is that of a table of ranges.</summary>
    public static bool IsTable(string path) =>
        path == Name || (path.EndsWith("." + Name, StringComparison.Ordinal) && ScenarioSchema.Tables.Contains(path[..^(Name.Length + 1)]));

    /// <summary>Reads a table of ranges; each is added, each fault noted.</summary>
    public static void Read(string path, Node table, int layer, List<GivenRange> ranges, FaultList faults)
    {
        if (table.Kind != NodeKind.Table)
        {
            faults.Add(table.Place, path, $"{table.Words}; a table is due: [{path}], with a line such as \"rod.mass\" = \"110 g to 120 g\"");
            return;
        }

        string prefix = path == Name ? "" : path[..^Name.Length];
        foreach ((string name, Place place, Node value) in table.Members)
        {
            if ((ScenarioSchema.Find(prefix + name) ?? ScenarioSchema.Find(name)) is not KeySpec key)
            {
                string near = KeyHint.Meant(prefix + name) is string known ? $"; did you mean {known}?" : "";
                faults.Add(place, $"{path}.{name}", $"a range of what? A key in quotes is due, for example \"rod.mass\"{near}");
            }
            else if (Ends(key, value, out double low, out double high) is string fault)
            {
                faults.Add(value.Place, $"{path}.{name}", fault);
            }
            else
            {
                ranges.RemoveAll(r => r.Range.Key == key);
                ranges.Add(new(new(key, low, high), layer, value.Place));
            }
        }
    }

    /// <summary>The ranges that hold for the values of a scenario; a range without a value, or with a value outside, is a fault.</summary>
    public static IEnumerable<RangedKey> Holding(IReadOnlyList<GivenRange> given, Entry?[] entries, FaultList faults)
    {
        foreach ((RangedKey range, _, Place place) in given)
        {
            KeySpec key = range.Key;
            Entry? entry = entries[key.Index];
            if (entry is null)
            {
                faults.Add(place, key.Path, "a range without a value; give the value too", key.ReadBy);
            }
            else if (!entry.Bad)
            {
                if (entry.Value.Si >= range.Low && entry.Value.Si <= range.High)
                {
                    yield return range;
                }
                else
                {
                    faults.Add(place, key.Path, $"the range {RangeText.Of(range.Low, range.High, key.Kind, key.Unit)} leaves out its own value, {MapContext.Show(key, entry.Value.Si)}", key.ReadBy);
                }
            }
        }
    }

    // "4.1 N to 4.6 N"; the first unit may be left out.
    private static string? Ends(KeySpec key, Node value, out double low, out double high)
    {
        (low, high) = (double.NaN, double.NaN);
        if (key.Kind is QuantityKind.Choice or QuantityKind.Flag or QuantityKind.Text or QuantityKind.List or QuantityKind.LineNumber)
        {
            return "it is no quantity, so it has no range";
        }

        string[] ends = value.Kind == NodeKind.Text ? value.Text.Split(" to ") : [];
        if (ends.Length != 2)
        {
            return $"{(value.Kind == NodeKind.Text ? $"\"{value.Text}\" is no range" : value.Words)}; {Due}";
        }

        QuantityValue last = ValueReader.ReadText(key, ends[1].Trim()), first = ValueReader.ReadText(key, ends[0].Trim());
        if (last.Error is null && first.Error is not null && NumberReader.Take(ends[1].Trim(), out _, out int used) is null)
        {
            first = ValueReader.ReadText(key, ends[0].Trim() + ends[1].Trim()[used..]);
        }

        (low, high) = (first.Si, last.Si);
        return first.Error ?? last.Error ?? (low < high ? null : $"\"{value.Text}\" is no range; {Due}");
    }
}
