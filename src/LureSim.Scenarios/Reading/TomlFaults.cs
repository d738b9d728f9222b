using System.Text.RegularExpressions;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Reading;

/// <summary>What is wrong with a line that TOML cannot read, and what to write instead.</summary>
internal static partial class TomlFaults
{
    private const string Grammar = "a line is KEY = VALUE, a table like [rod], or a comment that begins with #";
    private const string InQuotes = "values with units and words stand in quotes";
    private const int LongestShown = 60;

    // What people put around the name of a table.
    private static readonly char[] Brackets = ['[', ']', ':', '(', ')', '<', '>', '{', '}', ' '];

    /// <summary>Message for a line without a key and its value.</summary>
    /// <param name="table">Table it stands in; empty before the first.</param>
    /// <param name="line">The line, without blanks around it.</param>
    public static string NoPair(string table, string line)
    {
        if (line[0] is '/' or ';' or '%' or '*' or '!' || line.StartsWith("--", StringComparison.Ordinal))
        {
            return $"a comment begins with #; write # {Shown(Marks().Replace(line, ""))}";
        }

        if (Open().Match(line) is { Success: true } open)
        {
            string key = open.Groups["key"].Value, value = open.Groups["value"].Value, name = key.Replace(' ', '_');
            string full = table.Length == 0 ? name : $"{table}.{name}";
            bool repeats = name.StartsWith(table + '_', StringComparison.Ordinal);
            return key.Contains(' ', StringComparison.Ordinal)
                ? $"a key is one word; {Write(repeats ? name[(table.Length + 1)..] : name, ScenarioSchema.Find(repeats ? $"{table}.{name[(table.Length + 1)..]}" : full), value)}"
                : $"an equals sign stands between a key and its value; {Write(key, ScenarioSchema.Find(full), value)}";
        }

        return TableOf(line) is string bare ? $"the name of a table stands in brackets, alone on its line; write [{bare}]" : $"this line cannot be read; {Grammar}";
    }

    /// <summary>The table whose name is all that a line holds, or null.</summary>
    /// <param name="line">The line.</param>
    public static string? TableOf(string line) => line.Trim(Brackets).ToLowerInvariant() is { } name && ScenarioSchema.Tables.Contains(name) ? name : null;

    /// <summary>Message for a value that cannot be read.</summary>
    /// <param name="path">Full key.</param>
    /// <param name="key">Key as it stands in the line.</param>
    /// <param name="value">What stands behind the equals sign.</param>
    public static string Value(string path, string key, string value)
    {
        string bare = Remark().Replace(value, "").Trim();
        if (bare.Length == 0)
        {
            return ScenarioSchema.Find(path) is KeySpec known ? $"the value is missing; {EntryReader.ShortMeaning(known)}" : "the value is missing";
        }

        Match whole = Quoted().Match(bare);
        string rest = whole.Success ? bare[whole.Length..].Trim() : "";
        string why = whole.Success && Second().IsMatch(rest) ? "each key and its value stand on a line of their own"
            : whole.Success && rest is "," or ";" or "." or "]" or ")" or "}" ? $"\"{rest}\" does not belong behind the value"
            : Count(bare, '"') == 1 && bare[0] == '"' ? "the closing quote is missing"
            : bare.Contains('\\', StringComparison.Ordinal) && whole.Success ? "a backslash means something else in quotes"
            : bare[0] is '"' or '\'' ? "an inch or foot mark ends the text in quotes"
            : bare[0] is '\u201C' or '\u201D' or '\u201E' or '\u2018' or '\u00AB' ? "the quotes must be straight"
            : InQuotes;
        bool broken = !whole.Success || rest.Length == 0 || (rest.AsSpan().ContainsAny('"', '\'') && !Second().IsMatch(rest));
        (string name, KeySpec? meant) = Meant(path, key);
        return broken ? $"{why}; {Write(name, meant, bare)}" : $"{why}; write {name} = {whole.Value}";
    }

    // The key as it is written, or the one of the same table that was meant.
    private static (string Name, KeySpec? Key) Meant(string path, string key)
    {
        int last = key.LastIndexOf('.') + 1, table = path.LastIndexOf('.') + 1;
        return ScenarioSchema.Find(path) is null && KeyHint.Meant(path) is string meant && meant.LastIndexOf('.') + 1 == table && meant.AsSpan(0, table).SequenceEqual(path.AsSpan(0, table))
            ? (key[..last] + meant[table..], ScenarioSchema.Find(meant))
            : (key, ScenarioSchema.Find(path));
    }

