using System.Text;
using System.Text.Json;
using LureSim.Model.Pool;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Pool;

/// <summary>The set of files of a pool test.</summary>
public static class PoolFiles
{
    // Every number of a tow, in the order of the files.
    private static readonly (string Key, Func<TowRow, double> Of)[] TowColumns =
    [
        ("speed_m_s", t => t.SpeedMS), ("sheer_deg", t => t.SheerDeg), ("side_deg", t => t.SideDeg), ("swing_deg", t => t.SwingDeg), ("offset_m", t => t.OffsetM),
        ("trim_deg", t => t.TrimDeg), ("roll_deg", t => t.RollDeg), ("nose_height_m", t => t.NoseHeightM), ("pull_N", t => t.PullN),
    ];

    /// <summary>Writes figures, tables, effective scenario and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, string title, PoolResult pool, string effectiveToml, RunNotes notes, PlotFormat plots, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(pool);
        folder.Add("pool.json", stream => WriteJson(stream, title, pool, notes, doubt));
        folder.Add("pool_tow.csv", stream => DoubtFiles.Lines(stream, TowLines(pool)));
        folder.Add("pool_push.csv", stream => DoubtFiles.Lines(stream, PushLines(pool.Push)));
        folder.Add("pool_swings.csv", stream => DoubtFiles.Lines(stream, SwingLines(pool)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [PoolTowChart.Build(title, pool, notes.Shown), PoolPushChart.Build(title, pool, notes.Shown), PoolSwingChart.Build(title, pool, notes.Shown)], plots);
        }

        if (doubt is not null)
        {
            DoubtFiles.Add(folder, doubt, plots);
        }

        folder.Commit();
    }

    /// <summary>The figures as JSON: flat snake-case keys with the unit at the end, and the tows as a list.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void WriteJson(Stream stream, string title, PoolResult pool, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(pool);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", title);
            json.WriteString("course", PoolFigures.Name(pool.Course));
            json.WriteNumber("rest_trim_deg", pool.RestTrimDeg);
            json.WriteNumber("rest_heel_deg", pool.RestHeelDeg);
            json.WriteStartArray("tow");
            foreach (TowRow row in pool.Tow)
            {
                Tow(json, row);
            }

            json.WriteEndArray();
            JsonText.Figures(json, PoolFigures.All, pool);
            JsonText.Notes(json, notes, doubt);
        });
    }

    private static void Tow(Utf8JsonWriter json, TowRow row)
    {
        json.WriteStartObject();
        foreach ((string key, Func<TowRow, double> of) in TowColumns)
        {
            json.WriteNumber(key, of(row));
        }

        json.WriteString("course", PoolFigures.Name(row.Course));
        json.WriteBoolean("settled", row.IsSettled);
        json.WriteEndObject();
    }

    private static IEnumerable<string> TowLines(PoolResult pool) =>
    [
        string.Join(',', [.. TowColumns.Select(c => c.Key), "course", "settled"]),
        .. pool.Tow.Select(t => CsvLine.Join([.. TowColumns.Select(c => CsvLine.Number(c.Of(t))), PoolFigures.Name(t.Course), t.IsSettled ? "true" : "false"])),
    ];

    private static IEnumerable<string> PushLines(PushResult push) =>
    [
        "time_s,x_m,y_m,heading_deg",
        .. push.TimeS.Select((t, i) => CsvLine.Join(new[] { t, push.XM[i], push.YM[i], push.HeadingDeg[i] }.Select(CsvLine.Number))),
    ];

    private static IEnumerable<string> SwingLines(PoolResult pool)
    {
        yield return "swing,time_s,away,unit";
        foreach ((string name, SwingResult swing, string unit) in ((string, SwingResult, string)[])[("roll", pool.Roll, "deg"), ("heave", pool.Heave, "m"), ("pitch", pool.Pitch, "deg")])
        {
            for (int i = 0; i < swing.Trace.Count; i++)
            {
                yield return CsvLine.Join([name, CsvLine.Number(swing.TimeS[i]), CsvLine.Number(swing.Trace[i]), unit]);
            }
        }
    }
}
