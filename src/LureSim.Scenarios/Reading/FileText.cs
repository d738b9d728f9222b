namespace LureSim.Scenarios.Reading;

/// <summary>Reads text files; a failure is a sentence, not an exception.</summary>
internal static class FileText
{
    /// <summary>Reads the whole file.</summary>
    /// <returns>Null, or why it could not be read.</returns>
    public static string? TryRead(string path, out string text)
    {
        text = "";
        try
        {
            text = File.ReadAllText(path);
            return null;
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return "there is no such file";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Directory.Exists(path) ? "it is a folder; a file is due" : "the file cannot be read";
        }
    }
}
