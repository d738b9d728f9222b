using System.Text;
using LureSim.Model.Strike;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cover;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Cover;

/// <summary>The set of files of three covers.</summary>
public static class CoverFiles
{
    /// <summary>Writes figures, table, effective scenario and picture, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Three covers.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CoverReport report, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        folder.Add("cover.json", stream => CoverJson.Write(stream, report, notes));
        folder.Add("cover.csv", stream => DoubtFiles.Lines(stream, Lines(report)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [CoverChart.Build(report, notes.Shown)], plots);
        }

        folder.Commit();
    }

    private static IEnumerable<string> Lines(CoverReport report) =>
    [
        string.Join(',', (string[])["cover", "verdict", "first_to_give", .. CoverFigures.All.Select(f => f.Key)]),
        .. report.Cases.Select(c => CsvLine.Join(
            [CoverNames.Key(c.Kind), CoverNames.Key(c.Verdict), StrikeFigures.Name(c.Own.Strike.Summary.FirstToGive.Place), .. CoverFigures.All.Select(f => CsvLine.Number(f.Of(c)))])),
    ];
}
