using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Cadence;

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
        using (var json = new Utf8JsonWriter(stream, SummaryJson.Layout))
        {
            json.WriteStartObject();
            json.WriteString("title", result.Setup.Title);
            WriteFigures(json, result);
            WritePlan(json, result.Plan);
            json.WriteNumber("runs", result.Points.Sum(p => p.Outcomes.Count));
            SummaryJson.WriteList(json, "warnings", result.Failures is null ? notes.Warnings : [result.Failures, .. notes.Warnings]);
            SummaryJson.WriteList(json, "guesses", notes.Guesses);
            if (doubt is not null)
            {
                DoubtJson.Write(json, doubt.Report, [.. doubt.Headlines.Select(h => h.Key)]);
            }

            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    internal static void WriteFigures(Utf8JsonWriter json, CadenceResult result)
    {
        json.WriteStartArray("windows");
        foreach (CadenceWindow window in result.Windows)
        {
            WriteWindow(json, window);
        }

        json.WriteEndArray();
        RhythmPoint? best = result.BestPoint, widest = result.Widest, regular = result.MostRegular, narrow = result.NarrowestAboveBest;
        Number(json, "best_per_s", best?.PerS);
        json.WriteBoolean("best_has_room", result.Best?.HasRoom ?? false);
        Number(json, "best_glide_m", best?.Median(o => o.GlideM));
        Number(json, "best_swing_deg", best?.Median(o => o.SwingDeg));
        Number(json, "best_regularity", best?.Median(o => o.Regularity));
        Number(json, "best_pull_reach", best?.Median(o => o.PullReach));
        Number(json, "best_wrist_torque_rms_Nm", best?.Median(o => o.WristRmsNm));
        Number(json, "best_nose_down_load_N", best?.Median(o => o.NoseDownN));
        Number(json, "best_nose_dip_m", best?.Median(o => o.NoseDipM));
        Number(json, "widest_glide_m", widest?.Median(o => o.GlideM));
        Number(json, "widest_per_s", widest?.PerS);
        Number(json, "narrowest_glide_above_best_m", narrow?.Median(o => o.GlideM));
        Number(json, "narrowest_above_best_per_s", narrow?.PerS);
        Number(json, "most_regular", regular?.Median(o => o.Regularity));
        Number(json, "most_regular_per_s", regular?.PerS);
        Number(json, "sustainable_to_per_s", result.Wrist.Likely.ToPerS);
        Number(json, "sustainable_to_low_per_s", result.Wrist.Weak.ToPerS);
        Number(json, "sustainable_to_high_per_s", result.Wrist.Strong.ToPerS);
        json.WriteBoolean("sustainable_to_is_range_end", result.Wrist.Likely.ToIsRangeEnd);
        Number(json, "lock_share", result.LockShare);
        Number(json, "tip_frequency_Hz", result.TipFrequencyHz);
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

    private static string? Name(WalkPattern? pattern) => pattern is WalkPattern p ? SummaryKeys.Name(p) : null;

    private static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is double v && double.IsFinite(v))
        {
            json.WriteNumber(key, v);
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
