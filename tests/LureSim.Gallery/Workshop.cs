using LureSim.Cli;

namespace LureSim.Gallery;

/// <summary>An empty folder with a copy of the shipped scenarios, in which commands are run as a reader of the page types them; each once.</summary>
internal sealed class Workshop : IDisposable
{
    private const string Program = "luresim";
    private readonly string _before = Environment.CurrentDirectory;
    private readonly string _folder = Directory.CreateTempSubdirectory("gallery").FullName;
    private readonly Dictionary<string, string> _done = new(StringComparer.Ordinal);

    /// <summary>Prepares it; the program works in it until it is disposed of.</summary>
    /// <param name="root">Folder of the project.</param>
    public Workshop(string root)
    {
        Copy(Path.Combine(root, "scenarios"), Path.Combine(_folder, "scenarios"));
        Environment.CurrentDirectory = _folder;
    }

    /// <summary>Draws a picture.</summary>
    /// <param name="picture">Which.</param>
    /// <returns>Its bytes.</returns>
    public byte[] Draw(Picture picture)
    {
        // Pictures of one study with other keys share a folder: what is there may be of the other.
        foreach (string typed in picture.Typed)
        {
            Run(typed, again: picture.Probe is not null);
        }

        return File.ReadAllBytes(Path.Combine(_folder, picture.From));
    }

    /// <summary>Runs a command.</summary>
    /// <param name="typed">As typed.</param>
    /// <param name="again">Even if it was run before.</param>
    /// <returns>What it wrote to stdout.</returns>
    /// <exception cref="InvalidOperationException">It failed.</exception>
    public string Run(string typed, bool again = false)
    {
        if (!again && _done.TryGetValue(typed, out string? before))
        {
            return before;
        }

        string[] words = Words(typed);
        if (words[0] != Program)
        {
            throw new InvalidOperationException($"'{typed}' is no command of {Program}");
        }

        using StringWriter output = new(), error = new();
        int exit = App.Run(words[1..], new Terminal(output, error, false, ShowsProgress: false));
        return exit == 0 ? _done[typed] = output.ToString() : throw new InvalidOperationException($"'{typed}' ended with {exit}: {error}");
    }

    /// <summary>The words of a command line; quotation marks keep blanks together.</summary>
    /// <param name="typed">As typed.</param>
    public static string[] Words(string typed) =>
        [.. typed.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    /// <inheritdoc/>
    public void Dispose()
    {
        Environment.CurrentDirectory = _before;
        Directory.Delete(_folder, recursive: true);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (string file in Directory.GetFiles(from))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }

        foreach (string folder in Directory.GetDirectories(from))
        {
            Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
        }
    }
}
