namespace LureSim.Scenarios.Reading;

/// <summary>What a TOML value is.</summary>
internal enum NodeKind
{
    /// <summary>String.</summary>
    Text,

    /// <summary>Integer or float.</summary>
    Number,

    /// <summary>true or false.</summary>
    Flag,

    /// <summary>Date or time: nothing here is one.</summary>
    Date,

    /// <summary>Table.</summary>
    Table,

    /// <summary>Array.</summary>
    List,
}

/// <summary>A TOML value with its place: the small tree that everything after the parser reads.</summary>
internal sealed class Node(NodeKind kind, Place place, string text = "")
{
    private readonly List<(string Name, Place Place, Node Value)> _members = [];

    // A table of a hundred thousand keys must not be searched from its start for each of them.
    private readonly Dictionary<string, Node> _byName = [];

    public NodeKind Kind { get; } = kind;

    public Place Place { get; } = place;

    /// <summary>Text of a string; digits of a number; true or false.</summary>
    public string Text { get; } = text;

    /// <summary>Members of a table in file order, each with the place of its key.</summary>
    public IReadOnlyList<(string Name, Place Place, Node Value)> Members => _members;

    /// <summary>Items of a list.</summary>
    public List<Node> Items { get; } = [];

    /// <summary>True once a header or an inline table has defined it: a second header is a duplicate.</summary>
    public bool Defined { get; set; }

    /// <summary>True for the whole of a text of which some lines could not be read.</summary>
    public bool Broken { get; set; }

    /// <summary>Adds a member; of several with one name the first is found.</summary>
    public void Add(string name, Place at, Node value)
    {
        _members.Add((name, at, value));
        _byName.TryAdd(name, value);
    }

    public Node? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>What it is, in words.</summary>
    public string Words => Kind switch
    {
        NodeKind.Text => "a text",
        NodeKind.Number => "a bare number",
        NodeKind.Flag => "true or false",
        NodeKind.Date => "a date",
        NodeKind.Table => "a table",
        _ => "a list",
    };
}
