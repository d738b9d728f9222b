using System.Text.Json;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>A comparison of casts as JSON.</summary>
public static class CastAcrossJson
{
    /// <summary>Writes the comparison.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Casts of several set-ups.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void Write(Stream stream, CastAcross result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", result.Title);
            json.WriteString("across", result.KeyTitle);
            json.WriteString("goes_with_it", result.Law);
            json.WriteStartArray("cases");
            for (int i = 0; i < result.Cases.Count; i++)
            {
                WriteCase(json, result, i);
            }

            json.WriteEndArray();
            JsonText.Notes(json, notes);
        });
    }

    private static void WriteCase(Utf8JsonWriter json, CastAcross result, int index)
    {
        CastCase c = result.Cases[index];
        json.WriteStartObject();
        json.WriteString("value", c.Label);
        json.WriteString("failure", c.Failure);
        JsonText.Number(json, "scatter_m", c.SigmaM);
        JsonText.Number(json, "guesses_p10_m", c.GuessesM.Low);
        JsonText.Number(json, "guesses_p90_m", c.GuessesM.High);
        if (result.Step(index) is CastStep step)
        {
            json.WriteString("compared_with", result.Reference(index)!.Label);
            JsonText.Number(json, "gain_m", step.GainM);
            JsonText.Number(json, "gain_p10_m", step.GainsM.Low);
            JsonText.Number(json, "gain_p90_m", step.GainsM.High);
            JsonText.Number(json, "casts_to_see_it", step.Casts);
            json.WriteString("verdict", CastAcrossCsv.Verdict(step));
            JsonText.Number(json, "share_of_draws_with_that_verdict", step.SameShare);
        }

        if (c.Cast is CastResult cast)
        {
            JsonText.Figures(json, CastFigures.All, cast);
        }

        json.WriteEndObject();
    }
}
