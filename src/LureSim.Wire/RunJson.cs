using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>
/// A run as JSON and back. Names are those of the library's members in camel case, units at their end, all SI; words are the names of the
/// library's enumerations. Doubles keep every bit. Nothing may be missing and nothing else may stand there: a page and the solver beside it
/// are of the same making. See <c>docs/page-format.md</c>.
/// </summary>
public static class RunJson
{
    private static readonly JsonTypeInfo<RunInput> Form = WholeForm();

    /// <summary>Writes a run in one line.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <exception cref="ArgumentException">A value is missing or out of range.</exception>
    public static string Write(Setup setup, RetrieveTask task)
    {
        var run = new RunInput(setup, task);
        run.Check();
        return JsonSerializer.Serialize(run, Form);
    }

    /// <summary>Writes a run as a value.</summary>
    /// <param name="json">Writer.</param>
    /// <param name="run">Run.</param>
    /// <exception cref="ArgumentException">A value is missing or out of range.</exception>
    public static void Write(Utf8JsonWriter json, RunInput run)
    {
        ArgumentNullException.ThrowIfNull(run);
        run.Check();
        JsonSerializer.Serialize(json, run, Form);
    }

    /// <summary>Reads a run and checks it.</summary>
    /// <param name="json">Text.</param>
    /// <exception cref="FormatException">The text is no run: no JSON, a member missing, unknown, twice there, or of another kind.</exception>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public static RunInput Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        RunInput run = Parse(json);
        run.Check();
        return run;
    }

    private static RunInput Parse(string json)
    {
        try
        {
            return JsonSerializer.Deserialize(json, Form) ?? throw new FormatException("This is no run but null.");
        }
        catch (JsonException e)
        {
            throw new FormatException(Words(e), e);
        }
    }

    // A trimmed program keeps no sentences of the framework: say what can be said without them.
    private static string Words(JsonException e) => e.Path is null or "$"
        ? "This is no run: a set-up and a task in JSON are expected, nothing else."
        : $"The run cannot be read at {e.Path[2..]}: a member is missing, unknown, there twice, or not of the kind expected.";

    private static JsonTypeInfo<RunInput> WholeForm()
    {
        var options = new JsonSerializerOptions(RunJsonContext.Default.Options)
        {
            TypeInfoResolver = RunJsonContext.Default.WithAddedModifier(DemandAll),
        };
        return (JsonTypeInfo<RunInput>)options.GetTypeInfo(typeof(RunInput));
    }

    private static void DemandAll(JsonTypeInfo type)
    {
        foreach (JsonPropertyInfo member in type.Properties)
        {
            member.IsRequired = member.Set is not null || member.AssociatedParameter is not null;
        }
    }
}
