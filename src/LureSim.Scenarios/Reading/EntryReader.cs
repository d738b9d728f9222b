using System.Globalization;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Outlines;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Reading;

/// <summary>Reads one key's value from a node; faults and notes go to their lists.</summary>
internal sealed class EntryReader(FaultList faults, FaultList notes)
{
    /// <summary>Reads a value.</summary>
    /// <param name="key">Key.</param>
    /// <param name="node">Value.</param>
    /// <param name="layer">Layer it comes from.</param>
    /// <param name="name">Full key as printed; differs from the path inside lists.</param>
    /// <param name="directory">Where CSV files are looked for.</param>
    public Entry Read(KeySpec key, Node node, int layer, string name, string directory)
    {
        if (key.Kind == QuantityKind.List)
        {
            return ReadList(key, node, layer, directory);
        }

        if (WrongKind(key, node) is string wrong)
        {
            faults.Add(node.Place, name, wrong, key.ReadBy);
            return new() { Key = key, Place = node.Place, Layer = layer, Bad = true };
        }

        QuantityValue value = ValueReader.ReadText(key, node.Text);
        if (value.Error is not null)
        {
            faults.Add(node.Place, name, value.Error, key.ReadBy);
        }

        if (value.Note is not null)
        {
            notes.Add(node.Place, name, value.Note);
        }

        DrawnBody? drawing = null;
        bool bad = value.Error is not null || (key.IsDrawing && !TryDrawing(key, node, directory, out drawing));
        return new() { Key = key, Text = node.Text, Place = node.Place, Layer = layer, Value = value, Drawing = drawing, Bad = bad };
    }

    /// <summary>Reads one item of a list.</summary>
    public Item ReadItem(KeySpec list, Node node, int layer, int number, string directory)
    {
        var columns = new Entry?[list.Items.Count];
        string prefix = ItemName(list, number);
        if (node.Kind != NodeKind.Table)
        {
            faults.Add(node.Place, prefix, $"{node.Words}; a table is due: {{ {string.Join(", ", list.Items.Select(i => i.Name))} }}");
            return new(node.Place, columns);
        }

        foreach ((string name, Place place, Node value) in node.Members)
        {
            KeySpec? column = Column(list, name);
            if (column is null)
            {
                faults.Add(place, $"{prefix}.{name}", faults.IsLong(place) ? "unknown key" : UnknownColumn(list, name));
                if (MeantColumn(list, name) is KeySpec meant)
                {
                    columns[meant.Index] ??= new() { Key = meant, Place = place, Layer = layer, Bad = true };
                }

                continue;
            }

            columns[column.Index] = Read(column, value, layer, $"{prefix}.{name}", directory);
        }

        foreach (KeySpec column in list.Items)
        {
            if (column.Required && columns[column.Index] is null)
            {
                faults.Add(node.Place, $"{prefix}.{column.Name}", $"missing; {ShortMeaning(column)}");
            }
        }

        return new(node.Place, columns);
    }

    /// <summary>Column of a list by name.</summary>
    public static KeySpec? Column(KeySpec list, string name) => list.Items.FirstOrDefault(c => c.Name == name);

    /// <summary>Name of an item as printed; items count from 1.</summary>
    public static string ItemName(KeySpec list, int number) => string.Create(CultureInfo.InvariantCulture, $"{list.Path}[{number}]");

    /// <summary>Message for a name that is no column.</summary>
    public static string UnknownColumn(KeySpec list, string name)
    {
        return MeantColumn(list, name) is KeySpec meant ? $"unknown key; did you mean {meant.Name}?" : $"unknown key; allowed: {string.Join(", ", list.Items.Select(i => i.Name))}";
    }

    private static KeySpec? MeantColumn(KeySpec list, string name) =>
        (Synonyms.KeyOf(list.Path, name) ?? Nearest.Of(name.ToLowerInvariant(), list.Items.Select(i => i.Name))) is string meant ? Column(list, meant) : null;

    /// <summary>What a missing key is.</summary>
    public static string ShortMeaning(KeySpec key) => key.Kind == QuantityKind.Choice
        ? $"allowed: {string.Join(", ", key.Choices.Select(c => c.Name))}"
        : key.Due;

    private bool TryDrawing(KeySpec key, Node node, string directory, out DrawnBody? drawing)
    {
        drawing = null;
        string? failure = FileText.TryRead(Path.Combine(directory, node.Text), out string text) ?? SvgReader.Read(text, out drawing);
        if (failure is not null)
        {
            faults.Add(node.Place, key.Path, $"\"{node.Text}\": {failure}", key.ReadBy);
        }

        return failure is null;
    }

    private Entry ReadList(KeySpec key, Node node, int layer, string directory)
    {
        Node? list = node;
        if (node.Kind == NodeKind.Text && key.MayBeCsv)
        {
            list = CsvList.Read(key, node, directory, faults);
        }
        else if (node.Kind != NodeKind.List)
        {
            list = null;
            faults.Add(node.Place, key.Path, $"{node.Words}; a list of tables is due{(key.MayBeCsv ? ", or the name of a CSV file" : "")}");
        }

        if (list is null)
        {
            return new() { Key = key, Place = node.Place, Layer = layer, Bad = true };
        }

        var items = new List<Item>();
        foreach (Node item in list.Items)
        {
            items.Add(ReadItem(key, item, layer, items.Count + 1, directory));
        }

        return new() { Key = key, Place = node.Place, Layer = layer, Items = items };
    }

    private static string? WrongKind(KeySpec key, Node node)
    {
        bool plain = key.Kind is QuantityKind.Ratio or QuantityKind.WholeNumber or QuantityKind.Choice;
        bool fits = node.Kind switch
        {
            NodeKind.Text => key.Kind != QuantityKind.Flag || node.Place.Source.IsOverride,
            NodeKind.Number => plain,
            NodeKind.Flag => key.Kind == QuantityKind.Flag,
            _ => false,
        };
        if (fits)
        {
            return null;
        }

        string due = key.Kind switch
        {
            QuantityKind.Flag => "true or false is due, without quotes",
            QuantityKind.Text => "a text in quotes is due",
            _ => ShortMeaning(key),
        };
        if (node.Kind != NodeKind.Number)
        {
            return $"{node.Words}; {due}";
        }

        return !char.IsAsciiDigit(node.Text[^1]) ? $"not a finite number; {due}"
            : $"{node.Text} has no unit{(Suggestion.For(key, node.Text) is { Length: > 0 } hint ? hint : $"; {due}")}";
    }
}
