using System.Text.Json;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Json;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cast;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Cast;

/// <summary>A cast as JSON: flat snake-case keys with the unit at the end.</summary>
public static class CastJson
{
    /// <summary>Writes the cast.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Cast.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(Stream stream, CastReport report, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.Cast.Setup.Title);
            json.WriteString("style", CastKeys.Style.Choices.First(c => c.Value == (int)report.Cast.Setup.Hands.Style).Name);
            json.WriteNumber("effort", report.Cast.Setup.Hands.Effort);
            JsonText.Figures(json, CastFigures.All, report.Cast);
            JsonText.List(json, "remarks", CastFigures.Names(report.Cast.Remarks));
            WriteBrakes(json, report);
            JsonText.Notes(json, notes, doubt);
        });
    }

    private static void WriteBrakes(Utf8JsonWriter json, CastReport report)
    {
        json.WriteStartArray("brakes");
        foreach (BrakePoint b in report.Brakes)
        {
            json.WriteStartObject();
            json.WriteNumber("strength", b.Strength);
            json.WriteNumber("distance_mean_m", b.DistanceMeanM);
            json.WriteNumber("loops_mean", b.LoopsMean);
            json.WriteNumber("tangle_share", b.TangleShare);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (report.LeastBrake is double least)
        {
            json.WriteNumber("least_brake_strength", least);
        }
        else
        {
            json.WriteNull("least_brake_strength");
        }
    }
}
