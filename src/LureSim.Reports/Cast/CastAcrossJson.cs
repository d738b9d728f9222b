using System.Text.Json;
using LureSim.Reports.Retrieve;
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
        using (var json = new Utf8JsonWriter(stream, SummaryJson.Layout))
        {
            json.WriteStartObject();
            json.WriteString("title", result.Title);
            json.WriteString("across", result.KeyTitle);
            json.WriteString("goes_with_it", result.Law);
            json.WriteStartArray("cases");
            for (int i = 0; i < result.Cases.Count; i++)
            {
                WriteCase(json, result, i);
            }

            json.WriteEndArray();
            SummaryJson.WriteList(json, "warnings", notes.Warnings);
            SummaryJson.WriteList(json, "guesses", notes.Guesses);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void WriteCase(Utf8JsonWriter json, CastAcross result, int index)
    {
        CastCase c = result.Cases[index];
        json.WriteStartObject();
        json.WriteString("value", c.Label);
        json.WriteString("failure", c.Failure);
        Number(json, "scatter_m", c.SigmaM);
        Number(json, "guesses_p10_m", c.GuessesM.Low);
        Number(json, "guesses_p90_m", c.GuessesM.High);
        if (result.Step(index) is CastStep step)
        {
            json.WriteString("compared_with", result.Reference(index)!.Label);
            Number(json, "gain_m", step.GainM);
            Number(json, "gain_p10_m", step.GainsM.Low);
            Number(json, "gain_p90_m", step.GainsM.High);
            Number(json, "casts_to_see_it", step.Casts);
            json.WriteString("verdict", CastAcrossCsv.Verdict(step));
            Number(json, "share_of_draws_with_that_verdict", step.SameShare);
        }

        foreach (CastOutput key in c.Cast is null ? [] : CastOutputs.All)
        {
            Number(json, key.Key, key.Value(c.Cast!));
        }

        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
