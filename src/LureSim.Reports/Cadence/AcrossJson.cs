using System.Text.Json;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Across;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Cadence;

/// <summary>Rhythms of many set-ups as JSON: one object per set-up with the keys of <see cref="CadenceJson"/>.</summary>
public static class AcrossJson
{
    /// <summary>Writes the summary.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void Write(Stream stream, AcrossResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", result.Title);
            JsonText.List(json, "across", [.. result.Keys.Select(k => k.Name)]);
            json.WriteStartArray("cases");
            foreach (AcrossCase setUp in result.Cases)
            {
                WriteCase(json, result.Keys, setUp);
            }

            json.WriteEndArray();
            if (result.Cases.Select(c => c.Result).OfType<CadenceResult>().FirstOrDefault() is CadenceResult any)
            {
                CadenceJson.WritePlan(json, any.Plan);
            }

            JsonText.Notes(json, notes);
        });
    }

    private static void WriteCase(Utf8JsonWriter json, IReadOnlyList<AcrossKey> keys, AcrossCase setUp)
    {
        json.WriteStartObject();
        json.WriteStartObject("values");
        for (int k = 0; k < keys.Count; k++)
        {
            json.WriteString(keys[k].Name, setUp.Values[k].Label);
        }

        json.WriteEndObject();
        json.WriteString("failure", setUp.Failure ?? setUp.Result?.Failures);
        if (setUp.Result is CadenceResult result)
        {
            CadenceJson.WriteFigures(json, result);
        }

        json.WriteEndObject();
    }
}
