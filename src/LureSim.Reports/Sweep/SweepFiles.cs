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
    /// <summary>Name of the table.</summary>
    public const string Table = "sweep.csv";

    /// <summary>Writes the table and, where guesses were sampled, bands, ranks and pictures; all or none.</summary>
    /// <param name="path">Folder, created when missing.</param>
    /// <param name="table">Runs.</param>
    /// <param name="headlines">Figures that are drawn.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">The folder cannot be written.</exception>
    public static void Write(string path, SweepTable table, IReadOnlyList<HeadlineFigure> headlines, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(headlines);
        using var folder = new OutputFolder(path);
        folder.Add(Table, table.Write);
        if (table.Header.Layout.HasDoubt)
        {
            AddDoubt(folder, table, headlines, plots);
        }

        folder.Commit();
    }

    /// <summary>Writes the effective scenario.</summary>
    /// <param name="path">Folder, created when missing.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <exception cref="OutputException">The folder cannot be written.</exception>
    public static void WriteScenario(string path, string effectiveToml)
    {
        using var folder = new OutputFolder(path);
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
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
        foreach (HeadlineFigure figure in headlines)
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
