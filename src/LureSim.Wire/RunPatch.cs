using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace LureSim.Wire;

/// <summary>
/// What makes one JSON document another: values by the place where they belong (JSON pointers, RFC 6901). A list of another length, an object
/// with other members and a value of another kind are replaced whole.
/// </summary>
/// <param name="Values">Values by place, in the order of the document.</param>
public sealed record RunPatch(IReadOnlyList<KeyValuePair<string, JsonElement>> Values)
{
    /// <summary>The differences of two documents; numbers are the same when their values are.</summary>
    /// <param name="from">Document to start from.</param>
    /// <param name="to">Document to arrive at.</param>
    /// <exception cref="FormatException">One of them is no JSON.</exception>
    public static RunPatch Between(string from, string to)
    {
        var found = new List<KeyValuePair<string, JsonElement>>();
        Compare("", Parse(from), Parse(to), found);
        return new(found);
    }

    /// <summary>The document with these values in it.</summary>
    /// <param name="json">Document.</param>
    /// <exception cref="FormatException">It is no JSON, or has no such place.</exception>
    public string ApplyTo(string json)
    {
        JsonNode? root = Node(Parse(json));
        foreach ((string place, JsonElement value) in Values)
        {
            root = place.Length == 0 ? Node(value) : Set(root, place, value);
        }

        return root?.ToJsonString() ?? "null";
    }

    /// <summary>Writes the values as one object.</summary>
    /// <param name="json">Writer.</param>
    public void WriteTo(Utf8JsonWriter json)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject();
        foreach ((string place, JsonElement value) in Values)
        {
            json.WritePropertyName(place);
            value.WriteTo(json);
        }

        json.WriteEndObject();
    }

    private static JsonElement Parse(string json)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            return document.RootElement.Clone();
        }
        catch (JsonException e)
        {
            throw new FormatException("This is no JSON.", e);
        }
    }

    private static void Compare(string place, JsonElement from, JsonElement to, List<KeyValuePair<string, JsonElement>> found)
    {
        if (JsonElement.DeepEquals(from, to))
        {
            return;
        }

        if (from.ValueKind == JsonValueKind.Object && to.ValueKind == JsonValueKind.Object && Names(from).SequenceEqual(Names(to)))
        {
            foreach (JsonProperty member in from.EnumerateObject())
            {
                Compare($"{place}/{Escape(member.Name)}", member.Value, to.GetProperty(member.Name), found);
            }
        }
        else if (from.ValueKind == JsonValueKind.Array && to.ValueKind == JsonValueKind.Array && from.GetArrayLength() == to.GetArrayLength())
        {
            for (int i = 0; i < from.GetArrayLength(); i++)
            {
                Compare(string.Create(CultureInfo.InvariantCulture, $"{place}/{i}"), from[i], to[i], found);
            }
        }
        else
        {
            found.Add(new(place, to));
        }
    }

    private static IEnumerable<string> Names(JsonElement element) =>
        element.EnumerateObject().Select(m => m.Name).Order(StringComparer.Ordinal);

    private static JsonNode? Set(JsonNode? root, string place, JsonElement value)
    {
        string[] steps = place.Split('/');
        JsonNode? at = steps[0].Length == 0 ? root : null;
        foreach (string step in steps.Skip(1).SkipLast(1))
        {
            at = at is null ? null : Child(at, Unescape(step));
        }

        string last = Unescape(steps[^1]);
        if (at is JsonObject members && members.ContainsKey(last))
        {
            members[last] = Node(value);
        }
        else if (at is JsonArray items && Index(last, items.Count) is int i)
        {
            items[i] = Node(value);
        }
        else
        {
            throw new FormatException($"The document has no place {place}.");
        }

        return root;
    }

    private static JsonNode? Child(JsonNode at, string step) => at switch
    {
        JsonObject members => members.TryGetPropertyValue(step, out JsonNode? child) ? child : null,
        JsonArray items when Index(step, items.Count) is int i => items[i],
        _ => null,
    };

    private static int? Index(string step, int count) =>
        int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out int i) && i < count ? i : null;

    private static JsonNode? Node(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => JsonObject.Create(value),
        JsonValueKind.Array => JsonArray.Create(value),
        JsonValueKind.Null => null,
        _ => JsonValue.Create(value),
    };

    private static string Escape(string name) => name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private static string Unescape(string step) => step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
}
