using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Sayings;

/// <summary>A table of a saying's file: its members by name, what is wrong with them, and what does not belong there.</summary>
internal sealed class SayingTable
{
    private readonly Node _node;
    private readonly string _path;
    private readonly FaultList _faults;

    /// <summary>Looks at the table; a member with another name is a fault.</summary>
    public SayingTable(Node node, string path, FaultList faults, params string[] known)
    {
        (_node, _path, _faults) = (node, path, faults);
        foreach ((string name, Place place, Node _) in node.Members.Where(m => !known.Contains(m.Name)))
        {
            string? near = Nearest.Of(name, known);
            faults.Add(place, Key(name), $"unknown key; {(near is null ? $"known: {string.Join(", ", known)}" : $"did you mean {near}?")}");
        }
    }

    /// <summary>Where the table stands.</summary>
    public Place Place => _node.Place;

    /// <summary>Whether a member is there.</summary>
    public bool Has(string name) => _node.Find(name) is not null;

    /// <summary>A text with its place; null where there is none or it is no text.</summary>
    /// <param name="name">Member.</param>
    /// <param name="due">What is due, where it must be there; empty where it need not.</param>
    public SaidText? Text(string name, string due = "")
    {
        if (_node.Find(name) is not Node value)
        {
            if (due.Length > 0)
            {
                Fault(Place, name, $"missing; {due}");
            }

            return null;
        }

        if (value.Kind == NodeKind.Text && value.Text.Trim().Length > 0)
        {
            return Said(value);
        }

        Fault(value.Place, name, value.Kind == NodeKind.Text ? "empty; a text is due" : $"{value.Words}; a text in quotes is due");
        return null;
    }

    /// <summary>A list of texts; empty where there is none.</summary>
    public IReadOnlyList<SaidText> Texts(string name)
    {
        if (_node.Find(name) is not Node value)
        {
            return [];
        }

        if (value.Kind == NodeKind.List && value.Items.Count > 0 && value.Items.TrueForAll(i => i.Kind == NodeKind.Text))
        {
            return [.. value.Items.Select(Said)];
        }

        Fault(value.Place, name, "a list of texts in quotes is due, for example [\"retrieve.slack=0 cm\"]");
        return [];
    }

    /// <summary>Overrides: texts <c>key=value</c>.</summary>
    public IReadOnlyList<SaidText> Overrides(string name)
    {
        IReadOnlyList<SaidText> all = Texts(name);
        foreach (SaidText wrong in all.Where(t => t.Text.IndexOf('=', StringComparison.Ordinal) < 1))
        {
            _faults.Add(_node.Find(name)!.Items[all.ToList().IndexOf(wrong)].Place, Key(name), $"\"{wrong.Text}\": key=value is due, for example \"retrieve.cadence=2 /s\"");
        }

        return all;
    }

    /// <summary>A whole number; the other value where there is none or it is refused.</summary>
    public int Count(string name, int otherwise, int least, int most)
    {
        if (_node.Find(name) is not Node value)
        {
            return otherwise;
        }

        if (value.Kind == NodeKind.Number && int.TryParse(value.Text, System.Globalization.CultureInfo.InvariantCulture, out int count) && count >= least && count <= most)
        {
            return count;
        }

        Fault(value.Place, name, $"{(value.Kind == NodeKind.Number ? value.Text : value.Words)}; a whole number is due, {least} to {most}");
        return otherwise;
    }

    /// <summary>A table inside; null where there is none or it is no table.</summary>
    public SayingTable? Table(string name, params string[] known)
    {
        if (_node.Find(name) is not Node value)
        {
            return null;
        }

        if (value.Kind == NodeKind.Table)
        {
            return new(value, Key(name), _faults, known);
        }

        Fault(value.Place, name, $"{value.Words}; a table is due, for example {{ name = \"...\", set = [\"key=value\"] }}");
        return null;
    }

    /// <summary>Tables of a list, <c>[[name]]</c>.</summary>
    public IReadOnlyList<SayingTable> Tables(string name, params string[] known)
    {
        if (_node.Find(name) is not Node value)
        {
            return [];
        }

        if (value.Kind == NodeKind.List && value.Items.TrueForAll(i => i.Kind == NodeKind.Table))
        {
            return [.. value.Items.Select(i => new SayingTable(i, Key(name), _faults, known))];
        }

        Fault(value.Place, name, $"{value.Words}; double brackets are due; write [[{name}]]");
        return [];
    }

    /// <summary>Notes a fault at a member, or at the table where it is missing.</summary>
    public void Fault(string name, string message) => Fault(_node.Find(name)?.Place ?? Place, name, message);

    /// <summary>Whether a member is a text.</summary>
    public bool IsText(string name) => _node.Find(name)?.Kind == NodeKind.Text;

    private void Fault(Place place, string name, string message) => _faults.Add(place, Key(name), message);

    private string Key(string name) => _path.Length == 0 ? name : $"{_path}.{name}";

    private static SaidText Said(Node node) => new(node.Text.Trim(), node.Place.ToString());
}
