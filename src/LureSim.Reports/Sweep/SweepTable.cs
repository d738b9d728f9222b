using System.Text;
using LureSim.Studies.Batches;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>The runs of one sweep in the order of their indices, whichever journals hold them.</summary>
public sealed class SweepTable
{
    private const int Named = 5;
    private readonly IReadOnlyList<Journal> _parts;

    private SweepTable(IReadOnlyList<Journal> parts) => _parts = parts;

    /// <summary>Which sweep.</summary>
    public JournalHeader Header => _parts[0].Header;

    /// <summary>Joins the parts of a sweep.</summary>
    /// <param name="parts">Journals that together hold every run once.</param>
    /// <exception cref="SweepException">Parts of different sweeps, a run that is missing, a run that is there twice.</exception>
    public static SweepTable Join(IReadOnlyList<Journal> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
        {
            throw new SweepException("no parts were given");
        }

        foreach (Journal part in parts)
        {
            RefuseStranger(parts[0], part);
            if (part.Repeated is int twice)
            {
                throw new SweepException($"overlap: run {twice} is twice in '{part.Path}'");
            }
        }

        RefuseOverlapAndGap(parts);
        return new(parts);
    }

    /// <summary>Lines of the table, without the header.</summary>
    public IEnumerable<string> Rows()
    {
        FileStream[] streams = [.. _parts.Select(p => p.Open())];
        try
        {
            for (int index = 0; index < Header.Count; index++)
            {
                int part = Holder(_parts, index);
                yield return _parts[part].Row(streams[part], index);
            }
        }
        finally
        {
            Array.ForEach(streams, s => s.Dispose());
        }
    }

    /// <summary>Writes the table: a header, then one line per run.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    public void Write(Stream stream)
    {
        using var text = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        text.WriteLine(Header.Layout.Header);
        foreach (string row in Rows())
        {
            text.WriteLine(row);
        }
    }

    private static int Holder(IReadOnlyList<Journal> parts, int index)
    {
        for (int p = 0; p < parts.Count; p++)
        {
            if (parts[p].Has(index))
            {
                return p;
            }
        }

        return -1;
    }

    private static void RefuseStranger(Journal first, Journal part)
    {
        if (part.Header.Fingerprint != first.Header.Fingerprint || part.Header.Count != first.Header.Count
            || part.Header.Layout.Header != first.Header.Layout.Header || part.Header.Layout.Counts != first.Header.Layout.Counts)
        {
            throw new SweepException(
                $"'{first.Path}' and '{part.Path}' are parts of different sweeps: scenario, what varies, command and version must be the same");
        }
    }

    private static void RefuseOverlapAndGap(IReadOnlyList<Journal> parts)
    {
        int missing = 0;
        var first = new List<int>();
        for (int index = 0; index < parts[0].Header.Count; index++)
        {
            int holder = Holder(parts, index);
            if (holder < 0)
            {
                missing++;
                if (first.Count < Named)
                {
                    first.Add(index);
                }
            }

            for (int p = holder + 1; holder >= 0 && p < parts.Count; p++)
            {
                if (parts[p].Has(index))
                {
                    throw new SweepException(parts[holder].Path == parts[p].Path
                        ? $"overlap: '{parts[p].Path}' is given twice"
                        : $"overlap: run {index} is in '{parts[holder].Path}' and in '{parts[p].Path}'");
                }
            }
        }

        if (missing > 0)
        {
            string more = missing > first.Count ? ", ..." : "";
            int damaged = parts.Sum(p => p.DamagedCount);
            string hint = damaged > 0 ? $"; damaged lines: {damaged}" : "";
            throw new SweepException(string.Concat(
                $"gap: {missing} of {parts[0].Header.Count} runs are missing ({string.Join(", ", first)}{more}){hint}; ",
                $"run again with --resume: {Unfinished(parts)}"));
        }
    }

    private static string Unfinished(IReadOnlyList<Journal> parts)
    {
        var unfinished = parts.Where(p => p.DoneCount < p.DueCount).Select(p => p.Header.Shard).ToList();
        int of = parts[0].Header.Shard.Of;
        if (parts.All(p => p.Header.Shard.Of == of))
        {
            unfinished.AddRange(Enumerable.Range(1, of).Select(i => new Shard(i, of)).Where(s => parts.All(p => p.Header.Shard != s)));
        }

        string more = unfinished.Count > Named ? ", ..." : "";
        return unfinished.Count == 0 ? "the parts that were not given" : $"part {string.Join(", ", unfinished.OrderBy(s => s.Number).Take(Named))}{more}";
    }
}
