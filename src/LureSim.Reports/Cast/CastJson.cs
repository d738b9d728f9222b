using System.Text.Json;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Json;
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
            JsonText.Figures(json, CastFigures.All, report.Cast);
            JsonText.List(json, "remarks", CastFigures.Names(report.Cast.Remarks));
            WriteBrake(json, report.Brake);
            JsonText.Notes(json, notes, doubt);
        });
    }

    private static void WriteBrake(Utf8JsonWriter json, LeastBrake? brake)
    {
        if (brake is null)
        {
            json.WriteNull("least_brake");
            return;
        }

        json.WriteStartObject("least_brake");
        json.WriteNumber("magnetic_Nms", brake.MagneticNms);
        json.WriteNumber("distance_m", brake.DistanceM);
        json.WriteNumber("unbraked_distance_m", brake.UnbrakedDistanceM);
        json.WriteNumber("unbraked_loops", brake.UnbrakedLoops);
        json.WriteEndObject();
    }
}
