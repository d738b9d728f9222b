using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Measured;

/// <summary>Values of a row or a test by word, SI.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Run">Which run of its test, from 1.</param>
/// <param name="Values">Values; gaps are missing.</param>
public sealed record FitRow(string Place, int Run, IReadOnlyDictionary<FitWord, double> Values)
{
    /// <summary>A value, or null.</summary>
    /// <param name="word">Which.</param>
    public double? Of(FitWord word) => Values.TryGetValue(word, out double si) ? si : null;
}

/// <summary>One test as somebody wrote it down.</summary>
/// <param name="Kind">What was done.</param>
/// <param name="Place">Where it begins.</param>
/// <param name="Settings">What holds for all of its rows, SI; errors said before the first test are in it.</param>
/// <param name="Rows">Its rows.</param>
public sealed record FitBlock(FitKind Kind, string Place, IReadOnlyDictionary<FitWord, double> Settings, IReadOnlyList<FitRow> Rows)
{
    /// <summary>Whether the hooks were on; on unless it is said.</summary>
    public bool HooksOn => !Settings.TryGetValue(FitWord.Hooks, out double on) || on != 0.0;

    /// <summary>A value of a row, or of the test where the row has none; null where neither has.</summary>
    /// <param name="row">Row.</param>
    /// <param name="word">Which.</param>
    public double? Of(FitRow row, FitWord word)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Of(word) ?? Of(word);
    }

    /// <summary>A value of the test, or null.</summary>
    /// <param name="word">Which.</param>
    public double? Of(FitWord word) => Settings.TryGetValue(word, out double si) ? si : null;
}

/// <summary>Measurements of a lure as somebody wrote them down.</summary>
/// <param name="Title">What they are called: what the file says, or its name.</param>
/// <param name="Scenario">Scenario file that holds the lure.</param>
/// <param name="MassKg">Mass with hooks, kg; null where it was not weighed.</param>
/// <param name="Blocks">Tests.</param>
/// <param name="Units">Units that it is written in.</param>
public sealed record FitFile(string Title, string Scenario, double? MassKg, IReadOnlyList<FitBlock> Blocks, UnitFamily Units)
{
    private const int MostRows = 20000;

    /// <summary>Reads a CSV file of tests: lines <c>what, value</c> and rows under <c>test, tow</c>, <c>test, coast</c> and so on.</summary>
    /// <param name="path">File.</param>
    /// <param name="scenario">Scenario file to use, whatever the file says; or null.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>Null where there are faults.</returns>
    public static FitFile? Read(string path, string? scenario, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        if (FileText.TryRead(path, out string text) is string failure)
        {
            faults.Add(new(path, "", failure));
            return null;
        }

        int before = faults.Count;
        (string Line, int Number)[] lines = CsvCells.Lines(text);
        char mark = CsvCells.MarkOf(lines.Select(l => l.Line));
        if (lines.Length > MostRows)
        {
            faults.Add(new(path, "", FormattableString.Invariant($"{lines.Length} lines; at most {MostRows} are read: take every second picture of the film")));
            return null;
        }

        var reader = new FitReader(path, faults);
        foreach ((string line, int number) in lines)
        {
            reader.Read(CsvCells.Split(line, mark), number);
        }

        FitFile? file = reader.Finish(scenario);
        return faults.Count > before ? null : file;
    }
}
