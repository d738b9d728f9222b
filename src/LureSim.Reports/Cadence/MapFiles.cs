using System.Globalization;
using System.Text;
using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Maps;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cadence;

/// <summary>Files of a map.</summary>
public static class MapFiles
{
    /// <summary>Writes summary, samples, effective scenario and a picture; all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Map.</param>
    /// <param name="effectiveToml">The scenario that it varies, with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, MapResult result, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("summary.json", stream => WriteJson(stream, result, notes));
        folder.Add("map.csv", stream => WriteCsv(stream, result));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [CadenceMap.Build(result, MapText.Headline(result, notes.Shown), notes.Shown)], plots);
        }

        folder.Commit();
    }

    /// <summary>Writes the summary.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Map.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void WriteJson(Stream stream, MapResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", result.Title);
            JsonText.List(json, "map", [result.XKey.Name, result.YKey.Name]);
            WriteShares(json, result);
            WriteWidest(json, result);
            json.WriteNumber("points", result.Grid.Samples.Count);
            json.WriteNumber("lattice_points", result.Plan.Width * result.Plan.Height);
            json.WriteNumber("starts", result.Plan.Starts);
            JsonText.Notes(json, notes);
        });
    }

    /// <summary>Writes one row per sampled point.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Map.</param>
    public static void WriteCsv(Stream stream, MapResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        using var text = new StreamWriter(stream, leaveOpen: true) { NewLine = "\n" };
        using SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text);
        foreach (MapSample sample in result.Grid.Samples.Where(s => s.Point is not null))
        {
            using SepWriter.Row row = writer.NewRow();
            row[Column(result.XKey.Title)].Set(result.X[sample.I].ToString("G9", CultureInfo.InvariantCulture));
            row[Column(result.YKey.Title)].Set(result.Y[sample.J].ToString("G9", CultureInfo.InvariantCulture));
            CadenceCsv.WritePoint(row, sample.Point!);
        }
    }

    private static string Column(string title) => title.Replace(", ", "_", StringComparison.Ordinal);

    private static void WriteShares(Utf8JsonWriter json, MapResult result)
    {
        json.WriteStartObject("share_of_area");
        foreach (WalkPattern pattern in Enum.GetValues<WalkPattern>())
        {
            json.WriteNumber(RetrieveFigures.Name(pattern), result.Share(pattern));
        }

        json.WriteEndObject();
    }

    private static void WriteWidest(Utf8JsonWriter json, MapResult result)
    {
        MapSample? widest = result.Widest;
        if (widest is null)
        {
            json.WriteNull("widest_glide_m");
            return;
        }

        json.WriteNumber("widest_glide_m", widest.Point!.Median(o => o.GlideWidthM));
        json.WriteNumber("widest_at_x", result.X[widest.I]);
        json.WriteNumber("widest_at_y", result.Y[widest.J]);
    }
}
