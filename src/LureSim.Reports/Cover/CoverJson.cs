using System.Text.Json;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cover;

namespace LureSim.Reports.Cover;

/// <summary>Three covers as JSON.</summary>
public static class CoverJson
{
    /// <summary>Writes them: snake-case keys with the unit at the end, an object for each cover.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Three covers.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void Write(Stream stream, CoverReport report, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.Title);
            json.WriteStartArray("covers");
            foreach (CoverCase cover in report.Cases)
            {
                Cover(json, cover);
            }

            json.WriteEndArray();
            JsonText.Notes(json, notes);
        });
    }

    private static void Cover(Utf8JsonWriter json, CoverCase cover)
    {
        json.WriteStartObject();
        json.WriteString("cover", CoverNames.Key(cover.Kind));
        json.WriteString("verdict", CoverNames.Key(cover.Verdict));
        json.WriteString("first_to_give", StrikeFigures.Name(cover.Own.Strike.Summary.FirstToGive.Place));
        JsonText.Figures(json, CoverFigures.All, cover);
        json.WriteStartObject("criteria");
        foreach (CoverCheck check in cover.Own.Checks)
        {
            json.WriteString(CoverNames.Key(check.Criterion), CoverNames.Key(check.State));
        }

        json.WriteEndObject();
        json.WriteStartArray("changes");
        foreach (CoverHelp help in cover.Helps)
        {
            Change(json, help);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Change(Utf8JsonWriter json, CoverHelp help)
    {
        json.WriteStartObject();
        json.WriteString("change", CoverNames.Key(help.Change.Kind));
        JsonText.Number(json, ValueKey(help.Change.Kind), help.Change.Kind == ChangeKind.Style ? (double)help.Change.Style : help.Change.Si);
        json.WriteNumber("still_failing", help.After.Count(CoverState.Fails));
        json.WriteStartArray("betters");
        foreach ((CoverCheck before, CoverCheck after) in help.Bettered)
        {
            json.WriteStartObject();
            json.WriteString("criterion", CoverNames.Key(before.Criterion));
            json.WriteString("state_before", CoverNames.Key(before.State));
            json.WriteString("state_after", CoverNames.Key(after.State));
            JsonText.Number(json, "reserve_before", before.Reserve);
            JsonText.Number(json, "reserve_after", after.Reserve);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string ValueKey(ChangeKind kind) => kind switch
    {
        ChangeKind.Drag or ChangeKind.Shut or ChangeKind.Ease => "drag_N",
        ChangeKind.Style => "style",
        ChangeKind.Nearer => "distance_m",
        ChangeKind.Line or ChangeKind.Braid => "label_N",
        ChangeKind.Rod => "bend_load_N",
        _ => "wire_ratio",
    };
}
