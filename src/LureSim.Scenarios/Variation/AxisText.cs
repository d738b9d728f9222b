namespace LureSim.Scenarios.Variation;

/// <summary>Cuts the text of an axis into its parts. Brackets and texts in quotes stay whole.</summary>
internal static class AxisText
{
    /// <summary>Parts between a mark outside of brackets and quoted items, without blanks around them.</summary>
    public static List<string> Split(string text, char mark)
    {
        var parts = new List<string>();
        int start = 0, depth = 0;
        bool quoted = false;
        for (int i = 0; i < text.Length; i++)
        {
            // An inch mark follows a number; a quote opens an item or stands inside brackets.
            bool opens = text[i] == '"' && (depth > 0 || text.AsSpan(start, i - start).IsWhiteSpace());
            quoted = quoted ? text[i] != '"' : opens;
            depth += quoted ? 0 : text[i] is '[' or '{' ? 1 : text[i] is ']' or '}' ? -1 : 0;
            if (text[i] == mark && depth == 0 && !quoted)
            {
                parts.Add(text[start..i].Trim());
                start = i + 1;
            }
        }

        parts.Add(text[start..].Trim());
        return parts;
    }

    /// <summary>An item as an override takes it: marks around a quoted word are dropped.</summary>
    public static string Unquote(string item) => item.Length > 1 && item[0] == '"' && item[^1] == '"' ? item[1..^1] : item;
}
