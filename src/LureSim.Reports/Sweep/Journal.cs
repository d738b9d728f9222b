using System.Globalization;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>A journal as found on disk: which runs it holds, and where. Damaged lines count as not there.</summary>
public sealed class Journal
{
    private readonly long[] _starts;

    private Journal(string path, JournalHeader header, long[] starts) => (Path, Header, _starts) = (path, header, starts);

    /// <summary>File.</summary>
    public string Path { get; }

    /// <summary>Which sweep, which part.</summary>
    public JournalHeader Header { get; }

    /// <summary>Runs it holds.</summary>
    public int DoneCount { get; private set; }

    /// <summary>Runs of its part.</summary>
    public int DueCount => Header.Shard.CountOf(Header.Count);

    /// <summary>Complete lines whose checksum does not fit.</summary>
    public int DamagedCount { get; private set; }

    /// <summary>Index of a run that it holds twice, or null.</summary>
    public int? Repeated { get; private set; }

    /// <summary>Where complete lines end, bytes; a torn line may follow.</summary>
    internal long End { get; private set; }

    /// <summary>Whether a run is there.</summary>
    /// <param name="index">Index in the whole list.</param>
    public bool Has(int index) => _starts[index] > 0;

    /// <summary>Reads a journal.</summary>
    /// <param name="path">File.</param>
    /// <returns>Null when there is no file, or one that was torn before its first line was whole.</returns>
    /// <exception cref="SweepException">The file is no journal, or its first line is damaged.</exception>
    public static Journal? Read(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1);
            var cursor = new LineCursor(stream);
            if (!cursor.TryRead(out ReadOnlySpan<byte> first))
            {
                return null;
            }

            JournalHeader header = (JournalLine.Open(first) is string text ? JournalHeader.Parse(text) : null)
                ?? throw new SweepException($"'{path}' is no journal of a sweep, or its first line is damaged");
            var journal = new Journal(path, header, new long[header.Count]);
            journal.ReadRuns(cursor);
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

        return JournalLine.Open(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(bytes))
            ?? throw new SweepException($"'{Path}' changed while it was read");
    }

    private void ReadRuns(LineCursor cursor)
    {
        End = cursor.Position;
        while (cursor.TryRead(out ReadOnlySpan<byte> line))
        {
            if (IndexOf(JournalLine.Open(line)) is not int index)
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

            End = cursor.Position;
        }
    }

    private int? IndexOf(string? row)
    {
        int comma = row?.IndexOf(',', StringComparison.Ordinal) ?? -1;
        return comma > 0 && int.TryParse(row.AsSpan(0, comma), NumberStyles.None, CultureInfo.InvariantCulture, out int index)
            && index < _starts.Length && Header.Shard.Has(index)
            ? index
            : null;
    }
}
