namespace LureSim.Scenarios.Tests;

/// <summary>A folder of scenario files that lives as long as a test.</summary>
internal sealed class Folder : IDisposable
{
    public Folder() => Directory.CreateDirectory(Root);

    public string Root { get; } = Path.Combine(Path.GetTempPath(), $"luresim-{Guid.NewGuid():N}");

    /// <summary>Folder of the shipped scenarios, found upwards from the test's own.</summary>
    public static string Shipped => Path.Combine(Repository, "scenarios");

    /// <summary>Root of the repository.</summary>
    public static string Repository
    {
        get
        {
            string? at = AppContext.BaseDirectory;
            while (at is not null && !File.Exists(Path.Combine(at, "LureSim.sln")))
            {
                at = Path.GetDirectoryName(at);
            }

            return at ?? throw new InvalidOperationException("The tests run inside the repository.");
        }
    }

    public string Write(string name, string text)
    {
        string path = Path.Combine(Root, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
