using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Outlines;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Reading;

/// <summary>One given value: read, or known to be bad.</summary>
internal sealed class Entry
{
    public required KeySpec Key { get; init; }

    /// <summary>As written.</summary>
    public string Text { get; init; } = "";

    public required Place Place { get; init; }

    /// <summary>Layer (a file, or the overrides) that gave it.</summary>
    public int Layer { get; init; }

    public QuantityValue Value { get; init; } = QuantityValue.None;

    /// <summary>The items of a list, one array per item, by the index of the list's columns.</summary>
    public IReadOnlyList<Item> Items { get; init; } = [];

    /// <summary>The outline that a drawing holds.</summary>
    public DrawnBody? Drawing { get; init; }

    /// <summary>True when it was refused; the fault is already noted.</summary>
    public bool Bad { get; init; }
}

/// <summary>One item of a list of tables.</summary>
internal sealed record Item(Place Place, Entry?[] Columns);
