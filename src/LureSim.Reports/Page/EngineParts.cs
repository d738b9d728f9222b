using System.Reflection;

namespace LureSim.Reports.Page;

/// <summary>The solver for a page: the files that a browser needs, each packed with gzip. The page holds them as text
/// (<c>&lt;script type="text/plain" id="engine-NAME"&gt;</c>), and <c>Assets/engine.js</c> wakes it up.</summary>
internal static class EngineParts
{
    private const string Folder = "engine/";

    /// <summary>Start of the identifier of each part's element.</summary>
    public const string IdStart = "engine-";

    /// <summary>Names and base64 of all parts, in order of the names.</summary>
    public static IReadOnlyList<(string Name, string Base64)> All()
    {
        Assembly here = typeof(EngineParts).Assembly;
        return [.. here.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(n => (n[Folder.Length..], Base64(here, n)))];
    }

    private static string Base64(Assembly here, string name)
    {
        using Stream stream = here.GetManifestResourceStream(name)!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Convert.ToBase64String(bytes);
    }
}
