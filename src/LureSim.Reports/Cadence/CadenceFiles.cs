using System.Text;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cadence;

/// <summary>The sets of files of rhythm studies.</summary>
public static class CadenceFiles
{
    /// <summary>Writes summary, table, effective scenario and picture of one set-up, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Rhythms.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CadenceResult result, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("summary.json", stream => CadenceJson.Write(stream, result, notes, doubt));
        folder.Add("cadence.csv", stream => CadenceCsv.Write(stream, [], [([], result)]));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [CadenceChart.Build(result, notes.Shown)], plots);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots, notes.Shown);
        }

        folder.Commit();
    }

    /// <summary>Writes summary, table, effective scenario and pictures of many set-ups, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="effectiveToml">The scenario that they vary, with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, AcrossResult result, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("summary.json", stream => AcrossJson.Write(stream, result, notes));
        folder.Add("cadence.csv", stream => CadenceCsv.Write(stream, [.. result.Keys.Select(k => k.Name)], Rows(result)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None && result.Cases.Any(c => c.Result is not null))
        {
            Chart?[] charts = [AcrossWindows.Build(result, notes.Shown), AcrossGlide.Build(result, notes.Shown), AcrossTrend.Build(result, notes.Shown)];
            ChartFiles.Add(folder, [.. charts.OfType<Chart>()], plots);
        }

        folder.Commit();
    }

    private static IEnumerable<(IReadOnlyList<string> Values, CadenceResult Result)> Rows(AcrossResult result)
    {
        foreach (AcrossCase setUp in result.Cases)
        {
            if (setUp.Result is not null)
            {
                yield return ([.. setUp.Values.Select(v => v.Label)], setUp.Result);
            }
        }
    }
}
