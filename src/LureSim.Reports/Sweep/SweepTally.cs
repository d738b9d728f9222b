using System.Globalization;
using System.Text;
using System.Text.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>What a sweep gave, counted.</summary>
public sealed class SweepTally
{
    private readonly SortedDictionary<string, int> _words = new(StringComparer.Ordinal);
    private readonly SweepTable _table;

    /// <summary>Counts the runs of a table.</summary>
    /// <param name="table">Runs.</param>
    public SweepTally(SweepTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        _table = table;
        int status = table.Header.Layout.StatusColumn;
        foreach (string row in table.Rows())
        {
            List<string> cells = CsvLine.Split(row);
            Done += cells[status] == SweepRow.Done ? 1 : 0;
            Failed += cells[status] == SweepRow.Failed ? 1 : 0;
            Refused += cells[status] == SweepRow.Refused ? 1 : 0;
            FirstReason ??= cells[status] == SweepRow.Done ? null : $"run {cells[0]}: {cells[status + 1]}";
            if (cells[status] == SweepRow.Done && table.Header.Layout.Words.Count > 0)
            {
                _words[cells[status + 2]] = _words.GetValueOrDefault(cells[status + 2]) + 1;
            }
        }
    }

    /// <summary>Runs with a result.</summary>
    public int Done { get; }

    /// <summary>Runs that the model could not finish.</summary>
    public int Failed { get; }

    /// <summary>Runs whose values make no scenario.</summary>
    public int Refused { get; }

    /// <summary>Why the first of these has no result, or null.</summary>
    public string? FirstReason { get; }

    /// <summary>For the terminal.</summary>
    public string Text()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Sweep of {_table.Header.Command}: {_table.Header.Count} runs, {Done} with a result");
        text.Append(CultureInfo.InvariantCulture, $", {Failed} that could not finish, {Refused} refused as no valid scenario\n");
        foreach ((string word, int count) in _words.OrderByDescending(w => w.Value))
        {
            text.Append(CultureInfo.InvariantCulture, $"  {word,-12} {count,8}  {Trade.Fixed(100.0 * count / Done, 0),3} %\n");
        }

        if (FirstReason is not null)
        {
            text.AppendWrapped($"First reason: {FirstReason}");
        }

        return text.ToString();
    }

    /// <summary>As JSON.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="file">Where the table is.</param>
    public void Write(Stream stream, string file)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("command", _table.Header.Command);
            json.WriteNumber("runs", _table.Header.Count);
            json.WriteNumber("done", Done);
            json.WriteNumber("failed", Failed);
            json.WriteNumber("refused", Refused);
            json.WriteStartObject(_table.Header.Layout.Words.FirstOrDefault("words"));
            foreach ((string word, int count) in _words)
            {
                json.WriteNumber(word, count);
            }

            json.WriteEndObject();
            json.WriteString("fingerprint", _table.Header.Fingerprint);
            json.WriteString("table", file);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }
}
