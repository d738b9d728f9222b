using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>The set of files of a design.</summary>
public static class DesignFiles
{
    /// <summary>Writes figures, tables, the lines to paste, effective scenario, pictures and templates of the lure to build, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Design.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, DesignReport report, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        void Add(string name, string text) => folder.Add(name, Encoding.UTF8.GetBytes(text));
        folder.Add("design.json", stream => DesignJson.Write(stream, report, notes));
        Add("effective.toml", effectiveToml);
        Add("design_hooks.csv", DesignCsv.Hooks(report.Hooks));
        Add("design_changes.csv", DesignCsv.Changes([.. report.Changes.Select(c => (c.Change, c.After))]));
        Add(
            "design_tolerance.csv",
            DesignCsv.Changes([.. (report.Tolerance?.Rows ?? []).SelectMany(r => new[] { (r.Less, r.LessPoint), (r.More, r.MorePoint) }).Where(p => p.Item2 is not null).Select(p => (p.Item1, p.Item2!))]));
        if (report.Answer is not null)
        {
            Add("design_places.csv", DesignCsv.Places(report.Answer));
        }

        if (report.After is DesignPoint after)
        {
            Add("lure-lines.toml", "# Into the table [lure] of the scenario, instead of its own lines.\n" + DesignPaste.Lines(report.Own.Lure, after.Lure, HookSteps(report)));
        }

        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, DesignCharts.All(report, c => DesignWords.Change(c, notes.Shown), notes.Shown), plots);
            if ((report.RestAfter ?? report.Rest) is { } built)
            {
                TemplateFiles.Add(folder, report.Title, built, plots, notes.Shown);
            }
        }

        folder.Commit();
    }

    private static int HookSteps(DesignReport report) => report.Walk?.Candidates is [var best, ..] ? best.Move.HookSteps : 0;
}
