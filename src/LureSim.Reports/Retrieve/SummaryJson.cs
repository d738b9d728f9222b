using System.Text.Json;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Retrieve;

/// <summary>The summary of a retrieve as JSON: flat snake-case keys with the unit at the end.</summary>
public static class SummaryJson
{
    /// <summary>Writes the summary.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="result">Retrieve.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static void Write(Stream stream, RetrieveResult result, RunNotes notes, DoubtStudy? doubt = null)
    {
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", result.Setup.Title);
            json.WriteString("pattern", RetrieveFigures.Name(result.Summary.Pattern));
            JsonText.Figures(json, RetrieveFigures.All, result.Summary);

            WriteRun(json, result);
            JsonText.Notes(json, notes, doubt);
        });
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
        json.WriteNumber("energy_open_share", result.Counters.EnergyOpenShare);
        json.WriteNumber("nodes", result.Task.Solver.Nodes);
        json.WriteNumber("step_s", result.Task.Solver.StepS);
        json.WriteNumber("seed", result.Setup.Seed);
        json.WriteEndObject();
    }
}
