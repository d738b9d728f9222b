using System.Globalization;
using System.Text;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Effective;

/// <summary>Values as TOML.</summary>
internal static class TomlText
{
    /// <summary>A given value.</summary>
    public static string Of(Entry entry) => entry.Key.Kind == QuantityKind.List ? List(entry) : Scalar(entry.Key, entry.Text, entry.Value);

    /// <summary>A default.</summary>
    public static string OfDefault(KeySpec key) => Scalar(key, key.Default!, key.DefaultReading);

    /// <summary>A basic string.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char c in text)
        {
            _ = c switch
            {
                '"' or '\\' => quoted.Append('\\').Append(c),
                < ' ' or '\u007F' => quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => quoted.Append(c),
            };
        }

        return quoted.Append('"').ToString();
    }

    private static string Scalar(KeySpec key, string text, QuantityValue value) => key.Kind switch
    {
        QuantityKind.Flag => value.Si == 1.0 ? "true" : "false",
        QuantityKind.Ratio or QuantityKind.WholeNumber when value.Kind != QuantityKind.Choice => value.Si.ToString("R", CultureInfo.InvariantCulture),
        _ => Quote(text),
    };

    private static string List(Entry entry)
    {
        var text = new StringBuilder("[");
        foreach (Item item in entry.Items)
        {
            text.Append("\n  { ").AppendJoin(", ", Columns(entry.Key, item)).Append(" },");
        }

        return text.Append(entry.Items.Count > 0 ? "\n]" : "]").ToString();
    }

    private static IEnumerable<string> Columns(KeySpec list, Item item)
    {
        foreach (KeySpec column in list.Items)
        {
            if (item.Columns[column.Index] is Entry given)
            {
                yield return $"{column.Name} = {Of(given)}";
            }
            else if (column.Default is not null)
            {
                yield return $"{column.Name} = {OfDefault(column)}";
            }
        }
    }
}
