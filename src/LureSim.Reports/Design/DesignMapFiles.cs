using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>A map for people and as files.</summary>
public static class DesignMapFiles
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Writes cells, summary, effective scenario and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, string title, DesignMap map, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("design_map.json", stream => WriteJson(stream, title, map, notes));
        folder.Add("design_map.csv", Encoding.UTF8.GetBytes(DesignCsv.Map(map)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, DesignCharts.Map(title, map, notes.Shown), plots);
        }

        folder.Commit();
    }

    /// <summary>The summary as JSON; cells are in the CSV.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void WriteJson(Stream stream, string title, DesignMap map, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(map);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", title);
            json.WriteString("column_axis", map.Task.Columns.Name);
            json.WriteString("row_axis", map.Task.Rows.Name);
            json.WriteNumber("columns", map.Columns.Count);
            json.WriteNumber("rows", map.Rows.Count);
            foreach (MapAxis axis in (MapAxis[])[map.Task.Columns, map.Task.Rows])
            {
                json.WriteNumber("from_" + axis.Key, axis.From);
                json.WriteNumber("to_" + axis.Key, axis.To);
                json.WriteNumber("own_" + axis.Key, axis.Own(map.Lure));
            }

            foreach (FloatWord word in Enum.GetValues<FloatWord>())
            {
                json.WriteNumber($"cells_{DesignWords.Fate(word).Replace(' ', '_')}", map.Cells.Count(c => c.Word == word));
            }

            json.WriteNumber("cells_come_straight", map.Cells.Count(ComesStraight));
            json.WriteNumber("window_cells", map.Windows?.Cells.Count ?? 0);
            JsonText.Notes(json, notes);
        });
    }

    /// <summary>What the map shows, in a few sentences.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Text(string title, DesignMap map, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(notes);
        var units = new DesignUnits(notes.Shown);
        var text = new StringBuilder();
        text.Append(title).Append("\n\n");
        MapAxisWords columns = new(map, map.Task.Columns, notes.Shown), rows = new(map, map.Task.Rows, notes.Shown);
        string keeps = Keeps(map);
        text.AppendWrapped($"{map.Columns.Count} x {map.Rows.Count} lures. Columns: {columns.Range}. Rows: {rows.Range}.{(keeps.Length == 0 ? "" : $" {Trade.Capital(keeps)}.")}");
        MapCell[] afloat = [.. map.Cells.Where(c => c.Word == FloatWord.Floats)];
        if (afloat.Length > 0)
        {
            text.AppendWrapped(
                $"Those that stand up float at {Trade.Fixed(afloat.Min(c => c.TrimRad) / Degree, 1)} to {Trade.Fixed(afloat.Max(c => c.TrimRad) / Degree, 1)} deg with "
                + $"{units.LengthText(afloat.Min(c => c.FreeboardM))} to {units.LengthText(afloat.Max(c => c.FreeboardM))} of freeboard amidships; {Percent(afloat.Count(ComesStraight), afloat.Length)} of them come straight on a tight line.");
        }

        foreach (FloatWord word in (FloatWord[])[FloatWord.LiesOver, FloatWord.Sinks, FloatWord.Refused])
        {
            int count = map.Cells.Count(c => c.Word == word);
            string? reason = map.Cells.FirstOrDefault(c => c.Word == word)?.Reason;
            if (count > 0)
            {
                text.AppendWrapped($"{count} of {map.Cells.Count}: {DesignWords.Fate(word)}{(reason is null ? "" : $" (the first: {reason})")}.");
            }
        }

        if (map.Windows is { } windows)
        {
            WindowCell[] walks = [.. windows.Cells.Where(w => w.WalkShare > 0.0)];
            text.AppendWrapped(
                $"Rhythms of {string.Join(", ", windows.RhythmsPerS.Select(r => Trade.Fixed(r, 2)))} /s were tried, one start each, at {Every(windows.ColumnStep, "column")} and {Every(windows.RowStep, "row")}: {windows.Cells.Count} lures, of "
                + $"which {walks.Length} walk at one of them or more. An edge is known to the next rhythm tried, a border of the map to the next lure tried.");
        }

        text.Append('\n');
        text.AppendNotes(notes, "design_map.json");
        return text.ToString();
    }

    // The critical side force is the least that keeps the tow: at a margin of 0 it is kept.
    private static bool ComesStraight(MapCell cell) => cell.SheddingMargin >= 0.0;

    /// <summary>What of the mass stays on a map, in words; empty where nothing on it has to do with mass.</summary>
    /// <param name="map">Map.</param>
    internal static string Keeps(DesignMap map)
    {
        MapTask task = map.Task;
        bool byMaterial = map.Lure.Build.DensityKgM3 is not null;
        return task.Varies(ChangeKind.BallastMass) ? task.Keeps == KeptMass.Total ? "the total mass kept" : "the body kept"
            : task.Varies(ChangeKind.Length) || task.Varies(ChangeKind.Section) ? byMaterial ? "the mass by the material" : "the mass kept" : "";
    }

    private static string Every(int step, string what) => step switch
    {
        1 => $"every {what}",
        2 => $"every 2nd {what}",
        3 => $"every 3rd {what}",
        _ => $"every {step}th {what}",
    };

    private static string Percent(int part, int whole) => $"{Trade.Fixed(100.0 * part / whole, 0)} %";
}
