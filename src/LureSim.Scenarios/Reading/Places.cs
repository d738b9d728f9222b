using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Reading;

/// <summary>Where to point for a key: at its value, else at its table, else at the start of the file.</summary>
internal sealed class Places(string file, Entry?[] entries, Dictionary<string, Place> tables)
{
    public Place Of(KeySpec key) =>
        entries[key.Index]?.Place
        ?? (tables.TryGetValue(key.Table, out Place table) ? table : new Place(new Source(file, 0), 1, 1));
}
