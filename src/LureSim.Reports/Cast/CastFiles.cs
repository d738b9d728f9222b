using System.Text;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Cast;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cast;

/// <summary>The set of files of one cast.</summary>
public static class CastFiles
{
    /// <summary>Writes figures, series, effective scenario and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Cast.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CastReport report, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("cast.json", stream => CastJson.Write(stream, report, notes, doubt));
        folder.Add("cast.csv", stream => SeriesCsv.Write(stream, CastChannels.OverTime(report.Cast)));
        folder.Add("cast_release.csv", stream => SeriesCsv.Write(stream, CastChannels.OverRelease(report.Cast)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, CastCharts.All(report, notes.Shown), plots);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots, notes.Shown);
        }

        folder.Commit();
    }
}
