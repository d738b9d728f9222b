using System.Text;
using System.Text.Json;
using LureSim.Model;
using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>What a solver answers to a run: figures, why it failed, the film, and what must be said beside them.</summary>
/// <param name="Result">The retrieve, or what a failed one had, or nothing.</param>
/// <param name="Film">Film of it.</param>
/// <param name="Failure">Why there is no whole result, or null.</param>
/// <param name="Remarks">Sentences.</param>
public sealed record RunAnswer(RetrieveResult? Result, Film? Film, string? Failure, IReadOnlyList<string> Remarks)
{
    /// <summary>
    /// Reads a run, checks it, computes it and answers. Input that is no run and runs that fail are answered in words.
    /// </summary>
    /// <param name="json">A run (<see cref="RunJson"/>).</param>
    /// <param name="coarse">True: fewer segments and longer steps, for an answer while a slider moves (<see cref="CoarseRun"/>).</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static string Answer(string json, bool coarse, RunContext context = default) => Of(json, coarse, context).ToJson();

    /// <summary>The same, before it is written.</summary>
    /// <param name="json">A run.</param>
    /// <param name="coarse">True: coarse.</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static RunAnswer Of(string json, bool coarse, RunContext context = default)
    {
        try
        {
            RunInput run = RunJson.Read(json);
            return Of(coarse ? CoarseRun.Of(run) : run, coarse ? CoarseRun.Remarks(run) : [], context);
        }
        catch (FormatException e)
        {
            return new(null, null, e.Message, []);
        }
        catch (ArgumentException e)
        {
            return new(null, null, Plain(e), []);
        }
    }

    /// <summary>Computes a run.</summary>
    /// <param name="run">Run.</param>
    /// <param name="context">Progress and stop.</param>
    /// <exception cref="ArgumentException">A value is out of range or makes no sense beside the others.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static RunAnswer Of(RunInput run, RunContext context = default) => Of(run, [], context);

    /// <summary>Writes it in one line.</summary>
    public string ToJson()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            WriteTo(json);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }

    /// <summary>Writes it as a value.</summary>
    /// <param name="json">Writer.</param>
    public void WriteTo(Utf8JsonWriter json)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject();
        json.WriteString("failure", Failure);
        Number(json, "seconds", Result?.Series["time_s"][^1]);
        WriteSummary(json);
        json.WritePropertyName("film");
        if (Film is null)
        {
            json.WriteNullValue();
        }
        else
        {
            Film.WriteTo(json);
        }

        json.WriteStartArray("remarks");
        foreach (string remark in Remarks)
        {
            json.WriteStringValue(remark);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static RunAnswer Of(RunInput run, IReadOnlyList<string> remarks, RunContext context)
    {
        var line = new LineKeeper(run.Task.Solver.OutputStepS);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(run.Setup, run.Task, context, line.See);
        Film? film = outcome.Result is RetrieveResult result ? Film.Of(result, line) : null;
        return new(outcome.Result, film, outcome.Failure?.Reason, remarks);
    }

    private void WriteSummary(Utf8JsonWriter json)
    {
        if (Result is null)
        {
            json.WriteNull("pattern");
            json.WriteNull("warm_up_twitches");
            json.WriteNull("summary");
            return;
        }

        json.WriteString("pattern", RetrieveFigures.Name(Result.Summary.Pattern));
        json.WriteNumber("warm_up_twitches", Result.WarmUpTwitches);
        json.WriteStartObject("summary");
        foreach (Figure<RetrieveSummary> figure in RetrieveFigures.All)
        {
            Number(json, figure.Key, figure.Value(Result.Summary));
        }

        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is double number && double.IsFinite(number))
        {
            json.WriteNumber(key, number);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    // The framework adds the member's name and value in lines of its own; the sentence says them already.
    private static string Plain(ArgumentException e)
    {
        string line = e.Message.Split('\n')[0].TrimEnd('\r');
        int tail = line.IndexOf(" (Parameter", StringComparison.Ordinal);
        return tail > 0 ? line[..tail] : line;
    }
}
