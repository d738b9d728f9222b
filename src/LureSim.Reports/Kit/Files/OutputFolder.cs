namespace LureSim.Reports.Kit.Files;

/// <summary>
/// A folder that receives a set of files whole or not at all: files are staged in a hidden folder beside their places, forced to the disk,
/// and exchanged for the earlier set by <see cref="Commit"/>; removed if the set is not committed. Opened before a run, it finds out in
/// time that nothing can be written. One process at a time per folder. Not thread-safe.
/// </summary>
public sealed class OutputFolder : IDisposable
{
    private const int LockTries = 3;
    private readonly string _kind;
    private readonly CancellationToken _stop;
    private readonly List<(string Name, Task<string> Sha256)> _files = [];
    private readonly List<string> _created = [];
    private FileStream? _lock;
    private bool _committed;
    private bool _closed;

    /// <summary>Opens the folder, creating it when missing, and ends what a killed run had begun there.</summary>
    /// <param name="path">Folder.</param>
    /// <param name="kind">What the set is: small letters and hyphens, for example <c>cadence-map</c>. Sets of the same kind replace each other.</param>
    /// <param name="stop">Stops before the next file; never in the middle of an exchange.</param>
    /// <exception cref="OutputException">It cannot be written, another run writes there, or it holds a set of another kind.</exception>
    public OutputFolder(string path, string kind, CancellationToken stop = default)
    {
        (Path, _kind, _stop) = (path, kind, stop);
        if (string.IsNullOrWhiteSpace(path) || path.Contains('\0', StringComparison.Ordinal))
        {
            throw new OutputException("--out: the name of the folder is empty or holds a character that no name may have");
        }

        try
        {
            Guard(Open);
        }
        catch (OutputException)
        {
            Dispose();
            throw;
        }
    }

    /// <summary>The folder as given.</summary>
    public string Path { get; }

    /// <summary>Told each step of an exchange before it is taken; for tests.</summary>
    internal Action<string>? Step { get; init; }

    private string Staging => System.IO.Path.Combine(Path, ".luresim-staging");

    private string New => System.IO.Path.Combine(Staging, "new");

    /// <summary>Stages a file.</summary>
    /// <param name="name">File name without folder.</param>
    /// <param name="bytes">Its content.</param>
    public void Add(string name, byte[] bytes) => Add(name, stream => stream.Write(bytes));

    /// <summary>Stages a file.</summary>
    /// <param name="name">File name without folder.</param>
    /// <param name="write">Writes its content.</param>
    /// <exception cref="OutputException">It cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public void Add(string name, Action<Stream> write)
    {
        _stop.ThrowIfCancellationRequested();
        Guard(() => Stage(name, write));

        // The disk takes its time; meanwhile the next picture is drawn.
        string path = System.IO.Path.Combine(New, name);
        _files.Add((name, Task.Run(() => Settle(path))));
    }

    /// <summary>Takes a file of the earlier set into the new one as it is, when it is there.</summary>
    /// <param name="name">File name without folder.</param>
    public void Keep(string name)
    {
        string earlier = System.IO.Path.Combine(Path, name);
        if (File.Exists(earlier))
        {
            Add(name, stream =>
            {
                using FileStream from = File.OpenRead(earlier);
                from.CopyTo(stream);
            });
        }
    }

    /// <summary>Exchanges the earlier set for the staged one: files of the same name, and files that only the earlier set had, go; other
    /// files stay. If a file cannot be moved, the earlier set is put back and <see cref="OutputException"/> is thrown.</summary>
    /// <exception cref="OperationCanceledException">Stopped before the exchange.</exception>
    public void Commit()
    {
        _stop.ThrowIfCancellationRequested();
        var exchange = new SetExchange(Path, Staging, Step);
        Guard(() =>
        {
            var list = new SetList(_kind, [.. _files.Select(f => (f.Name, f.Sha256.GetAwaiter().GetResult()))]);
            Stage(SetList.FileName, stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(list.Text)));
            Settle(System.IO.Path.Combine(New, SetList.FileName));
            Disk.ForceNames(New);
            Directory.Move(New, exchange.Coming);
            Disk.ForceNames(Staging);
        });
        exchange.Complete();
        _committed = true;
        Dispose();
    }

    /// <summary>Removes what was staged but not committed, and folders that were made for it.</summary>
    public void Dispose()
    {
        if (_closed)
        {
            return;
        }

        _closed = true;
        Task.WhenAll(_files.Select(f => f.Sha256)).ContinueWith(_ => { }, TaskScheduler.Default).Wait();
        try
        {
            // Without the lock what is staged is another run's.
            if (_lock is not null && !new SetExchange(Path, Staging).IsPending)
            {
                Discard();
            }

            _lock?.Dispose();
            Directory.Delete(Staging);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            // The results stand or the error is on its way; the next run in this folder clears what is left.
        }

        _lock?.Dispose();
        RemoveCreated();
    }

    private void Open()
    {
        for (string? at = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(Path)); at is not null && !Directory.Exists(at);)
        {
            _created.Add(at);
            at = System.IO.Path.GetDirectoryName(at);
        }

        Directory.CreateDirectory(Path);
        if (new DirectoryInfo(Staging).LinkTarget is not null)
        {
            throw new IOException($"'{Staging}' is a link");
        }

        _lock = Lock();
        var exchange = new SetExchange(Path, Staging);
        if (exchange.IsPending)
        {
            exchange.Complete();
        }

        Discard();
        if (SetList.Read(Path) is SetList there && there.Kind != _kind)
        {
            throw new OutputException($"'{Path}' holds the results of '{there.Kind}', which those of '{_kind}' would mix with: choose another --out, or delete them");
        }

        Directory.CreateDirectory(New);
    }

    // The lock belongs to the process, so that it ends with it however it ends.
    private FileStream Lock()
    {
        string path = System.IO.Path.Combine(Staging, "lock");
        for (int tries = 1; ; tries++)
        {
            Directory.CreateDirectory(Staging);
            try
            {
                return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (DirectoryNotFoundException) when (tries < LockTries)
            {
                // Another run ended in between and took its staging folder with it.
            }
            catch (IOException) when (File.Exists(path))
            {
                throw new OutputException($"another run is writing to '{Path}': wait for it, or choose another --out");
            }
        }
    }

    private void Stage(string name, Action<Stream> write)
    {
        using FileStream stream = new(System.IO.Path.Combine(New, name), FileMode.CreateNew);
        write(stream);
    }

    // Forces a file to the disk; its SHA-256.
    private static string Settle(string path)
    {
        using FileStream stream = new(path, FileMode.Open, FileAccess.ReadWrite);
        stream.Flush(flushToDisk: true);
        return SetList.HashOf(stream);
    }

    private void Discard()
    {
        foreach (string folder in Directory.GetDirectories(Staging))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private void RemoveCreated()
    {
        if (_committed)
        {
            return;
        }

        // The innermost first; one that holds something else by now stays.
        foreach (string folder in _created)
        {
            try
            {
                Directory.Delete(folder);
            }
            catch (Exception e) when (OutputException.IsSystem(e))
            {
                break;
            }
        }
    }

    private void Guard(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            throw new OutputException(Path, e);
        }
    }
}
