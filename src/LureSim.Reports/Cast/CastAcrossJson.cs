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
            json.WriteString("reference", result.Reference.Label);
            json.WriteString("reference_is", CastAcrossWords.Reference(result));
            json.WriteString("share_is", CastAcrossWords.Rule);
            json.WriteStartArray("cases");
            for (int i = 0; i < result.Cases.Count; i++)
            {
                WriteCase(json, result, i);
            }

            json.WriteEndArray();
            WritePairs(json, result);
            JsonText.Notes(json, notes);
        });
    }

    private static void WriteCase(Utf8JsonWriter json, CastAcross result, int index)
    {
        CastCase c = result.Cases[index];
        json.WriteStartObject();
        json.WriteString("value", c.Label);
        json.WriteString("failure", c.Failure);
        json.WriteNumber("draws", c.Draws.Count);
        json.WriteNumber("failed_draws", c.FailedDraws);
        JsonText.Number(json, "mean_m", result.MeanM(index));
        JsonText.Number(json, "scatter_m", c.ScatterM);
        JsonText.Number(json, "guesses_p10_m", c.GuessesM.Low);
        JsonText.Number(json, "guesses_p90_m", c.GuessesM.High);
        if (result.Against(index) is CastPair pair)
        {
            json.WriteString("compared_with", pair.From);
            JsonText.Number(json, "gain_m", pair.GainM);
            JsonText.Number(json, "gain_p10_m", pair.GainsM.Low);
            JsonText.Number(json, "gain_p90_m", pair.GainsM.High);
            JsonText.Number(json, "casts_to_see_it", pair.Casts);
            json.WriteString("verdict", CastAcrossWords.Verdict(pair.Verdict));
            JsonText.Number(json, "share", pair.Share);
        }

        // Apart, since these are of one run with every guess as it stands: their differences are not the gains.
        if (c.Cast is CastResult cast)
        {
            json.WriteStartObject("as_it_stands");
            JsonText.Figures(json, CastFigures.All, cast);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WritePairs(Utf8JsonWriter json, CastAcross result)
    {
        json.WriteStartArray("pairs");
        foreach (CastPair pair in result.Pairs())
        {
            json.WriteStartObject();
            json.WriteString("a", pair.From);
            json.WriteString("b", pair.To);
            JsonText.Number(json, "gain_m", pair.GainM);
            JsonText.Number(json, "gain_p10_m", pair.GainsM.Low);
            JsonText.Number(json, "gain_p90_m", pair.GainsM.High);
            json.WriteString("verdict", CastAcrossWords.Verdict(pair.Verdict));
            JsonText.Number(json, "share", pair.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
