using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios;

/// <summary>The values of a scenario by key: what was given, else the default. Mappers and checks read from here only.</summary>
public sealed class ScenarioValues
{
    private readonly Entry?[] _entries;

    internal ScenarioValues(Entry?[] entries) => _entries = entries;

    /// <summary>Whether the key was given.</summary>
    /// <param name="key">Key.</param>
    public bool Has(KeySpec key) => Given(key) is not null;

    /// <summary>Keys that an override gave, in the order of the schema.</summary>
    public IEnumerable<KeySpec> Overridden => ScenarioSchema.Keys.Where(k => Given(k)?.Layer == ScenarioSource.OverrideLayer);

    /// <summary>Given value or default, SI; NaN where there is neither, or where the given one was refused.</summary>
    /// <param name="key">Key.</param>
    public double Number(KeySpec key) => Given(key) is Entry entry
        ? entry.Bad ? double.NaN : entry.Value.Si
        : key.Default is null ? double.NaN : key.DefaultReading.Si;

    /// <summary>Given value or default, or null.</summary>
    /// <param name="key">Key.</param>
    public double? Optional(KeySpec key) => double.IsNaN(Number(key)) ? null : Number(key);

    /// <summary>Kind it was read as: of a key with two kinds the one that was written.</summary>
    /// <param name="key">Key.</param>
    public QuantityKind KindOf(KeySpec key) => Given(key)?.Value.Kind ?? key.DefaultReading.Kind;

    /// <summary>The text as given, or the default's, or empty.</summary>
    /// <param name="key">Key.</param>
    public string Text(KeySpec key) => Given(key)?.Text ?? key.Default ?? "";

    internal Entry? Given(KeySpec key) => _entries[key.Index];

    /// <summary>Items of a list, each readable like a scenario of its own; empty when the list was not given.</summary>
    internal IEnumerable<(ScenarioValues Values, Place Place)> Items(KeySpec list)
    {
        if (Given(list) is Entry entry)
        {
            foreach (Item item in entry.Items)
            {
                yield return (new ScenarioValues(item.Columns), item.Place);
            }
        }
    }
}
