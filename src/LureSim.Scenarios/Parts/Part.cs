namespace LureSim.Scenarios.Parts;

/// <summary>A folder of parts: what it holds and which table of a scenario takes one.</summary>
/// <param name="Name">Name of the folder, for example <c>rods</c>.</param>
/// <param name="Table">Table, for example <c>rod</c>.</param>
/// <param name="Meaning">What it holds, in a few words.</param>
public sealed record PartFolder(string Name, string Table, string Meaning);

/// <summary>One part that comes with the program: a plain text file that people may copy and change.</summary>
/// <param name="Folder">Folder.</param>
/// <param name="Name">Name without folder and ending.</param>
/// <param name="Text">The file, character by character.</param>
public sealed record Part(PartFolder Folder, string Name, string Text)
{
    /// <summary>Place in the folder of parts, for example <c>rods/medium-fast.toml</c>.</summary>
    public string Path => $"{Folder.Name}/{Name}{PartLibrary.Ending}";

    /// <summary>What the part's own first line says of it.</summary>
    public string Meaning => Text.Split('\n')[0].TrimStart('#').Trim();
}
