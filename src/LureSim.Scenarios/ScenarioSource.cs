using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Mapping;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios;

/// <summary>
/// A scenario file with all that it builds on, read once. <see cref="Resolve"/> lays overrides over it, thousands of times if
/// need be. Immutable; safe to use from several threads.
/// </summary>
public sealed class ScenarioSource
{
    internal const int OverrideLayer = int.MaxValue, MadeLayer = 0;

    // Overrides sort after every file.
    private const int OverrideOrder = 1_000_000;

    private readonly LayerReader _layers;
    private readonly FaultList _faults;
    private readonly FaultList _notes;

    private ScenarioSource(string name, Activities asked, LayerReader layers, FaultList faults, FaultList notes)
    {
        (Name, Asked, _layers, _faults, _notes) = (name, asked, layers, faults, notes);
        Units = FamilyOfFile.Of(layers.Entries);
    }

    /// <summary>Name of the file as it was given.</summary>
    public string Name { get; }

    /// <summary>What the scenario is wanted for; faults that concern only other activities are notes.</summary>
    public Activities Asked { get; }

    /// <summary>The units that the file is written in, whatever overrides use.</summary>
    public UnitFamily Units { get; }

    /// <summary>Reads a file. Never throws on bad content: every fault is in the result of <see cref="Resolve"/>.</summary>
    /// <param name="path">Path of a TOML file.</param>
    /// <param name="asked">What it is wanted for.</param>
    public static ScenarioSource Load(string path, Activities asked = Activities.All)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Make(path, asked, layers => layers.ReadFile(path, path, "", null, ""));
    }

    /// <summary>Reads a scenario that comes with the program, with all it builds on.</summary>
    /// <param name="name">Name with its ending.</param>
    /// <param name="asked">What it is wanted for.</param>
    internal static ScenarioSource Shipped(string name, Activities asked) => Make(name, asked, layers => layers.ReadShipped(name));

    /// <summary>Reads a text as if it stood in a file.</summary>
    /// <param name="text">TOML.</param>
    /// <param name="name">Name for messages.</param>
    /// <param name="directory">Where base and parts files are looked for.</param>
    /// <param name="asked">What it is wanted for.</param>
    public static ScenarioSource FromText(string text, string name = "scenario.toml", string directory = ".", Activities asked = Activities.All)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Make(name, asked, layers => layers.ReadText(text, name, "", directory));
    }

    /// <summary>Reads a file and lays overrides over it.</summary>
    /// <param name="path">Path of a TOML file.</param>
    /// <param name="overrides">Texts <c>key=value</c>.</param>
    /// <param name="asked">What it is wanted for.</param>
    public static ScenarioResult Read(string path, IReadOnlyList<string>? overrides = null, Activities asked = Activities.All) =>
        Load(path, asked).Resolve(overrides);

    /// <summary>The scenario with overrides.</summary>
    /// <param name="overrides">Texts <c>key=value</c>; the same checks as in the file, errors name <c>--set</c>.</param>
    public ScenarioResult Resolve(IReadOnlyList<string>? overrides = null)
    {
        FaultList faults = new(), notes = new();
        faults.AddRange(_faults);
        notes.AddRange(_notes);
        var layers = new LayerReader(faults, notes, OverrideOrder)
        {
            Entries = [.. _layers.Entries],
            TablePlaces = new(_layers.TablePlaces),
            Ranges = [.. _layers.Ranges],
        };
        Overrides.Apply(overrides ?? [], layers, faults, OverrideLayer);

        layers.Entries[TopKeys.Title.Index] ??= Called();
        List<RangedKey> ranges = [.. RangeReader.Holding(layers.Ranges, layers.Entries, faults)];
        int given = ranges.Count;
        DropUnasked(layers.Entries);
        LureAlone.Fill(layers.Entries, Asked, Name);
        var values = new ScenarioValues(layers.Entries);
        var places = new Places(Name, layers.Entries, layers.TablePlaces);
        bool broken = _layers.Broken || layers.Broken;
        Scenario? scenario = broken ? null : ScenarioMapper.Map(new(values, places, faults, notes, ranges), Asked);
        (FaultList errors, FaultList others) = faults.Split(Asked);
        notes.AddRange(others);
        return new(errors.Count == 0 ? scenario : null, values, ranges, given, errors.ToList(), notes.ToList()) { Units = Units };
    }

    // A file without a title is called by its own name.
    private Entry Called()
    {
        string name = PlainText.Escape(Path.GetFileNameWithoutExtension(Name));
        return new() { Key = TopKeys.Title, Text = name.Length > 0 ? name : "scenario", Place = new(new(Name, 0), 1, 1), Layer = MadeLayer };
    }

    private static ScenarioSource Make(string name, Activities asked, Action<LayerReader> read)
    {
        FaultList faults = new(), notes = new();
        var layers = new LayerReader(faults, notes);
        read(layers);
        return new(name, asked, layers, faults, notes);
    }

    // What was refused and is not asked for leaves its default, so that the set-up is whole.
    private void DropUnasked(Entry?[] entries)
    {
        for (int i = 0; i < entries.Length; i++)
        {
            entries[i] = entries[i] is { Bad: true } entry && (entry.Key.ReadBy & Asked) == 0 ? null : entries[i];
        }
    }
}
