using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using LureSim.Model;
using LureSim.Model.Lures;

namespace LureSim.Wire;

/// <summary>The code that reads and writes each member, made when the project is built.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    IgnoreReadOnlyProperties = true,
    UseStringEnumConverter = true,
    RespectNullableAnnotations = true,
    AllowDuplicateProperties = false,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    Converters = [typeof(WholeNumberText), typeof(BallastList), typeof(HookList), typeof(StationList)])]
[JsonSerializable(typeof(RunInput))]
[JsonSerializable(typeof(BallastSpec[]))]
[JsonSerializable(typeof(HookSpec[]))]
[JsonSerializable(typeof(HullStation[]))]
internal sealed partial class RunJsonContext : JsonSerializerContext;

/// <summary>A whole number of 64 bits as text: the numbers of a page's script hold 53.</summary>
internal sealed class WholeNumberText : JsonConverter<ulong>
{
    /// <inheritdoc/>
    public override ulong Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && ulong.TryParse(reader.GetString(), NumberStyles.None, CultureInfo.InvariantCulture, out ulong value)
            ? value
            : throw new JsonException();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, ulong value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(CultureInfo.InvariantCulture));
}

/// <summary>A list of parts as an array.</summary>
/// <typeparam name="T">Part.</typeparam>
internal abstract class PartList<T> : JsonConverter<ValueList<T>>
{
    /// <inheritdoc/>
    public override ValueList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        T[] items = JsonSerializer.Deserialize(ref reader, (JsonTypeInfo<T[]>)options.GetTypeInfo(typeof(T[])))
            ?? throw new JsonException();
        return Array.Exists(items, i => i is null) ? throw new JsonException() : ValueList.Own(items);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, ValueList<T> value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, value.Span.ToArray(), (JsonTypeInfo<T[]>)options.GetTypeInfo(typeof(T[])));
}

/// <summary>Weights.</summary>
internal sealed class BallastList : PartList<BallastSpec>;

/// <summary>Hooks.</summary>
internal sealed class HookList : PartList<HookSpec>;

/// <summary>Stations.</summary>
internal sealed class StationList : PartList<HullStation>;
