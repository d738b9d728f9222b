using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Starting;

/// <summary>One line of a table that is being written.</summary>
/// <param name="Key">Key.</param>
/// <param name="Text">Value as the file holds it.</param>
/// <param name="Why">Where a guess comes from; null where the person said it.</param>
internal sealed record DraftValue(KeySpec Key, string Text, string? Why)
{
    /// <summary>Value, SI.</summary>
    public double Si => ValueReader.ReadText(Key, Text).Si;
}

/// <summary>A table that is being written.</summary>
/// <param name="Table">Name.</param>
/// <param name="Values">Its lines, in their order.</param>
/// <param name="File">A file of the person's that it builds on, or null.</param>
internal sealed record TableDraft(string Table, IReadOnlyList<DraftValue> Values, string? File = null)
{
    /// <summary>The value of a key, SI; NaN where the table does not hold it.</summary>
    public double Si(KeySpec key) => Values.FirstOrDefault(v => v.Key == key)?.Si ?? double.NaN;

    /// <summary>The text of a key, or empty.</summary>
    public string Text(KeySpec key) => Values.FirstOrDefault(v => v.Key == key)?.Text ?? "";

    /// <summary>The table from what was said, filled up from the part that is nearest to it.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="folder">Folder of parts.</param>
    /// <param name="usual">Part that is usual.</param>
    /// <param name="units">Units of the file.</param>
    public static TableDraft From(Phrase said, PartFolder folder, Part usual, FileUnits units)
    {
        Part part = said.Part ?? Nearest(said.Texts, folder, usual);
        ScenarioValues known = PartLibrary.Values(part);
        string why = $"as {part.Folder.Name}/{part.Name}";
        var values = new List<DraftValue>();
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.Table == folder.Table))
        {
            bool replaced = said.Texts.Keys.Any(k => k == key || (k.Group.Length > 0 && k.Group == key.Group));
            if (said.Texts.TryGetValue(key, out string? text))
            {
                values.Add(new(key, text, null));
            }
            else if (known.Has(key) && !replaced)
            {
                values.Add(new(key, units.Convert(key, known.Text(key)), why));
            }
        }

        bool none = values.Exists(v => v.Key == LeaderKeys.Set.Material && v.Si == LineKeySet.NoMaterial);
        return new(folder.Table, none ? values.FindAll(v => v.Key == LeaderKeys.Set.Material) : values);
    }

    // The part with most of the words that were said; of equals the usual one, then the first. No leader goes with no word about one.
    private static Part Nearest(IReadOnlyDictionary<KeySpec, string> said, PartFolder folder, Part usual)
    {
        Part best = usual;
        int most = -1;
        foreach (Part part in PartLibrary.In(folder.Name).Where(p => p != usual).Prepend(usual))
        {
            ScenarioValues known = PartLibrary.Values(part);
            bool isNone = known.Number(LeaderKeys.Set.Material) == LineKeySet.NoMaterial;
            int same = said.Count(s => s.Key.Choices.Count > 0 && known.Text(s.Key) == s.Value);
            if (same > most && !(isNone && said.Count > 0))
            {
                (best, most) = (part, same);
            }
        }

        return best;
    }
}
