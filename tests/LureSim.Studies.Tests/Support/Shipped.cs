using System.Runtime.CompilerServices;

namespace LureSim.Studies.Tests.Support;

/// <summary>The shipped scenarios.</summary>
internal static class Shipped
{
    /// <summary>Names of the files.</summary>
    public static IReadOnlyList<string> Files => [.. Directory.GetFiles(Folder(), "*.toml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <summary>Path of a file.</summary>
    public static string File(string name) => Path.Combine(Folder(), name);

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "scenarios"));
}
