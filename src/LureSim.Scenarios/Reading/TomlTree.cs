using System.Globalization;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace LureSim.Scenarios.Reading;

/// <summary>Turns TOML text into <see cref="Node"/>s through Tomlyn's syntax tree, so that every value keeps its place.</summary>
internal sealed class TomlTree
{
    private const int MostDepth = 32;
    private static readonly TomlSerializerOptions Depth = new() { MaxDepth = MostDepth };

    private readonly Source _source;
    private readonly FaultList _faults;

    private TomlTree(Source source, FaultList faults) => (_source, _faults) = (source, faults);

    /// <summary>Reads a text; null, with one fault per broken line, when it is not TOML.</summary>
    public static Node? Read(string text, Source source, FaultList faults)
    {
        var tree = new TomlTree(source, faults);
        var root = new Node(NodeKind.Table, new Place(source, 1, 1));

        if (tree.Parse(text) is not DocumentSyntax document)
        {
            return null;
        }

        if (document.HasErrors)
        {
            if (tree.Mended(text) is not DocumentSyntax mended)
            {
                return null;
            }

            (document, root.Broken) = (mended, true);
        }

        tree.AddAll(root, document.KeyValues, []);
        foreach (TableSyntaxBase table in document.Tables)
        {
            if (tree.Open(root, table) is Node opened)
            {
                tree.AddAll(opened, table.Items, Parts(table.Name!));
            }
        }

        return root;
    }

    /// <summary>Whether a text can be read as a value.</summary>
    public static bool IsValue(string text) =>
        new TomlTree(new("", 0), new FaultList()).Parse($"v = {text}\n") is { HasErrors: false };

    // The parser cannot print "end of file" where a string breaks off after a backslash; an end of line it can. It gives up, so that its stack
    // lasts, where lists and tables stand in each other too deep.
    private DocumentSyntax? Parse(string text)
    {
        try
        {
            return SyntaxParser.Parse(text + "\n", Depth, _source.Name, validate: false);
        }
        catch (TomlException e)
        {
            _faults.Add(
                new(_source, Math.Max(e.Line ?? 1, 1), Math.Max(e.Column ?? 1, 1)), "",
                string.Create(CultureInfo.InvariantCulture, $"lists and tables stand in each other more than {MostDepth} deep; a scenario needs 3"));
            return null;
        }
    }

    // Says what is wrong with each line that cannot be read and reads the others, so that all faults come at once.
    private DocumentSyntax? Mended(string text)
    {
        string rest = TomlLines.Read(text, (line, column, key, message) => _faults.Add(new(_source, line, column), key, message));
        DocumentSyntax? document = Parse(rest);
        for (int i = 0; document?.HasErrors == true && i < ScenarioFault.MostTold; i++)
        {
            SourceSpan span = document.Diagnostics.First(d => d.Kind == DiagnosticMessageKind.Error).Span;
            string[] lines = rest.Split('\n');
            int line = Math.Clamp(span.Start.Line, 0, lines.Length - 1);
            _faults.Add(new(_source, line + 1, span.Start.Column + 1), "", "this line cannot be read; a line is KEY = VALUE, a table like [rod], or a comment that begins with #");
            lines[line] = "";
            rest = string.Join('\n', lines);
            document = Parse(rest);
        }

        return document?.HasErrors == false ? document : null;
    }

    private Node? Open(Node root, TableSyntaxBase table)
    {
        List<string> path = Parts(table.Name!);
        Place place = Of(table.Name!.Span);
        Node? parent = Descend(root, path, place);
        string last = path[^1];
        if (parent is null)
        {
            return null;
        }

        Node? known = parent.Find(last);
        if (table is TableArraySyntax)
        {
            return OpenItem(parent, known, path, place);
        }

        if (known is null)
        {
            known = new Node(NodeKind.Table, place);
            parent.Add(last, place, known);
        }
        else if (known.Kind != NodeKind.Table || known.Defined)
        {
            Twice(place, path, known);
            return null;
        }

        known.Defined = true;
        return known;
    }

