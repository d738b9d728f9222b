using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>The set of files of a comparison of casts.</summary>
public static class CastAcrossFiles
{
    /// <summary>Writes tables, effective scenario and picture, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Casts of several set-ups.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CastAcross result, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("cast_across.json", stream => CastAcrossJson.Write(stream, result, notes));
        folder.Add("cast_across.csv", Encoding.UTF8.GetBytes(CastAcrossCsv.Cases(result)));
        folder.Add("cast_across_pairs.csv", Encoding.UTF8.GetBytes(CastAcrossCsv.Pairs(result)));
        if (result.Cases[0].Draws.Count > 0)
        {
            folder.Add("cast_across_draws.csv", Encoding.UTF8.GetBytes(CastAcrossCsv.Draws(result)));
        }

        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None && result.Cases.Any(c => c.Cast is not null))
        {
            ChartFiles.Add(folder, [CastAcrossChart.Build(result, notes.Shown)], plots);
        }

        folder.Commit();
    }
}
