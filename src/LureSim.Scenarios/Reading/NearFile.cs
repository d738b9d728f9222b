using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Reading;

/// <summary>The file that was probably meant by a name that no file has.</summary>
internal static class NearFile
{
    private const int Most = 1000;

    /// <summary>A hint, or null where nothing is near or the file is there.</summary>
    /// <param name="path">Path as given.</param>
    public static string? Hint(string path)
    {
        string name = Path.GetFileName(path), folder = Path.GetDirectoryName(path) is { Length: > 0 } given ? given : ".";
        try
        {
            if (name.Length == 0 || path.Contains('\0', StringComparison.Ordinal) || Path.Exists(path) || !Directory.Exists(folder))
            {
                return null;
            }

            string[] known = [.. Directory.EnumerateFiles(folder, "*.toml").Take(Most).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];
            string? near = known.FirstOrDefault(k => k == name + ".toml") ?? Nearest.Of(name, known);
            return near is null ? null : $"; did you mean {Path.Combine(Path.GetDirectoryName(path) ?? "", near)}?";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
