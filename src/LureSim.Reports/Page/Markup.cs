using System.Text;
using System.Text.RegularExpressions;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Page;

/// <summary>
/// A piece of HTML that is safe by the way it was made: a text becomes one by being escaped, and there is no other way in for what a user wrote.
/// Names of elements and attributes are the program's own.
/// </summary>
internal readonly partial record struct Markup
{
    // Of HTML alone: in SVG every element is closed.
    private static readonly HashSet<string> Empty = new(StringComparer.Ordinal) { "meta", "link", "br", "hr", "input" };

    private Markup(string html) => Html = html;

    /// <summary>As it stands in the page.</summary>
    public string Html => field ?? "";

    /// <summary>A text, escaped.</summary>
    /// <param name="text">Any text.</param>
    public static implicit operator Markup(string text) => Text(text);

    /// <summary>A text, escaped; what steers instead of being seen is told as <c>\u202E</c>.</summary>
    /// <param name="text">Any text.</param>
    public static Markup Text(string text) => new(Escape(text));

    /// <summary>A sentence of the program: a number stays with its unit, and what is typed, between back-quotes, looks like it.</summary>
    /// <param name="sentence">Sentence.</param>
    public static Markup Prose(string sentence) => Of(sentence.Split('`').Select((part, i) => i % 2 == 1 ? Tag("code", "typed", part) : Text(Unit().Replace(part, "\u00A0"))));

    [GeneratedRegex(@"(?<=\d) (?=(%|in|ft|cm|mm|m|oz|lb|g|kg|deg|degrees|s|times)\b|%)")]
    private static partial Regex Unit();

    /// <summary>A text of the user: kept to itself, so that one written from right to left does not turn what stands beside it.</summary>
    /// <param name="text">Any text.</param>
    public static Markup Name(string text) => Tag("bdi", [], text);

    /// <summary>Pieces one after the other.</summary>
    /// <param name="parts">Pieces.</param>
    public static Markup Of(params IEnumerable<Markup> parts) => new(string.Concat(parts.Select(p => p.Html)));

    /// <summary>An element.</summary>
    /// <param name="name">Name.</param>
    /// <param name="attributes">Attributes; their values are escaped.</param>
    /// <param name="inside">What it holds.</param>
    public static Markup Tag(string name, (string Name, string Value)[] attributes, params IEnumerable<Markup> inside)
    {
        var html = new StringBuilder("<").Append(name);
        foreach ((string key, string value) in attributes)
        {
            html.Append(' ').Append(key);
            _ = value.Length > 0 ? html.Append("=\"").Append(Escape(value)).Append('"') : html;
        }

        html.Append('>');
        if (!Empty.Contains(name))
        {
            html.AppendJoin("", inside.Select(p => p.Html)).Append("</").Append(name).Append('>');
        }

        return new(html.ToString());
    }

    /// <summary>An element of a class.</summary>
    /// <param name="name">Name.</param>
    /// <param name="class">Class; empty for none.</param>
    /// <param name="inside">What it holds.</param>
    public static Markup Tag(string name, string @class, params IEnumerable<Markup> inside) => Tag(name, @class.Length > 0 ? [("class", @class)] : [], inside);

    /// <summary>The program's own style or script, as it is: it may not end its element by itself.</summary>
    /// <param name="name">Element.</param>
    /// <param name="attributes">Attributes.</param>
    /// <param name="content">Content.</param>
    /// <exception cref="ArgumentException">The content would end its element.</exception>
    public static Markup Raw(string name, (string Name, string Value)[] attributes, string content)
    {
        if (content.Contains("</" + name, StringComparison.OrdinalIgnoreCase) || content.Contains("<!--", StringComparison.Ordinal))
        {
            throw new ArgumentException($"it would end its own <{name}>", nameof(content));
        }

        Markup open = Tag(name, attributes);
        return new(open.Html[..^($"</{name}>".Length)] + content + $"</{name}>");
    }

    /// <summary>JSON in a page: no sign in it can end its element or a line of script.</summary>
    /// <param name="id">Id of the element.</param>
    /// <param name="json">JSON.</param>
    public static Markup Json(string id, string json) => Raw("script", [("type", "application/json"), ("id", id)], json
        .Replace("<", "\\u003c", StringComparison.Ordinal).Replace(">", "\\u003e", StringComparison.Ordinal).Replace("&", "\\u0026", StringComparison.Ordinal)
        .Replace("\u2028", "\\u2028", StringComparison.Ordinal).Replace("\u2029", "\\u2029", StringComparison.Ordinal));

    private static string Escape(string text) => PlainText.Escape(text)
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal).Replace("'", "&#39;", StringComparison.Ordinal);
}
