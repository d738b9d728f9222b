using System.Reflection;
using System.Text;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Parts;

/// <summary>The parts that come with the program: copies of the files in <c>scenarios/parts</c>, at hand in any folder.</summary>
public static class PartLibrary
{
    /// <summary>Where the files lie in the project.</summary>
    public const string Place = "scenarios/parts";

    internal const string Ending = ".toml";

    private const string ResourcePrefix = "parts/";

    private static readonly Lazy<IReadOnlyList<Part>> Loaded = new(Load);

    /// <summary>The folders, in the order of lists.</summary>
    public static IReadOnlyList<PartFolder> Folders { get; } =
    [
        new("lures", "lure", "bodies to start from; start scales them to your mass or length"),
        new("rods", "rod", "rods by power and action"),
        new("lines", "line", "main lines by label and material"),
        new("leaders", "leader", "leaders by length, label and material"),
        new("reels", "reel", "reels by ratio and kind of spool"),
        new("hands", "angler", "where you stand: height of the rod hand over the water"),
    ];

    /// <summary>All parts, by folder and name.</summary>
    public static IReadOnlyList<Part> All => Loaded.Value;

    /// <summary>Parts of a folder, by name.</summary>
    /// <param name="folder">Name of the folder.</param>
    public static IEnumerable<Part> In(string folder) => All.Where(p => p.Folder.Name == folder);

    /// <summary>The part of a table by its name, or null.</summary>
    /// <param name="table">Table of a scenario.</param>
    /// <param name="name">Name of the part, with or without its folder and the ending.</param>
    public static Part? Find(string table, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(p => p.Folder.Table == table && IsNamed(p, name));
    }

    /// <summary>All parts of a name; more than one only where folders share it.</summary>
    /// <param name="name">Name of the part, with or without its folder and the ending.</param>
    public static IReadOnlyList<Part> Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return [.. All.Where(p => IsNamed(p, name))];
    }

    /// <summary>The end of a fault where a file for a table was not found: how to see the parts that come with the program; empty for other tables.</summary>
    internal static string Hint(string table) =>
        Folders.FirstOrDefault(f => f.Table == table) is PartFolder folder ? $"; luresim list {folder.Name} shows the parts that come with the program" : "";

    /// <summary>The values of a part as its table of a scenario holds them.</summary>
    /// <exception cref="InvalidOperationException">The part has faults; a test reads them all.</exception>
    internal static ScenarioValues Values(Part part)
    {
        FaultList faults = new(), notes = new();
        var layers = new LayerReader(faults, notes);
        layers.ReadText(part.Text, part.Path, part.Folder.Table, ".");
        return faults.Count == 0 ? new(layers.Entries) : throw new InvalidOperationException(faults.ToList()[0].ToString());
    }

    private static bool IsNamed(Part part, string name)
    {
        string plain = name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;
        return plain == part.Name || plain == $"{part.Folder.Name}/{part.Name}";
    }

    private static Part[] Load()
    {
        Assembly own = typeof(PartLibrary).Assembly;
        string[] names = own.GetManifestResourceNames();
        Array.Sort(names, StringComparer.Ordinal);
        return [.. Folders.SelectMany(f => names.Where(n => n.StartsWith($"{ResourcePrefix}{f.Name}/", StringComparison.Ordinal)).Select(n => Read(own, f, n)))];
    }

    private static Part Read(Assembly own, PartFolder folder, string resource)
    {
        using var reader = new StreamReader(own.GetManifestResourceStream(resource)!, Encoding.UTF8);
        int start = ResourcePrefix.Length + folder.Name.Length + 1;
        return new(folder, resource[start..^Ending.Length], reader.ReadToEnd());
    }
}