    /// <summary>Message for a list, or null where it can be read.</summary>
    /// <param name="path">Full key.</param>
    /// <param name="key">Key as it stands in the line.</param>
    /// <param name="list">From its first bracket on.</param>
    /// <param name="depth">Brackets left open.</param>
    /// <param name="offset">Where in the list.</param>
    public static string? List(string path, string key, string list, int depth, out int offset)
    {
        offset = 0;
        if (TomlTree.IsValue(list))
        {
            return null;
        }

        KeySpec? known = ScenarioSchema.Find(path);
        if (known is not null && known.Kind != QuantityKind.List)
        {
            return $"this list cannot be read; {Write(key, known, list.Trim('[', ']', '{', '}', ' ', '\n'))}";
        }

        if (BareItem().Match(list) is { Success: true } item)
        {
            offset = item.Groups["value"].Index;
            string name = item.Groups["name"].Value;
            return $"{InQuotes}; {Write(name, known?.Items.FirstOrDefault(c => c.Name == name), item.Groups["value"].Value.Trim())}";
        }

        if (NoComma().Match(list) is { Success: true } gap)
        {
            offset = gap.Groups["next"].Index;
            return "a comma is due before this";
        }

        return depth > 0
            ? $"the list {key} is not closed; ] is due at its end and }} at the end of each item"
            : $"this list cannot be read; it is written {key} = [{{ x = \"20 mm\" }}, {{ x = \"-40 mm\" }}]";
    }

    // What to write, or what is due where nothing that was typed can be read.
    private static string Write(string name, KeySpec? key, string bare) =>
        Text(key, bare) is string text ? $"write {Shown(name)} = {text}" : EntryReader.ShortMeaning(key!);

    // The value as it must be typed: units in letters, so that no mark needs a backslash.
    private static string? Text(KeySpec? key, string bare)
    {
        string plain = QuoteMarks.Straighten(bare), inner = plain.Trim('"', '\'', ' ', '=', ':', '\u00AB', '\u00BB');
        if (key?.Kind == QuantityKind.Flag && Synonyms.FlagOf(inner) is string flag)
        {
            return flag;
        }

        string[] tries = [FeetInches.Respelled(plain), FeetInches.Respelled(plain.Trim().TrimStart('"', '\'')), FeetInches.Respelled(plain.Trim('"', ' ')), FeetInches.Respelled(inner), inner, inner.TrimEnd(',', ';'), FeetInches.Respelled(inner.Replace('\\', '\''))];
        string? read = key is null ? null : tries.FirstOrDefault(t => t.Length > 0 && !t.Contains('"', StringComparison.Ordinal) && ValueReader.Reads(key, t))
            ?? Suggestion.Of(key, inner).FirstOrDefault();
        bool any = key is null || key.Kind is QuantityKind.Text or QuantityKind.List;
        return read is null && !any ? null : $"\"{Shown(read ?? inner.Replace('\\', '/').Replace('"', '\''))}\"";
    }

    private static int Count(string text, char mark) => text.Count(c => c == mark);

    private static string Shown(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= LongestShown ? line : $"{line[..LongestShown]}...";
    }

    [GeneratedRegex(@"^[/;%*!\- ]+")]
    private static partial Regex Marks();

    // A key and something behind it that is no single equals sign.
    [GeneratedRegex("""^(?<key>[A-Za-z_][A-Za-z0-9_.\-]*(\s[A-Za-z][A-Za-z0-9_]*)*?)\s*(:=|==+|:|=|->|\s(?=["'\d\u201C]))\s*(?<value>\S.*)$""")]
    private static partial Regex Open();

    [GeneratedRegex(@"(^|\s)#.*$")]
    private static partial Regex Remark();

    [GeneratedRegex("""^("[^"]*"|'[^']*')""")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^,?\s*[A-Za-z_.]+\s*=")]
    private static partial Regex Second();

    [GeneratedRegex("""(?<![A-Za-z_])(?<name>[A-Za-z_]+)\s*=\s*(?<value>(?!(true|false|[+-]?[\d._]+)\s*[,}\]\n])[^"'\[{\s,}\]][^,}\]\n]*)""")]
    private static partial Regex BareItem();

    [GeneratedRegex("""(["'\d]\s+(?<next>[a-z_]+\s*=))|(\}\s+(?<next>\{))""")]
    private static partial Regex NoComma();
}
