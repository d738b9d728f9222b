using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;

namespace LureSim.Scenarios.Reading;

/// <summary>
/// Lays files over each other: a file's base first, then its parts, then its own keys. Every value is read and checked once,
/// also where a later layer replaces it.
/// </summary>
internal sealed class LayerReader
{
    /// <summary>Layer of the file that was named; those that it builds on have higher numbers.</summary>
    public const int OwnLayer = 1;

    private const int MostDeep = 32, MostFiles = 500;

    private readonly FaultList _faults;
    private readonly EntryReader _reader;
    private readonly List<string> _chain = [];
    private int _sources;
    private int _files;
    private int _layers;
    private bool _shipped;

    public LayerReader(FaultList faults, FaultList notes, int firstOrder = 0)
    {
        (_faults, _sources) = (faults, firstOrder);
        _layers = firstOrder;
        _reader = new(faults, notes);
    }

    /// <summary>Values by index of their key.</summary>
    public Entry?[] Entries { get; init; } = new Entry?[ScenarioSchema.Keys.Count];

    /// <summary>Place of the header of every table that was seen, for keys that are missing in it.</summary>
    public Dictionary<string, Place> TablePlaces { get; init; } = [];

    /// <summary>Ranges that files give for values.</summary>
    public List<GivenRange> Ranges { get; init; } = [];

    /// <summary>True when a file could not be read at all: keys that seem to be missing may stand there.</summary>
    public bool Broken { get; private set; }

    /// <summary>Reads a file with all it builds on.</summary>
    public void ReadFile(string path, string shownName, string prefix, Place? from, string fromKey)
    {
        if (_files > MostFiles)
        {
            return;
        }

        string? failure = FileText.TryFind(path, out string full);
        if (failure is null && Refusal(full) is string refusal)
        {
            Broken = true;
            _files += _files == MostFiles ? 1 : 0;
            _faults.Add(from!.Value, fromKey, $"\"{shownName}\" {refusal}");
            return;
        }

        string text = "";
        failure ??= FileText.TryRead(full, out text);
        if (failure is not null)
        {
            Broken = true;
            if (from is Place place)
            {
                string hint = NearFile.Hint(path) ?? "; files are looked for beside the one that names them" + PartLibrary.Hint(prefix);
                _faults.Add(place, fromKey, $"\"{shownName}\": {failure}{hint}");
            }
            else
            {
                _faults.Add(new(NewSource(shownName.Length > 0 ? shownName : "\"\"")), "", failure + NearFile.Hint(path));
            }

            return;
        }

        _files++;
        _chain.Add(full);
        ReadText(text, shownName, prefix, Path.GetDirectoryName(full)!);
        _chain.RemoveAt(_chain.Count - 1);
    }

    // Files that name each other could ask for thousands more; that is said once.
    private string? Refusal(string full) =>
        _chain.Contains(full) ? "builds on itself; a chain of files must end"
        : _chain.Count > MostDeep ? $"stands at the end of a longer chain of bases than is read; at most {MostDeep} bases deep"
        : _files == MostFiles ? $"is one file too many; a scenario is made of at most {MostFiles}"
        : null;

    /// <summary>Reads a scenario that comes with the program; what it builds on comes with it.</summary>
    public void ReadShipped(string name)
    {
        if (ShippedScenarios.Find(name) is string text)
        {
            _shipped = true;
            ReadText(text, name, "", ".");
        }
        else
        {
            Broken = true;
            string? near = Nearest.Of(name, ShippedScenarios.Names);
            _faults.Add(new(NewSource(name)), "", "no scenario of that name comes with the program" + (near is null ? "" : $"; did you mean {near}?"));
        }
    }

    /// <summary>Reads a text as a file of that name.</summary>
    public void ReadText(string text, string shownName, string prefix, string directory)
    {
        if (TomlTree.Read(text, NewSource(shownName), _faults) is Node root)
        {
            Broken |= root.Broken;
            ApplyTable(root, prefix, directory, ++_layers);
        }
        else
        {
            Broken = true;
        }
    }

    /// <summary>Applies one override.</summary>
    public void ApplyOverride(string path, Node value, int layer)
    {
        if (ItemPath.TrySplit(path, out KeySpec? list, out int number, out string column))
        {
            ApplyItem(list!, number, column, path, value, layer);
        }
        else
        {
            ApplyMember(path, value.Place, value, "", layer);
        }
    }

    public Source NewSource(string name, bool isOverride = false) => new(name, _sources++, isOverride);

