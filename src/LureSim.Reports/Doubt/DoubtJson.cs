using System.Text.Json;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>A study of doubt as one JSON object.</summary>
public static class DoubtJson
{
    /// <summary>Writes the property <c>doubt</c>: bands of the physics, those of the hands (<c>hands</c>), which guess matters (<c>guesses</c>).</summary>
    /// <param name="json">Receives it, inside an object.</param>
    /// <param name="study">Study.</param>
    public static void Write(Utf8JsonWriter json, DoubtStudy study)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(study);
        json.WriteStartObject("doubt");
        Bands(json, study.Report);
        if (study.Hands is DoubtReport hands)
        {
            json.WriteStartObject("hands");
            Bands(json, hands);
            json.WriteEndObject();
        }

        if (study.Screen is ScreenReport screen)
        {
            Guesses(json, study, screen);
        }

        json.WriteEndObject();
    }

    private static void Bands(Utf8JsonWriter json, DoubtReport report)
    {
        json.WriteNumber("runs", report.Runs);
        json.WriteNumber("failed", report.Failed);
        json.WriteString("failed_reason", report.Failed > 0 ? report.Reason : null);
        json.WriteStartObject("shares");
        foreach ((string name, double share) in report.Shares)
        {
            json.WriteNumber(name, share);
        }

        json.WriteEndObject();
        json.WriteStartObject("bands");
        foreach (Band band in report.Bands.Where(b => b.Count > 0))
        {
            json.WriteStartObject(band.Figure);
            JsonText.Number(json, "given", band.Given);
            json.WriteNumber("p10", band.P10);
            json.WriteNumber("p50", band.P50);
            json.WriteNumber("p90", band.P90);
            json.WriteNumber("runs", band.Count);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Guesses(Utf8JsonWriter json, DoubtStudy study, ScreenReport screen)
    {
        json.WriteStartObject("guesses");
        json.WriteNumber("runs", screen.Runs);
        json.WriteNumber("failed", screen.Failed);
        foreach (HeadlineFigure headline in study.Headlines)
        {
            IReadOnlyList<RankedGuess> ranked = screen.Ranking(headline.Key);
            json.WriteStartObject(headline.Key);
            JsonText.Number(json, "noise", ranked[0].Noise);
            json.WriteStartArray("ranked");
            foreach (RankedGuess guess in ranked.Where(r => r.Effect.Size > 0.0))
            {
                json.WriteStartObject();
                json.WriteString("key", study.Guesses[guess.Index].Key);
                JsonText.Number(json, "low_shift", guess.Effect.LowShift);
                JsonText.Number(json, "high_shift", guess.Effect.HighShift);
                JsonText.Number(json, "mean_effect", guess.Effect.MeanEffect);
                JsonText.Number(json, "effect_spread", guess.Effect.EffectSpread);
                json.WriteBoolean("noise", guess.IsNoise);
                json.WriteBoolean("only_together", guess.OnlyTogether);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }
}
