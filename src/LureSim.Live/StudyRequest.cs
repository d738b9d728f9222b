using System.Text.Json;
using System.Text.Json.Serialization;

namespace LureSim.Live;

/// <summary>A whole study that the page asks for.</summary>
/// <param name="Study">One of <see cref="Studies"/>.</param>
/// <param name="Set">Texts key=value that are laid over the file.</param>
/// <param name="Vary">For a sweep: KEY=from:to:count.</param>
internal sealed record StudyRequest(string Study, IReadOnlyList<string> Set, string? Vary = null)
{
    /// <summary>What can be asked for: commands of the program.</summary>
    public static IReadOnlyList<string> Studies { get; } = ["retrieve", "cadence", "cast", "trim", "pool", "sweep"];

    /// <summary>Reads a request.</summary>
    /// <param name="json">UTF-8.</param>
    /// <exception cref="FormatException">It makes no sense; in words.</exception>
    public static StudyRequest Read(ReadOnlySpan<byte> json)
    {
        StudyRequest? read;
        try
        {
            read = JsonSerializer.Deserialize(json, StudyJson.Default.StudyRequest);
        }
        catch (JsonException e)
        {
            throw new FormatException("the request is no JSON of a study: " + e.Message, e);
        }

        if (read is null || !Studies.Contains(read.Study))
        {
            throw new FormatException($"'{read?.Study}' is no study; say one of {string.Join(", ", Studies)}");
        }

        return (read.Study == "sweep") == read.Vary is not null ? read : throw new FormatException("a sweep says what it varies, and nothing else does");
    }

    /// <summary>The arguments of the program. Nothing of the request can become an option: each text is bound to its own.</summary>
    /// <param name="file">Scenario file.</param>
    /// <param name="folder">Where its files go.</param>
    /// <param name="units">Units, or null.</param>
    public string[] Arguments(string file, string folder, string? units) =>
    [
        Study, file, "--out=" + folder, "--plots=svg",
        .. units is null ? [] : new[] { "--units=" + units },
        .. Set.Select(s => "--set=" + s),
        .. Vary is null ? [] : new[] { "--vary=" + Vary },
    ];
}

/// <summary>Reads requests without reflection.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(StudyRequest))]
[JsonSerializable(typeof(StudyLine))]
internal sealed partial class StudyJson : JsonSerializerContext;

/// <summary>A line that the page gets while a study runs, and at its end.</summary>
/// <param name="Progress">How far it is, in the program's words; null at the end.</param>
/// <param name="Text">The study's text.</param>
/// <param name="Pictures">Its pictures as SVG.</param>
/// <param name="Fault">Why there is no answer, in words.</param>
internal sealed record StudyLine(string? Progress = null, string? Text = null, IReadOnlyList<StudyPicture>? Pictures = null, string? Fault = null);

/// <summary>A picture of a study.</summary>
/// <param name="Name">Name.</param>
/// <param name="Svg">SVG.</param>
internal sealed record StudyPicture(string Name, string Svg);
