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
        IReadOnlyList<IReadOnlyList<GuessEffect>> effects = doubt.Effects;
        SweepLayout layout = table.Header.Layout;
        string[] guesses = [.. layout.Guessed.Select(g => g[SweepLayout.GuessMark.Length..])];
        folder.Add("guesses.csv", stream => DoubtFiles.Lines(stream, DoubtFiles.GuessLines(guesses, layout.Numbers, effects)));
        string subtitle = $"Mean over {table.Header.Count / layout.Samples} points of {layout.Samples} runs each";
        foreach (HeadlineFigure figure in headlines)
        {
            int f = layout.Numbers.TakeWhile(n => n != figure.Key).Count();
            ChartFiles.Add(
                folder, [DoubtChart.Build(figure, subtitle, [.. guesses.Select((g, i) => (g, effects[i][f]))], DoubtReport.ChanceOf(layout.Samples))], plots);
        }
    }
}
