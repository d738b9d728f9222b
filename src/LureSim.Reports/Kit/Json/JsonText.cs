using System.Text.Encodings.Web;
using System.Text.Json;
using LureSim.Model;
using LureSim.Reports.Doubt;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Kit.Json;

/// <summary>How every JSON file looks: flat snake-case keys with the unit at the end, indented, one line feed at its end.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes one object and the line feed after it.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="write">Writes what is inside.</param>
    public static void Object(Stream stream, Action<Utf8JsonWriter> write)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    /// <summary>Writes every figure of a result; one that does not exist is null, one that is no number is refused.</summary>
    /// <exception cref="ArgumentException">A figure is NaN or infinite.</exception>
    public static void Figures<T>(Utf8JsonWriter json, IEnumerable<Figure<T>> figures, T result)
    {
        foreach (Figure<T> figure in figures)
        {
            if (figure.Value(result) is double value)
            {
                json.WriteNumber(figure.Key, value);
            }
            else
            {
                json.WriteNull(figure.Key);
            }
        }
    }

    /// <summary>Writes a number, or null where it does not exist.</summary>
    public static void Number(Utf8JsonWriter json, string key, double? value)
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

    /// <summary>Writes lines as an array of texts.</summary>
    public static void List(Utf8JsonWriter json, string key, IReadOnlyList<string> lines)
    {
        json.WriteStartArray(key);
        foreach (string line in lines)
        {
            json.WriteStringValue(line);
        }

        json.WriteEndArray();
    }

    /// <summary>Ends a summary: warnings, guesses, and what the guesses may change.</summary>
    public static void Notes(Utf8JsonWriter json, RunNotes notes, DoubtStudy? doubt = null)
    {
        List(json, "warnings", notes.Warnings);
        List(json, "guesses", notes.Guesses);
        if (doubt is not null)
        {
            DoubtJson.Write(json, doubt);
        }
    }
}
