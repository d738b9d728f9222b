using System.Globalization;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>A journal as found on disk: which runs it holds, and where. Lines that are damaged, or belong to another journal, count as not
/// there.</summary>
public sealed class Journal
{
    private const string MachineMark = "machine\t";
    private readonly long[] _starts;
    private readonly List<(long From, JournalSeal Seal)> _seals = [];
    private readonly List<string> _machines = [];

    private Journal(string path, JournalHeader header) => (Path, Header, _starts) = (path, header, new long[header.Count]);

    /// <summary>File.</summary>
    public string Path { get; }

    /// <summary>Which sweep, which part.</summary>
    public JournalHeader Header { get; }

    /// <summary>Runs it holds.</summary>
    public int DoneCount { get; private set; }

    /// <summary>Runs of its part.</summary>
    public int DueCount => Header.Shard.CountOf(Header.Count);

    /// <summary>Complete lines whose check does not fit: damaged, changed, or of another journal.</summary>
    public int DamagedCount { get; private set; }

    /// <summary>Index of a run that it holds twice, or null.</summary>
    public int? Repeated { get; private set; }

    /// <summary>What the bits of its rows depend on, in the order of writing; see <see cref="MachineMaths"/>.</summary>
    public IReadOnlyList<string> Machines => _machines;

    /// <summary>Where complete lines end, bytes; a torn line may follow.</summary>
    internal long End { get; private set; }

    /// <summary>Seal of the next line.</summary>
    internal JournalSeal LastSeal => _seals[^1].Seal;

    /// <summary>The line that says which machine makes the rows after it.</summary>
    internal static string MachineLine(string machine) => MachineMark + machine;

    /// <summary>Whether a run is there.</summary>
    /// <param name="index">Index in the whole list.</param>
    public bool Has(int index) => _starts[index] > 0;

    /// <summary>Reads a journal.</summary>
    /// <param name="path">File.</param>
    /// <returns>Null when there is no file, or one that was torn before its first line was whole.</returns>
    /// <exception cref="SweepException">The file is no journal or cannot be read, or its first line is damaged.</exception>
    public static Journal? Read(string path)
    {
        try
        {
            // Pipes and devices have no length either, and must not be opened: they would wait, or never end.
            if (new FileInfo(path) is not { Exists: true, Length: > 0 })
            {
                return null;
            }

            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1);
            var cursor = new LineCursor(stream);
            if (!cursor.TryRead(out ReadOnlySpan<byte> first, skipsLong: false))
            {
                return null;
            }

            JournalHeader header = (JournalSeal.First.Open(first) is string text ? JournalHeader.Parse(text) : null)
                ?? throw new SweepException($"'{path}' is no journal of a sweep or map of this version, or its first line is damaged");
            var journal = new Journal(path, header);
            journal.ReadRuns(cursor, JournalSeal.First.After(header.Text));
            return journal;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SweepException($"cannot read '{path}': {e.Message.ReplaceLineEndings(" ")}");
        }
    }

    /// <summary>Opens the file for <see cref="Row"/>.</summary>
    internal FileStream Open() => new(Path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 4096);

    /// <summary>The line of the table of a run that is there.</summary>
    internal string Row(FileStream stream, int index)
    {
        stream.Position = _starts[index];
        var bytes = new List<byte>(1024);
        for (int b = stream.ReadByte(); b is not (-1 or '\n'); b = stream.ReadByte())
        {
            bytes.Add((byte)b);
        }

        return _seals.FindLast(s => s.From <= _starts[index]).Seal.Open(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(bytes))
            ?? throw new SweepException($"'{Path}' changed while it was read");
    }

    private void ReadRuns(LineCursor cursor, JournalSeal seal)
    {
        End = cursor.Position;
        _seals.Add((End, seal));
        while (cursor.TryRead(out ReadOnlySpan<byte> line))
        {
            Take(LastSeal.Open(line), cursor.Position);
            End = cursor.Position;
        }
    }

    private void Take(string? text, long end)
    {
        if (text?.StartsWith(MachineMark, StringComparison.Ordinal) == true)
        {
            _machines.Add(text[MachineMark.Length..]);
            _seals.Add((end, LastSeal.After(text)));
        }
        else if (IndexOf(text) is not int index)
        {
            DamagedCount++;
        }
        else if (_starts[index] > 0)
        {
            Repeated ??= index;
        }
        else
        {
            _starts[index] = End;
            DoneCount++;
        }
    }

    private int? IndexOf(string? row)
    {
        if (row is null || !Header.Layout.Fits(row))
        {
            return null;
        }

        int comma = row.IndexOf(',', StringComparison.Ordinal);
        return int.TryParse(row.AsSpan(0, comma), NumberStyles.None, CultureInfo.InvariantCulture, out int index)
            && index < _starts.Length && Header.Shard.Has(index)
            ? index
            : null;
    }
}
