namespace LureSim.Reports.Kit.Files;

/// <summary>
/// A folder that receives a set of files whole or not at all: files are staged in a hidden folder beside their places,
/// moved there by <see cref="Commit"/>, and removed if the set is not committed. Not thread-safe.
/// </summary>
public sealed class OutputFolder : IDisposable
{
    private readonly string _staging;
    private readonly bool _created;
    private readonly List<string> _names = [];
    private bool _committed;

    /// <summary>Opens the folder, creating it when missing; throws <see cref="OutputException"/> when it cannot be
    /// written.</summary>
    /// <param name="path">Folder.</param>
    public OutputFolder(string path)
    {
        Path = path;
        _created = !Directory.Exists(path);
        _staging = System.IO.Path.Combine(path, ".staging-" + System.IO.Path.GetRandomFileName());
        Guard(() => Directory.CreateDirectory(_staging));
    }

    /// <summary>The folder as given.</summary>
    public string Path { get; }

    /// <summary>Stages a file.</summary>
    /// <param name="name">File name without folder.</param>
    /// <param name="bytes">Its content.</param>
    public void Add(string name, byte[] bytes) => Add(name, stream => stream.Write(bytes));

    /// <summary>Stages a file.</summary>
    /// <param name="name">File name without folder.</param>
    /// <param name="write">Writes its content.</param>
    public void Add(string name, Action<Stream> write)
    {
        Guard(() =>
        {
            using FileStream stream = new(Staged(name), FileMode.CreateNew);
            write(stream);
        });
        _names.Add(name);
    }

    /// <summary>Moves all staged files to their places, replacing files of the same name; if one move fails, the earlier
    /// files are put back and <see cref="OutputException"/> is thrown.</summary>
    public void Commit()
    {
        int done = 0;
        try
        {
            foreach (string name in _names)
            {
                Replace(name);
                done++;
            }
        }
        catch (Exception e) when (IsSystem(e))
        {
            for (int i = done; i >= 0; i--)
            {
                PutBack(_names[i]);
            }

            throw new OutputException(System.IO.Path.Combine(Path, _names[done]), e);
        }

        _committed = true;
    }

    /// <summary>Removes what was staged but not committed.</summary>
    public void Dispose()
    {
        try
        {
            Directory.Delete(_staging, recursive: true);
            if (_created && !_committed)
            {
                Directory.Delete(Path);
            }
        }
        catch (Exception e) when (IsSystem(e))
        {
            // The results stand or the error is on its way; a leftover hidden folder is not worth hiding either.
        }
    }

    private void Replace(string name)
    {
        string target = Target(name);
        if (File.Exists(target))
        {
            File.Move(target, Earlier(name));
        }

        File.Move(Staged(name), target);
    }

    private void PutBack(string name)
    {
        string target = Target(name);
        if (!File.Exists(Staged(name)) && File.Exists(target))
        {
            File.Delete(target);
        }

        if (File.Exists(Earlier(name)))
        {
            File.Move(Earlier(name), target);
        }
    }

    private string Target(string name) => System.IO.Path.Combine(Path, name);

    private string Staged(string name) => System.IO.Path.Combine(_staging, name);

    private string Earlier(string name) => System.IO.Path.Combine(_staging, name + ".earlier");

    private void Guard(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (IsSystem(e))
        {
            throw new OutputException(Path, e);
        }
    }

    private static bool IsSystem(Exception e) =>
        e is IOException or UnauthorizedAccessException or NotSupportedException or System.Security.SecurityException;
}
