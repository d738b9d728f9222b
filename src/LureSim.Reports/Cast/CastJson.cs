using System.Text.Json;
using LureSim.Model.Cast;
using LureSim.Reports.Doubt;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Cast;

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
        using (var json = new Utf8JsonWriter(stream, SummaryJson.Layout))
        {
            json.WriteStartObject();
            json.WriteString("title", report.Cast.Setup.Title);
            foreach (CastOutput key in CastOutputs.All)
            {
                json.WriteNumber(key.Key, key.Value(report.Cast));
            }

            SummaryJson.WriteList(json, "remarks", CastOutputs.Names(report.Cast.Remarks));
            WriteBrake(json, report.Brake);
            SummaryJson.WriteList(json, "warnings", notes.Warnings);
            SummaryJson.WriteList(json, "guesses", notes.Guesses);
            if (doubt is not null)
            {
                DoubtJson.Write(json, doubt.Report, [.. doubt.Headlines.Select(h => h.Key)]);
            }

            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
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
