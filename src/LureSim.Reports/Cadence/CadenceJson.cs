using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cadence;

/// <summary>Rhythms as JSON: flat snake-case keys with the unit at the end; a number that does not exist is null.</summary>
public static class CadenceJson
{
    /// <summary>Writes the summary of one set-up.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Rhythms.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(Stream stream, CadenceResult result, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", result.Setup.Title);
            WriteFigures(json, result);
            WritePlan(json, result.Plan);
            json.WriteNumber("runs", result.Points.Sum(p => p.Outcomes.Count));
            JsonText.Notes(json, notes.After(result.Failures), doubt);

        });
    }

    internal static void WriteFigures(Utf8JsonWriter json, CadenceResult result)
    {
        json.WriteStartArray("windows");
        foreach (CadenceWindow window in result.Windows)
        {
            WriteWindow(json, window);
        }

        json.WriteEndArray();
        JsonText.Figures(json, CadenceFigures.All.Where(f => !f.Key.StartsWith("window", StringComparison.Ordinal)), result);
        json.WriteBoolean("best_has_room", result.Best?.HasRoom ?? false);
        json.WriteBoolean("sustainable_to_is_range_end", result.Wrist.Likely.ToIsRangeEnd);
        WriteRhythms(json, "depends_on_start_per_s", result.Points.Where(p => p.DependsOnStart));
        WriteRhythms(json, "may_hang_on_hand_per_s", result.Points.Where(result.MayHangOnHand));
    }

    internal static void WritePlan(Utf8JsonWriter json, CadencePlan plan)
    {
        json.WriteStartObject("search");
        json.WriteNumber("from_per_s", plan.FromPerS);
        json.WriteNumber("to_per_s", plan.ToPerS);
        json.WriteNumber("starts", plan.Starts);
        json.WriteNumber("edge_bracket_per_s", plan.EdgePerS);
        json.WriteNumber("walks_from_lock_share", plan.LockShare);
        json.WriteNumber("room", plan.Room);
        json.WriteNumber("warm_up_s", plan.Runs.WarmUpS);
        json.WriteNumber("twitches_counted", plan.Runs.Twitches);
        json.WriteNumber("nodes", plan.Runs.Nodes);
        json.WriteNumber("step_s", plan.Runs.StepS);
        json.WriteEndObject();
    }

    private static void WriteRhythms(Utf8JsonWriter json, string key, IEnumerable<RhythmPoint> points)
    {
        json.WriteStartArray(key);
        foreach (RhythmPoint point in points)
        {
            json.WriteNumberValue(point.PerS);
        }

        json.WriteEndArray();
    }

    private static void WriteWindow(Utf8JsonWriter json, CadenceWindow window)
    {
        json.WriteStartObject();
        json.WriteNumber("from_per_s", window.FromPerS);
        json.WriteNumber("to_per_s", window.ToPerS);
        json.WriteBoolean("from_is_range_end", window.FromIsRangeEnd);
        json.WriteBoolean("to_is_range_end", window.ToIsRangeEnd);
        json.WriteString("below", Name(window.Below));
        json.WriteString("above", Name(window.Above));
        json.WriteNumber("lock_share", window.LockShare);
        json.WriteEndObject();
    }

    private static string? Name(WalkPattern? pattern) => pattern is WalkPattern p ? RetrieveFigures.Name(p) : null;
}
