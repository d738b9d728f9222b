using LureSim.Reports.Kit.Json;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Starting;
using LureSim.Studies.Start;

namespace LureSim.Reports.Start;

/// <summary>A scenario that was written, for programs.</summary>
public static class StartJson
{
    /// <summary>Writes it.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="file">Name of the file.</param>
    /// <param name="start">What was written.</param>
    public static void Write(Stream stream, string file, StartResult start)
    {
        ArgumentNullException.ThrowIfNull(start);
        IReadOnlyList<GuessedKey> ranges = start.Scenario.Effective().Guesses;
        JsonText.Object(stream, json =>
        {
            json.WriteString("file", file);
            json.WriteString("title", start.Plan.Title);
            json.WriteString("kind", start.Plan.Kind);
            json.WriteString("scaled_from", start.Plan.LurePart.Path);
            json.WriteNumber("scale", start.Plan.Scale);
            json.WriteNumber("trim_deg", start.Trim.Rest.TrimRad * 180.0 / Math.PI);
            json.WriteStartArray("guessed");
            foreach (StartGuess guess in start.Plan.Guesses)
            {
                GuessedKey? range = ranges.FirstOrDefault(g => g.Key.Path == guess.Key || g.Key == ScenarioSchema.Find(guess.Key)?.Gives);
                json.WriteStartObject();
                json.WriteString("key", guess.Key);
                json.WriteString("value", guess.Value);
                json.WriteString("why", guess.Why);
                JsonText.Number(json, "low_si", range?.Low);
                JsonText.Number(json, "high_si", range?.High);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            JsonText.List(json, "warnings", start.Remarks);
            JsonText.List(json, "next", StartText.Next(file, start));
        });
    }
}
