using System.Text.Json;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Compare;

namespace LureSim.Reports.Compare;

/// <summary>A comparison as JSON, all numbers in SI.</summary>
public static class CompareJson
{
    /// <summary>Sentences of files for machines are the same bytes whatever units people ask for.</summary>
    internal static readonly Shown Words = new(UnitChoice.Metric);

    /// <summary>Writes it.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void Write(Stream stream, CompareResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        Advice advice = Advice.Of(result);
        JsonText.Object(stream, json =>
        {
            JsonText.List(json, "set_ups", [.. result.SetUps.Select(s => s.Label)]);
            JsonText.List(json, "recommendation", AdviceText.Sentences(result, advice, Words));
            json.WriteString("recommended", advice.Leader < 0 ? null : result.SetUps[advice.Leader].Label);
            json.WriteString("recommendation_kind", advice.Kind.ToString().ToLowerInvariant());
            json.WriteString("share_is", CompareWords.Rule);
            WriteValues(json, result);
            json.WriteStartArray("differences");
            foreach (Difference d in result.Differences)
            {
                WriteDifference(json, result, d);
            }

            json.WriteEndArray();
            WritePeople(json);
            JsonText.Notes(json, notes);
        });
    }

    private static void WriteValues(Utf8JsonWriter json, CompareResult result)
    {
        json.WriteStartArray("values");
        for (int i = 0; i < result.SetUps.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("set_up", result.SetUps[i].Label);
            foreach (CompareMeasure measure in result.Sets.SelectMany(s => s.Measures))
            {
                JsonText.Number(json, measure.Key, result.Column(measure, i).Mean);
                JsonText.Number(json, "as_it_stands_" + measure.Key, result.Column(measure, i).AsItStands.Value);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteDifference(Utf8JsonWriter json, CompareResult result, Difference d)
    {
        json.WriteStartObject();
        json.WriteString("measure", d.Measure.Key);
        json.WriteString("unit", d.Measure.Unit);
        json.WriteString("a", result.SetUps[d.A].Label);
        json.WriteString("b", result.SetUps[d.B].Label);
        JsonText.Number(json, "a_value", d.AValue);
        JsonText.Number(json, "b_value", d.BValue);
        JsonText.Number(json, "difference", d.Value);
        JsonText.Number(json, "low", d.Band.Low);
        JsonText.Number(json, "high", d.Band.High);
        JsonText.Number(json, "share", d.Share);
        json.WriteString("verdict", CompareWords.Verdict(d.Verdict));
        json.WriteString("reason", CompareReasons.Of(result, d, new(result, Words)));
        JsonText.Number(json, "told_apart", d.Threshold);
        JsonText.Number(json, "band_with_bend_test_share", result.BendTestShare(d));
        json.WriteEndObject();
    }

    private static void WritePeople(Utf8JsonWriter json)
    {
        json.WriteStartArray("people");
        foreach (Human human in Humans.All)
        {
            json.WriteStartObject();
            json.WriteString("what", human.Words);
            json.WriteString("unit", human.Unit);
            json.WriteNumber("low", human.Low);
            json.WriteNumber("high", human.High);
            json.WriteString("source", human.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
