using LureSim.Reports.Kit.Files;

namespace LureSim.Reports.Sweep;

/// <summary>
/// Adds finished runs to a journal. Each is given to the system before the next one starts, so that a killed process loses none; nothing
/// waits in the process. One process at a time; not thread-safe.
/// </summary>
public sealed class JournalWriter : IDisposable
{
    private readonly Stream _stream;
    private readonly string _path;
    private JournalSeal _seal;
    private OutputException? _failure;

    private JournalWriter(string path, Stream stream, JournalSeal seal) => (_path, _stream, _seal) = (path, stream, seal);

    /// <summary>Starts a journal, in place of one that is there.</summary>
    /// <param name="path">File; its folder is made when missing.</param>
    /// <param name="header">Which sweep, which part.</param>
    /// <param name="machine">What the bits of the rows depend on; see <see cref="MachineMaths"/>.</param>
    /// <exception cref="OutputException">It cannot be written, or another process writes it.</exception>
    public static JournalWriter Start(string path, JournalHeader header, string machine)
    {
        ArgumentNullException.ThrowIfNull(header);
        return Begin(new(path, OpenAt(path, 0), JournalSeal.First), [header.Text, Journal.MachineLine(machine)]);
    }

    /// <summary>Goes on with a journal; a torn last line is cut off.</summary>
    /// <param name="journal">As read.</param>
    /// <param name="machine">What the bits of the rows depend on; see <see cref="MachineMaths"/>.</param>
    /// <exception cref="OutputException">It cannot be written, or another process writes it.</exception>
    public static JournalWriter Continue(Journal journal, string machine)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var writer = new JournalWriter(journal.Path, OpenAt(journal.Path, journal.End), journal.LastSeal);
        return journal.Machines.Count > 0 && journal.Machines[^1] == machine ? writer : Begin(writer, [Journal.MachineLine(machine)]);
    }

    /// <summary>Adds one line of the table.</summary>
    /// <param name="row">Line that starts with the run's index.</param>
    /// <exception cref="OutputException">It cannot be written; nothing of it stays, and nothing more is taken.</exception>
    public void Write(string row)
    {
        if (_failure is not null)
        {
            throw _failure;
        }

        long end = _stream.Position;
        try
        {
            _stream.Write(_seal.Close(row));
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            CutAt(end);
            throw _failure = new(_path, e);
        }
    }

    /// <summary>Forces everything to the disk.</summary>
    /// <exception cref="OutputException">The system cannot.</exception>
    public void Force()
    {
        try
        {
            (_stream as FileStream)?.Flush(flushToDisk: true);
            Disk.ForceNames(Path.GetDirectoryName(Path.GetFullPath(_path))!);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            throw new OutputException(_path, e);
        }
    }

    /// <summary>Closes the file.</summary>
    public void Dispose()
    {
        try
        {
            _stream.Dispose();
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            // Nothing waits to be written: every line was handed over, or its failure told.
        }
    }

    /// <summary>Starts a journal on a stream of a test.</summary>
    internal static JournalWriter On(Stream stream, JournalHeader header, string machine) =>
        Begin(new("stream", stream, JournalSeal.First), [header.Text, Journal.MachineLine(machine)]);

    private static JournalWriter Begin(JournalWriter writer, string[] lines)
    {
        try
        {
            foreach (string line in lines)
            {
                writer.Write(line);
                writer._seal = writer._seal.After(line);
            }

            return writer;
        }
        catch (OutputException)
        {
            writer.Dispose();
            throw;
        }
    }

    private void CutAt(long end)
    {
        try
        {
            _stream.SetLength(end);
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            // A torn last line is cut off when the sweep goes on.
        }
    }

    private static FileStream OpenAt(string path, long end)
    {
        FileStream? stream = null;
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);

            // Without a buffer, or a full disk would show when the file is closed; for reading too, or a pipe would wait for its reader.
            stream = new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 0);
            if (!stream.CanSeek)
            {
                throw new IOException("it is a pipe, not a file");
            }

            stream.SetLength(end);
            stream.Position = end;
            return stream;
        }
        catch (Exception e) when (OutputException.IsSystem(e))
        {
            stream?.Dispose();
            throw new OutputException(path, e);
        }
    }
}
