using System.Text;
using System.Text.Json;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cast;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Cast;

/// <summary>The set of files of lures by rod power.</summary>
public static class PowerTableFiles
{
    /// <summary>Writes table, effective scenario and picture, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="table">Lures by rod power.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, PowerTable table, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        ArgumentNullException.ThrowIfNull(table);
        folder.Add("cast_power.json", stream => WriteJson(stream, table, notes));
        folder.Add("cast_power.csv", Encoding.UTF8.GetBytes(Csv(table)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [PowerTableChart.Build(table, notes.Shown)], plots);
        }

        folder.Commit();
    }

    /// <summary>Writes the table as JSON.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="table">Lures by rod power.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void WriteJson(Stream stream, PowerTable table, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", table.Title);
            json.WriteStartArray("lures");
            for (int i = 0; i < table.LureKg.Count; i++)
            {
                WriteLure(json, table, i);
            }

            json.WriteEndArray();
            JsonText.Notes(json, notes);
        });
    }

    private static void WriteLure(Utf8JsonWriter json, PowerTable table, int row)
    {
        json.WriteStartObject();
        json.WriteNumber("lure_kg", table.LureKg[row]);
        json.WriteString("best", table.Best(row) is int best ? RodClass.All[best].Name : null);
        JsonText.List(json, "as_good", [.. table.Good(row).Select(i => RodClass.All[i].Name)]);
        JsonText.List(json, "rated_for_it", [.. RodClass.All.Where(c => c.IsRatedFor(table.LureKg[row])).Select(c => c.Name)]);
        json.WriteStartArray("powers");
        foreach ((RodClass rod, PowerCell cell) in RodClass.All.Zip(table.Cells[row]))
        {
            json.WriteStartObject();
            json.WriteString("power", rod.Name);
            json.WriteNumber("load_N", rod.LoadN);
            JsonText.Number(json, "distance_mean_m", cell.DistanceMeanM);
            JsonText.Number(json, "launch_speed_m_s", cell.LaunchSpeedMS);
            JsonText.Number(json, "rod_bend_share", cell.BendShare);
            json.WriteBoolean("bends_too_far", cell.BendsTooFar);
            json.WriteString("failure", cell.Failure);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Csv(PowerTable table)
    {
        var text = new StringBuilder("lure_kg,power,load_N,distance_mean_m,launch_speed_m_s,rod_bend_share,bends_too_far,failure\n");
        for (int i = 0; i < table.LureKg.Count; i++)
        {
            foreach ((RodClass rod, PowerCell cell) in RodClass.All.Zip(table.Cells[i]))
            {
                text.Append(CsvLine.Join(
                [
                    CsvLine.Number(table.LureKg[i]), rod.Name, CsvLine.Number(rod.LoadN), CsvLine.Number(cell.DistanceMeanM), CsvLine.Number(cell.LaunchSpeedMS), CsvLine.Number(cell.BendShare),
                    cell.BendsTooFar ? "1" : "0", cell.Failure ?? "",
                ])).Append('\n');
            }
        }

        return text.ToString();
    }
}
