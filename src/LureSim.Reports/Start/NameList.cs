namespace LureSim.Reports.Start;

/// <summary>A column of a list.</summary>
/// <param name="Header">For people.</param>
/// <param name="Key">For programs: snake case, unit at the end.</param>
public sealed record ListColumn(string Header, string Key);

/// <summary>A cell of a list.</summary>
/// <param name="Text">For people.</param>
/// <param name="Si">For programs where it is a number, SI; null where it is the text.</param>
public sealed record ListCell(string Text, double? Si = null);

/// <summary>A table of names that can be typed, the name first, the meaning last.</summary>
/// <param name="Key">For programs.</param>
/// <param name="Heading">What it lists, a line.</param>
/// <param name="Columns">Columns.</param>
/// <param name="Cells">Rows of cells.</param>
public sealed record ListTable(string Key, string Heading, IReadOnlyList<ListColumn> Columns, IReadOnlyList<IReadOnlyList<ListCell>> Cells);

/// <summary>What <c>list</c> shows under one name.</summary>
/// <param name="Name">Name as typed.</param>
/// <param name="Meaning">What it lists, a few words.</param>
/// <param name="Typed">How a name of it is typed.</param>
/// <param name="Tables">Tables, made when asked for.</param>
public sealed record NameList(string Name, string Meaning, string Typed, Func<IReadOnlyList<ListTable>> Tables);