    private Node? OpenItem(Node parent, Node? known, List<string> path, Place place)
    {
        if (known is null)
        {
            known = new Node(NodeKind.List, place);
            parent.Add(path[^1], place, known);
        }
        else if (known.Kind != NodeKind.List || known.Defined)
        {
            Twice(place, path, known);
            return null;
        }

        var item = new Node(NodeKind.Table, place) { Defined = true };
        known.Items.Add(item);
        return item;
    }

    // All but the last part of a dotted path; tables on the way come into being.
    private Node? Descend(Node table, List<string> path, Place place)
    {
        Node at = table;
        for (int i = 0; i < path.Count - 1; i++)
        {
            Node? next = at.Find(path[i]);
            if (next is null)
            {
                next = new Node(NodeKind.Table, place);
                at.Add(path[i], place, next);
            }

            if (next.Kind == NodeKind.List && next.Items.Count > 0)
            {
                next = next.Items[^1];
            }

            if (next.Kind != NodeKind.Table)
            {
                Twice(place, path, next);
                return null;
            }

            at = next;
        }

        return at;
    }

    private void AddAll(Node table, SyntaxList<KeyValueSyntax> items, List<string> prefix)
    {
        foreach (KeyValueSyntax item in items)
        {
            Add(table, item, prefix);
        }
    }

    // The prefix, the table's own path, serves messages only.
    private void Add(Node table, KeyValueSyntax item, List<string> prefix)
    {
        List<string> path = Parts(item.Key!);
        Place place = Of(item.Key!.Span);
        List<string> full = [.. prefix, .. path];
        Node? parent = Descend(table, path, place);
        if (parent?.Find(path[^1]) is Node known)
        {
            Twice(place, full, known);
        }
        else
        {
            parent?.Add(path[^1], place, Convert(item.Value!, full));
        }
    }

    private Node Convert(ValueSyntax value, List<string> path)
    {
        Place place = Of(value.Span);
        switch (value)
        {
            case StringValueSyntax text:
                return new(NodeKind.Text, place, text.Value ?? "");
            case IntegerValueSyntax whole:
                return new(NodeKind.Number, place, whole.Value.ToString(CultureInfo.InvariantCulture));
            case FloatValueSyntax number:
                return new(NodeKind.Number, place, number.Value.ToString("R", CultureInfo.InvariantCulture));
            case BooleanValueSyntax flag:
                return new(NodeKind.Flag, place, flag.Value ? "true" : "false");
            case InlineTableSyntax table:
                var members = new Node(NodeKind.Table, place) { Defined = true };
                foreach (InlineTableItemSyntax item in table.Items)
                {
                    Add(members, item.KeyValue!, path);
                }

                return members;
            case ArraySyntax array:
                var list = new Node(NodeKind.List, place) { Defined = true };
                foreach (ArrayItemSyntax item in array.Items)
                {
                    list.Items.Add(Convert(item.Value!, path));
                }

                return list;
            default:
                return new(NodeKind.Date, place);
        }
    }

    private void Twice(Place place, List<string> path, Node first) =>
        _faults.Add(place, string.Join('.', path), string.Create(
            CultureInfo.InvariantCulture, $"given twice; first in line {first.Place.Line}; a key may stand once"));

    private static List<string> Parts(KeySyntax key)
    {
        List<string> parts = [Part(key.Key!)];
        foreach (DottedKeyItemSyntax dotted in key.DotKeys)
        {
            parts.Add(Part(dotted.Key!));
        }

        return parts;
    }

    private static string Part(BareKeyOrStringValueSyntax key) => key is StringValueSyntax text
        ? text.Value ?? ""
        : ((BareKeySyntax)key).Key!.Text ?? "";

    private Place Of(SourceSpan span) => new(_source, span.Start.Line + 1, span.Start.Column + 1);
}
