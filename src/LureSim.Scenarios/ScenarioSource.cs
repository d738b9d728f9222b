using LureSim.Model.Cast;
using LureSim.Scenarios.Mapping;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios;

/// <summary>
/// A scenario file with all that it builds on, read once. <see cref="Resolve"/> lays overrides over it, thousands of times if
/// need be. Immutable; safe to use from several threads.
/// </summary>
public sealed class ScenarioSource
{
    internal const int OverrideLayer = int.MaxValue;

    // Overrides sort after every file.
    private const int OverrideOrder = 1_000_000;

    private readonly LayerReader _layers;
    private readonly FaultList _faults;
    private readonly FaultList _notes;

    private ScenarioSource(string name, LayerReader layers, FaultList faults, FaultList notes) =>
        (Name, _layers, _faults, _notes) = (name, layers, faults, notes);

    /// <summary>Name of the file as it was given.</summary>
    public string Name { get; }

    /// <summary>Reads a file. Never throws on bad content: every fault is in the result of <see cref="Resolve"/>.</summary>
    /// <param name="path">Path of a TOML file.</param>
    public static ScenarioSource Load(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return Make(path, layers => layers.ReadFile(path, path, "", null, ""));
    }

    /// <summary>Reads a text as if it stood in a file.</summary>
    /// <param name="text">TOML.</param>
    /// <param name="name">Name for messages.</param>
    /// <param name="directory">Where base and parts files are looked for.</param>
    public static ScenarioSource FromText(string text, string name = "scenario.toml", string directory = ".")
    {
        ArgumentNullException.ThrowIfNull(text);
        return Make(name, layers => layers.ReadText(text, name, "", Path.GetFullPath(directory)));
    }

    /// <summary>Reads a file and lays overrides over it.</summary>
    /// <param name="path">Path of a TOML file.</param>
    /// <param name="overrides">Texts <c>key=value</c>.</param>
    public static ScenarioResult Read(string path, IReadOnlyList<string>? overrides = null) => Load(path).Resolve(overrides);

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
        };
        Overrides.Apply(overrides ?? [], layers, faults, OverrideLayer);

        var values = new ScenarioValues(layers.Entries);
        var places = new Places(Name, layers.Entries, layers.TablePlaces);
        var ranges = new List<RangedKey>();
        bool broken = _layers.Broken || layers.Broken;
        CastRunSpec? cast = broken ? null : RunMapper.Map(new(values, places, faults, ranges));
        return new(faults.Count == 0 ? cast : null, values, ranges, faults.ToList(), notes.ToList());
    }

    private static ScenarioSource Make(string name, Action<LayerReader> read)
    {
        FaultList faults = new(), notes = new();
        var layers = new LayerReader(faults, notes);
        read(layers);
        return new(name, layers, faults, notes);
    }
}
