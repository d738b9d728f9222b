using System.Text;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>The files of a finished sweep.</summary>
public static class SweepFiles
{
    /// <summary>Kind of the set.</summary>
    public const string Kind = "sweep";

    /// <summary>Name of the table.</summary>
    public const string Table = "sweep.csv";

    private const string Scenario = "effective.toml";

    /// <summary>Writes the table and, where guesses were sampled, bands, ranks and pictures; all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="table">Runs.</param>
    /// <param name="headlines">Figures that are drawn.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, SweepTable table, IReadOnlyList<HeadlineFigure> headlines, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(headlines);
        ArgumentNullException.ThrowIfNull(folder);
        folder.Add(Table, table.Write);
        folder.Keep(Scenario);
        if (table.Header.Layout.HasDoubt)
        {
            AddDoubt(folder, table, headlines, plots);
        }

        folder.Commit();
    }

    /// <summary>Begins a sweep: the effective scenario takes the place of an earlier table, which would be another sweep's.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void WriteScenario(OutputFolder folder, string effectiveToml)
    {
        ArgumentNullException.ThrowIfNull(folder);
        folder.Add(Scenario, Encoding.UTF8.GetBytes(effectiveToml));
        folder.Commit();
    }

    private static void AddDoubt(OutputFolder folder, SweepTable table, IReadOnlyList<HeadlineFigure> headlines, PlotFormat plots)
    {
        var doubt = new SweepDoubt(table);
        folder.Add("bands.csv", stream => DoubtFiles.Lines(stream, doubt.BandLines()));
        IReadOnlyList<IReadOnlyList<GuessRank>> ranks = doubt.Ranks;
        SweepLayout layout = table.Header.Layout;
        string[] guesses = [.. layout.Guessed.Select(g => g[SweepLayout.GuessMark.Length..])];
        folder.Add("guesses.csv", stream => DoubtFiles.Lines(stream, RankLines(guesses, layout.Numbers, ranks)));
        string subtitle = $"Mean over {table.Header.Count / layout.Samples} points of {layout.Samples} runs each";
        foreach (HeadlineFigure figure in headlines.Where(h => layout.Numbers.Contains(h.Key)))
        {
            int f = layout.Numbers.TakeWhile(n => n != figure.Key).Count();
            ChartFiles.Add(
                folder, [RankChart.Build(figure, subtitle, [.. guesses.Select((g, i) => (Words(g), ranks[i][f]))], GuessRank.ByChance(layout.Samples))], plots);
        }
    }

    // A column of a guess is its key with the unit at the end.
    private static string Words(string column) => ScenarioSchema.Keys.FirstOrDefault(k => ColumnUnit.Append(k.Path, k.Kind) == column)?.Words ?? column;

    private static IEnumerable<string> RankLines(string[] guesses, IReadOnlyList<string> figures, IReadOnlyList<IReadOnlyList<GuessRank>> ranks)
    {
        yield return "guess,figure,rank_correlation,weight,low_shift,high_shift";
        for (int g = 0; g < guesses.Length; g++)
        {
            for (int f = 0; f < figures.Count; f++)
            {
                GuessRank r = ranks[g][f];
                yield return CsvLine.Join([guesses[g], figures[f], .. new[] { r.Rho, r.Weight, r.LowShift, r.HighShift }.Select(CsvLine.Number)]);
            }
        }
    }
}
