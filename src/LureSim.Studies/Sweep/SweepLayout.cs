using System.Globalization;

namespace LureSim.Studies.Sweep;

/// <summary>Columns of a sweep, in the order of its table: <c>index</c>, with doubt <c>point</c> and <c>sample</c>, what varies, what is
/// guessed, <c>status</c>, <c>reason</c>, words and numbers of the result.</summary>
/// <param name="Varied">Columns of what varies.</param>
/// <param name="Guessed">Columns of the guesses, names that start with <see cref="GuessMark"/>.</param>
/// <param name="Words">Results that are words; the first sorts the runs.</param>
/// <param name="Numbers">Results that are numbers.</param>
/// <param name="Samples">Runs per point: 1, or the number of samples of doubt.</param>
public sealed record SweepLayout(
    IReadOnlyList<string> Varied, IReadOnlyList<string> Guessed, IReadOnlyList<string> Words, IReadOnlyList<string> Numbers, int Samples)
{
    /// <summary>Prefix of a column that holds a guess.</summary>
    public const string GuessMark = "guess.";

    /// <summary>True when the guesses are sampled.</summary>
    public bool HasDoubt => Guessed.Count > 0;

    /// <summary>First line of the table.</summary>
    public string Header => CsvLine.Join([.. Counters, .. Varied, .. Guessed, "status", "reason", .. Words, .. Numbers]);

    /// <summary>Counts of the groups, from which <see cref="TryParse"/> and a header make a layout again.</summary>
    public string Counts => string.Create(CultureInfo.InvariantCulture, $"{Varied.Count},{Guessed.Count},{Words.Count},{Numbers.Count},{Samples}");

    private string[] Counters => HasDoubt ? ["index", "point", "sample"] : ["index"];

    /// <summary>Column of the status.</summary>
    public int StatusColumn => Counters.Length + Varied.Count + Guessed.Count;

    /// <summary>Makes a layout from what a journal holds; null when counts and header do not fit.</summary>
    /// <param name="counts"><see cref="Counts"/>.</param>
    /// <param name="header"><see cref="Header"/>.</param>
    public static SweepLayout? TryParse(string counts, string header)
    {
        ArgumentNullException.ThrowIfNull(counts);
        string[] texts = counts.Split(',');
        List<string> names = CsvLine.Split(header);
        int[] n = [.. texts.Select(t => int.TryParse(t, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : -1)];
        if (n.Length != 5 || n[4] < 1 || n[..4].Any(c => c < 0 || c > names.Count))
        {
            return null;
        }

        int start = n[1] > 0 ? 3 : 1, results = start + n[0] + n[1] + 2;
        if (names.Count != results + n[2] + n[3])
        {
            return null;
        }

        var layout = new SweepLayout(
            names.GetRange(start, n[0]), names.GetRange(start + n[0], n[1]), names.GetRange(results, n[2]), names.GetRange(results + n[2], n[3]), n[4]);
        return layout.Header == header && layout.Guessed.All(g => g.StartsWith(GuessMark, StringComparison.Ordinal)) ? layout : null;
    }

    /// <summary>Whether a line of a table has as many cells as there are columns.</summary>
    /// <param name="line">Line as <see cref="Line"/> makes it.</param>
    public bool Fits(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        int due = StatusColumn + 1 + Words.Count + Numbers.Count;
        if (!line.Contains('"', StringComparison.Ordinal))
        {
            return line.AsSpan().Count(',') == due;
        }

        int commas = 0;
        bool quoted = false;
        foreach (char c in line)
        {
            quoted ^= c == '"';
            commas += c == ',' && !quoted ? 1 : 0;
        }

        return commas == due;
    }

    /// <summary>One line of the table.</summary>
    /// <param name="index">Index of the run in the whole list.</param>
    /// <param name="row">What the run gave.</param>
    /// <exception cref="ArgumentException">The row does not fit the columns.</exception>
    public string Line(int index, SweepRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        bool empty = row.Status != SweepRow.Done;
        if (row.Inputs.Count != Varied.Count + Guessed.Count || (!empty && (row.Words.Count != Words.Count || row.Numbers.Count != Numbers.Count)))
        {
            throw new ArgumentException("the row does not fit the columns", nameof(row));
        }

        IEnumerable<string> results = empty
            ? Enumerable.Repeat("", Words.Count + Numbers.Count)
            : row.Words.Concat(row.Numbers.Select(CsvLine.Number));
        int[] counters = HasDoubt ? [index, index / Samples, index % Samples] : [index];
        return CsvLine.Join([.. counters.Select(c => c.ToString(CultureInfo.InvariantCulture)), .. row.Inputs, row.Status, row.Reason, .. results]);
    }
}

/// <summary>What one run of a sweep gave.</summary>
/// <param name="Inputs">Cells of what varies and of the guesses.</param>
/// <param name="Status"><see cref="Done"/>, <see cref="Failed"/> or <see cref="Refused"/>.</param>
/// <param name="Reason">Why there is no result, else empty.</param>
/// <param name="Words">Results that are words; none without a result.</param>
/// <param name="Numbers">Results that are numbers; none without a result.</param>
public sealed record SweepRow(
    IReadOnlyList<string> Inputs, string Status, string Reason, IReadOnlyList<string> Words, IReadOnlyList<double> Numbers)
{
    /// <summary>The run has a result.</summary>
    public const string Done = "done";

    /// <summary>The model could not finish.</summary>
    public const string Failed = "failed";

    /// <summary>The values make no scenario.</summary>
    public const string Refused = "refused";
}
