using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve.Moving;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Retrieve;

/// <summary>The set of files of one retrieve.</summary>
public static class RetrieveFiles
{
    /// <summary>Writes summary, channels, effective scenario and pictures, all or none; throws
    /// <see cref="OutputException"/> when the folder cannot be written.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Retrieve.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(
        OutputFolder folder, RetrieveResult result, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        folder.Add("summary.json", stream => SummaryJson.Write(stream, result, notes, doubt));
        folder.Add("series.csv", stream => SeriesCsv.Write(stream, result.Series));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, RetrieveCharts.All(result, notes.Shown), plots);
            AddMovie(folder, result, plots, notes.Shown);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots, notes.Shown);
        }

        folder.Commit();
    }

    private static void AddMovie(OutputFolder folder, RetrieveResult result, PlotFormat plots, Shown shown)
    {
        if (plots is PlotFormat.Svg or PlotFormat.Both && WalkMovie.Svg(result, shown) is byte[] movie)
        {
            folder.Add(WalkMovie.FileName, movie);
        }
    }
}
