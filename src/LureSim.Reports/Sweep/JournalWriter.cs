using LureSim.Reports.Kit.Files;

namespace LureSim.Reports.Sweep;

/// <summary>
/// Adds finished runs to a journal. Each is given to the system before the next one starts, so that a killed process loses none;
/// on closing everything is forced to the disk. One process at a time; not thread-safe.
/// </summary>
public sealed class JournalWriter : IDisposable
{
    private readonly FileStream _stream;
    private readonly string _path;

    private JournalWriter(string path, FileStream stream) => (_path, _stream) = (path, stream);

    /// <summary>Starts a journal, in place of one that is there.</summary>
    /// <param name="path">File; its folder is made when missing.</param>
    /// <param name="header">Which sweep, which part.</param>
    /// <exception cref="OutputException">It cannot be written, or another process writes it.</exception>
    public static JournalWriter Start(string path, JournalHeader header)
    {
        ArgumentNullException.ThrowIfNull(header);
        JournalWriter writer = OpenAt(path, 0);
        writer.Write(header.Text);
        return writer;
    }

    /// <summary>Goes on with a journal; a torn last line is cut off.</summary>
    /// <param name="journal">As read.</param>
    /// <exception cref="OutputException">It cannot be written, or another process writes it.</exception>
    public static JournalWriter Continue(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return OpenAt(journal.Path, journal.End);
    }

    /// <summary>Adds one line of the table.</summary>
    /// <param name="row">Line that starts with the run's index.</param>
    /// <exception cref="OutputException">It cannot be written.</exception>
    public void Write(string row)
    {
        try
        {
            _stream.Write(JournalLine.Seal(row));
            _stream.Flush();
        }
        catch (IOException e)
        {
            throw new OutputException(_path, e);
        }
    }

    /// <summary>Forces everything to the disk and closes the file.</summary>
    public void Dispose()
    {
        _stream.Flush(flushToDisk: true);
        _stream.Dispose();
    }

    private static JournalWriter OpenAt(string path, long end)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            var stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None);
            stream.SetLength(end);
            stream.Position = end;
            return new(path, stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException(path, e);
        }
    }
}
