using System.Text;

namespace LureSim.Scenarios.Reading;

/// <summary>
/// Reads text files; a failure is a sentence, not an exception. Only plain files that hold something are opened: a pipe, a device or a
/// socket would make the program wait, or never end. They show as files of 0 bytes, so they are told without being touched.
/// </summary>
public static class FileText
{
    /// <summary>Largest text that is read, bytes: a scenario, a part, a CSV. The largest shipped one has some 3,000.</summary>
    public const int MostBytes = 1_000_000;

    private const string NoPlainFile = "it is empty or no plain file (a pipe, a device, a socket); a file that holds text is due";

    /// <summary>Looks whether a path names a plain file that holds something.</summary>
    /// <param name="path">Path as given, any text.</param>
    /// <param name="full">Full path of the file.</param>
    /// <returns>Null, or why it is none, a sentence without the path.</returns>
    public static string? TryFind(string path, out string full)
    {
        ArgumentNullException.ThrowIfNull(path);
        full = path;
        if (path.Length == 0)
        {
            return "the name is empty; the name of a file is due";
        }

        if (path.Contains('\0', StringComparison.Ordinal))
        {
            return "the name holds a NUL character; no file has such a name";
        }

        if (!Path.IsPathFullyQualified(path) && !TryWorkingFolder())
        {
            return "the working folder does not exist any more";
        }

        full = Path.GetFullPath(path);
        return Guarded(full, Kind);
    }

    /// <summary>Reads a file of at most <see cref="MostBytes"/>.</summary>
    /// <param name="path">Path as given, any text.</param>
    /// <param name="text">Its text.</param>
    /// <returns>Null, or why it could not be read, a sentence without the path.</returns>
    public static string? TryRead(string path, out string text)
    {
        string found = "";
        string? failure = TryFind(path, out string full) ?? Guarded(full, f => Content(f, out found));
        text = found;
        return failure;
    }

    private static string? Kind(string full)
    {
        // The length of a link is that of the name it holds.
        FileSystemInfo target = File.ResolveLinkTarget(full, returnFinalTarget: true) ?? new FileInfo(full);
        return Directory.Exists(full) ? "it is a folder; a file is due"
            : target is not FileInfo { Exists: true } file ? (Path.Exists(full) ? NoPlainFile : "there is no such file")
            : file.Length == 0 ? NoPlainFile
            : null;
    }

    private static string? Content(string full, out string text)
    {
        text = "";
        using FileStream stream = File.OpenRead(full);
        var bytes = new MemoryStream();
        var part = new byte[65536];
        for (int n = stream.Read(part); n > 0 && bytes.Length <= MostBytes; n = stream.Read(part))
        {
            bytes.Write(part, 0, n);
        }

        if (bytes.Length > MostBytes)
        {
            return FormattableString.Invariant($"it holds more than {MostBytes / 1_000_000} MB of text; at most that is read");
        }

        bytes.Position = 0;
        using var reader = new StreamReader(bytes, Encoding.UTF8);
        text = reader.ReadToEnd();
        return null;
    }

    private static bool TryWorkingFolder()
    {
        try
        {
            return Directory.GetCurrentDirectory().Length > 0;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static string? Guarded(string full, Func<string, string?> look)
    {
        try
        {
            return look(full);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return "there is no such file";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return "the file cannot be read";
        }
    }
}
