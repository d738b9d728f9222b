using System.Globalization;
using System.Text;
using LureSim.Model.Trim;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Trim;
using nietras.SeparatedValues;

namespace LureSim.Reports.Trim;

/// <summary>The set of files of a lure at rest.</summary>
public static class TrimFiles
{
    /// <summary>Writes figures, drafts, effective scenario, pictures and templates, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, string title, TrimResult trim, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        folder.Add("trim.json", stream => WriteJson(stream, title, trim, notes));
        folder.Add("trim_drafts.csv", Encoding.UTF8.GetBytes(Drafts(trim)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [TrimView.Build(title, trim, notes.Shown), TrimRighting.Build(title, trim, notes.Shown)], plots);
            TemplateFiles.Add(folder, title, trim, plots, notes.Shown);
        }

        folder.Commit();
    }

    /// <summary>The figures as JSON: flat snake-case keys with the unit at the end.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void WriteJson(Stream stream, string title, TrimResult trim, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(trim);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", title);
            json.WriteString("attitude", TrimSource.Attitude(trim));
            JsonText.Figures(json, TrimFigures.All, trim);
            json.WriteBoolean("stands_up", trim.IsUpright);
            json.WriteBoolean("within_walk", trim.IsWithinWalk);
            JsonText.Notes(json, notes);
        });
    }

    private static string Drafts(TrimResult trim)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture }).To(text))
        {
            for (int i = 0; i < trim.Rest.StationXM.Count; i++)
            {
                using SepWriter.Row row = writer.NewRow();
                row["station_x_m"].Format(trim.Rest.StationXM[i]);
                row["draft_m"].Format(trim.Rest.StationDraftM[i]);
            }
        }

        return text.ToString();
    }
}