    private void ApplyTable(Node table, string prefix, string directory, int layer)
    {
        if (prefix.Length > 0)
        {
            TablePlaces.TryAdd(prefix, table.Place);
        }

        bool mayBuildOn = prefix.Length == 0 || ScenarioSchema.Tables.Contains(prefix);
        Node? below = mayBuildOn ? table.Find(ScenarioSchema.BaseName) : null;
        if (below is not null)
        {
            ReadPart(below, prefix, Join(prefix, ScenarioSchema.BaseName), directory);
        }

        foreach ((string name, Place place, Node value) in table.Members)
        {
            if (value != below)
            {
                ApplyMember(Join(prefix, name), place, value, directory, layer);
            }
        }
    }

    private void ApplyMember(string path, Place place, Node value, string directory, int layer)
    {
        if (RangeReader.IsTable(path))
        {
            RangeReader.Read(path, value, layer, Ranges, _faults);
            return;
        }

        KeySpec? key = ScenarioSchema.Find(path);
        if (key is not null && !(value.Kind == NodeKind.Table && ScenarioSchema.HasKeysBelow(path)))
        {
            Set(_reader.Read(key, value, layer, path, directory));
        }
        else if (value.Kind == NodeKind.Table && (key is not null || ScenarioSchema.Tables.Contains(path)))
        {
            ApplyTable(value, path, directory, layer);
        }
        else if (ScenarioSchema.Tables.Contains(path))
        {
            ReadPart(value, path, path, directory);
        }
        else
        {
            Unknown(path, place, value, directory, layer);
        }
    }

    // What was probably meant is not missed as well.
    private void Unknown(string path, Place place, Node value, string directory, int layer)
    {
        bool told = !_faults.IsLong(place);
        _faults.Add(place, path, told ? KeyHint.Unknown(path) : "unknown key");
        string? meant = told ? KeyHint.Meant(path) : null;
        if (meant is not null && value.Kind == NodeKind.Table && ScenarioSchema.Tables.Contains(meant))
        {
            ApplyTable(value, meant, directory, layer);
        }
        else if (meant is not null && ScenarioSchema.Find(meant) is KeySpec key)
        {
            Entries[key.Index] ??= new() { Key = key, Place = place, Layer = layer, Bad = true };
        }
    }

    private void ReadPart(Node name, string prefix, string key, string directory)
    {
        if (name.Kind != NodeKind.Text)
        {
            Broken = true;
            _faults.Add(name.Place, key, name.Kind == NodeKind.List && key == prefix ? $"one pair of brackets is due; write [{key}]"
                : prefix.Length == 0 || key != prefix
                ? $"{name.Words}; the name of a file in quotes is due"
                : $"{name.Words}; a table [{key}] is due, or the name of a parts file in quotes");
            return;
        }

        if (_shipped && prefix.Length == 0)
        {
            ReadShipped(name.Text);
            return;
        }

        string path = Path.Combine(directory, name.Text);
        if (PartLibrary.Find(prefix, name.Text) is Part part && FileText.TryFind(path, out _) is not null)
        {
            // A file of that name goes before the part of that name that comes with the program.
            ReadText(part.Text, part.Path, prefix, directory);
            return;
        }

        ReadFile(path, name.Text, prefix, name.Place, key);
    }

    private void ApplyItem(KeySpec list, int number, string column, string path, Node value, int layer)
    {
        Entry? known = Entries[list.Index];
        if (known is null || known.Bad || number < 1 || number > known.Items.Count)
        {
            _faults.Add(value.Place, path, $"there is no such item; {list.Path} has {known?.Items.Count ?? 0}, counted from 1");
            return;
        }

        if (EntryReader.Column(list, column) is not KeySpec spec)
        {
            _faults.Add(value.Place, path, EntryReader.UnknownColumn(list, column));
            return;
        }

        Item item = known.Items[number - 1];
        var columns = (Entry?[])item.Columns.Clone();
        columns[spec.Index] = _reader.Read(spec, value, layer, path, "");
        var items = known.Items.ToArray();
        items[number - 1] = item with { Columns = columns };
        Entries[list.Index] = new() { Key = list, Place = known.Place, Layer = layer, Items = items };
    }

    private void Set(Entry entry)
    {
        Entries[entry.Key.Index] = entry;
        Ranges.RemoveAll(r => r.FallsWith(entry));
        if (entry.Key.Group.Length == 0)
        {
            return;
        }

        for (int i = 0; i < Entries.Length; i++)
        {
            if (Entries[i] is Entry other && other.Layer != entry.Layer && other.Key.Group == entry.Key.Group)
            {
                Entries[i] = null;
            }
        }
    }

    private static string Join(string prefix, string name) => prefix.Length == 0 ? name : $"{prefix}.{name}";
}
