using System.Text;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
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
        IReadOnlyList<IReadOnlyList<GuessEffect>> effects = doubt.Effects;
        SweepLayout layout = table.Header.Layout;
        string[] guesses = [.. layout.Guessed.Select(g => g[SweepLayout.GuessMark.Length..])];
        folder.Add("guesses.csv", stream => DoubtFiles.Lines(stream, DoubtFiles.GuessLines(guesses, layout.Numbers, effects)));
        string subtitle = $"Mean over {table.Header.Count / layout.Samples} points of {layout.Samples} runs each";
        foreach (HeadlineFigure figure in headlines.Where(h => layout.Numbers.Contains(h.Key)))
        {
            int f = layout.Numbers.TakeWhile(n => n != figure.Key).Count();
            ChartFiles.Add(
                folder, [DoubtChart.Build(figure, subtitle, [.. guesses.Select((g, i) => (g, effects[i][f]))], DoubtReport.ChanceOf(layout.Samples))], plots);
        }
    }
}
