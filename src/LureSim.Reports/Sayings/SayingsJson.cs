using System.Text.Json;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Sayings;

/// <summary>Sayings as JSON, all numbers in the unit of their figure's key.</summary>
public static class SayingsJson
{
    /// <summary>Writes what came out.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">What came out.</param>
    public static void Write(Stream stream, SayingsReport report)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(report);
        JsonText.Object(stream, json =>
        {
            json.WriteNumber("asked", report.Asked);
            json.WriteBoolean("whole", report.IsWhole);
            json.WriteNumber("draws", report.Plan.Draws);
            json.WriteNumber("finer_draws", report.Plan.FinerDraws);
            json.WriteNumber("other_seed_draws", report.Plan.OtherDraws);
            json.WriteString("chance_is", SayingWords.Rule);
            json.WriteStartArray("sayings");
            foreach (SayingResult result in report.Results)
            {
                Write(json, result);
            }

            json.WriteEndArray();
        });
    }

    private static void Write(Utf8JsonWriter json, SayingResult result)
    {
        json.WriteStartObject();
        json.WriteString("name", result.Saying.Name);
        json.WriteString("says", result.Saying.Says);
        json.WriteString("why", result.Saying.Why);
        json.WriteString("told", SayingWords.Told(result.Saying.Told));
        json.WriteString("verdict", SayingWords.Verdict(result.Verdict));
        json.WriteString("verdict_with_places", SayingWords.Whole(result));
        json.WriteStartArray("places");
        foreach (TrialResult trial in result.Trials)
        {
            Write(json, trial);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TrialResult trial)
    {
        json.WriteStartObject();
        json.WriteString("test", trial.Trial.Test.Name);
        json.WriteString("place", trial.Trial.Place.Name);
        json.WriteString("command", trial.Trial.Figures.Name);
        json.WriteString(trial.Trial.Test.IsOfWords ? "column" : "figure", trial.Trial.Figure);
        JsonText.List(json, "words", trial.Trial.Test.Words);
        json.WriteString("claim", trial.Trial.Test.Claim.Text.Text);
        json.WriteStartArray("sides");
        for (int s = 0; s < trial.Trial.Test.Sides.Count; s++)
        {
            json.WriteStartObject();
            json.WriteString("name", trial.Trial.Test.Sides[s].Name);
            JsonText.Number(json, "median", trial.Side(s));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        JsonText.Number(json, "number", trial.Number);
        JsonText.Number(json, "low", trial.Band.Low);
        JsonText.Number(json, "high", trial.Band.High);
        JsonText.Number(json, "chance", trial.Chance);
        JsonText.Number(json, "chance_of_the_opposite", trial.OppositeChance);
        JsonText.Number(json, "chance_of_no_difference", trial.SameChance);
        json.WriteNumber("draws_without_value", trial.Missing);
        json.WriteString("word", SayingWords.Word(trial.Word));
        json.WriteString("word_of_the_draws", SayingWords.Word(trial.First));
        json.WriteString("reason", trial.Word == PlaceWord.Unknown ? SayingWords.WhyUnknown(trial) : SayingWords.Instead(trial));
        json.WriteStartArray("second_looks");
        foreach (SecondLook look in trial.Looks)
        {
            json.WriteStartObject();
            json.WriteString("with", SayingWords.Look(look.What));
            json.WriteNumber("draws", look.Draws);
            JsonText.Number(json, "chance", look.Chance);
            json.WriteBoolean("stands", look.Stands);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("moved_with_it");
        foreach (MovedFigure moved in trial.Moved)
        {
            json.WriteStartObject();
            json.WriteString("figure", moved.Figure);
            JsonText.Number(json, "from", moved.From);
            JsonText.Number(json, "to", moved.To);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("rests_most_on", trial.Guess?.Key);
        json.WriteEndObject();
    }
}
