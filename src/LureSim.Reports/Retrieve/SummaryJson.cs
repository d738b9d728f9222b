using System.Text.Encodings.Web;
using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Doubt;

namespace LureSim.Reports.Retrieve;

/// <summary>What the reader of a result must know beside its numbers.</summary>
/// <param name="Warnings">One line each.</param>
/// <param name="Guesses">One line per parameter that was guessed: key, value, range.</param>
public sealed record RunNotes(IReadOnlyList<string> Warnings, IReadOnlyList<string> Guesses)
{
    /// <summary>Nothing to say.</summary>
    public static RunNotes None { get; } = new([], []);
}

/// <summary>The summary of a retrieve as JSON: flat snake-case keys with the unit at the end.</summary>
public static class SummaryJson
{
    internal static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes the summary.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Retrieve.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(Stream stream, RetrieveResult result, RunNotes notes, DoubtStudy? doubt = null)
    {
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            json.WriteString("title", result.Setup.Title);
            json.WriteString("pattern", SummaryKeys.Name(result.Summary.Pattern));
            foreach (SummaryKey key in SummaryKeys.All)
            {
                json.WriteNumber(key.Key, key.Value(result.Summary));
            }

            WriteRun(json, result);
            WriteList(json, "warnings", notes.Warnings);
            WriteList(json, "guesses", notes.Guesses);
            if (doubt is not null)
            {
                DoubtJson.Write(json, doubt.Report, [.. doubt.Headlines.Select(h => h.Key)]);
            }

            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void WriteRun(Utf8JsonWriter json, RetrieveResult result)
    {
        json.WriteNumber("warm_up_twitches", result.WarmUpTwitches);
        json.WriteString("failure", result.Failure);
        json.WriteStartObject("solver");
        json.WriteNumber("steps", result.Counters.Steps);
        json.WriteNumber("halved", result.Counters.Halved);
        json.WriteNumber("tridiagonal_solves", result.Counters.TridiagonalSolves);
        json.WriteNumber("round_cap_hits", result.Counters.RoundCapHits);
        json.WriteNumber("largest_step_ratio", result.Counters.LargestStepRatio);
        json.WriteNumber("nodes", result.Task.Solver.Nodes);
        json.WriteNumber("step_s", result.Task.Solver.StepS);
        json.WriteNumber("seed", result.Setup.Seed);
        json.WriteEndObject();
    }

    internal static void WriteList(Utf8JsonWriter json, string key, IReadOnlyList<string> lines)
    {
        json.WriteStartArray(key);
        foreach (string line in lines)
        {
            json.WriteStringValue(line);
        }

        json.WriteEndArray();
    }
}
