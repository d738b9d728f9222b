using System.Text.RegularExpressions;

namespace LureSim.Scenarios.Reading;

/// <summary>
/// Looks at the lines of a text that is not TOML, each for itself, since a parser that trips over one mark loses the rest of the file. Finds the
/// lines that no parser could read, and the text without them.
/// </summary>
internal sealed partial class TomlLines
{
    private readonly string[] _lines;
    private readonly Action<int, int, string, string> _fault;
    private string _table = "";
    private int _count;

    private TomlLines(string text, Action<int, int, string, string> fault) => (_lines, _fault) = (text.Split('\n'), fault);

    /// <summary>Tells every line that cannot be read.</summary>
    /// <param name="text">Text.</param>
    /// <param name="fault">Gets line and column, counted from 1, the key and the message.</param>
    /// <returns>The text with those lines left empty.</returns>
    public static string Read(string text, Action<int, int, string, string> fault)
    {
        var lines = new TomlLines(text, fault);
        for (int i = 0; i < lines._lines.Length;)
        {
            i += lines.One(i);
        }

        return string.Join('\n', lines._lines);
    }

    // Looks at the statement that begins in a line; gives the number of its lines.
    private int One(int at)
    {
        string line = _lines[at].TrimEnd();
        string plain = line.TrimStart();
        int indent = line.Length - plain.Length;
        if (plain.Length == 0 || plain[0] == '#')
        {
            return 1;
        }

        if (plain[0] == '[')
        {
            return Header(at, indent, plain);
        }

        if (KeyValue().Match(plain) is not { Success: true } pair)
        {
            Refuse(at, indent, "", () => TomlFaults.NoPair(_table, plain));
            return TomlFaults.TableOf(plain) is string name ? Mend(at, name) : 1;
        }

        string key = pair.Groups["key"].Value, value = pair.Groups["value"].Value;
        int column = indent + pair.Groups["value"].Index;
        if (value.StartsWith("\"\"\"", StringComparison.Ordinal) || value.StartsWith("'''", StringComparison.Ordinal))
        {
            return LongText(at, value[..3]);
        }

        if (value.Length > 0 && value[0] is '[' or '{')
        {
            return List(at, key, column);
        }

        if (!Whole().IsMatch(value))
        {
            Refuse(at, column, Full(key), () => TomlFaults.Value(Full(key), key, value));
        }

        return 1;
    }

    private int Header(int at, int indent, string plain)
    {
        if (HeaderLine().Match(plain) is { Success: true } header)
        {
            _table = header.Groups["name"].Value.Trim();
            return 1;
        }

        string name = NotName().Replace(plain.Split('#')[0].Split(']')[0], "");
        Refuse(at, indent, "", () => $"the name of a table stands in brackets, alone on its line; write [{name}]");
        return Mend(at, name);
    }

    // The lines below belong to the table that was meant.
    private int Mend(int at, string name)
    {
        _table = name;
        _lines[at] = $"[\"{name}\"]";
        return 1;
    }

    // A text over several lines ends with its three marks.
    private int LongText(int at, string mark)
    {
        for (int i = at; i < _lines.Length; i++)
        {
            int from = i == at ? _lines[i].IndexOf(mark, StringComparison.Ordinal) + mark.Length : 0;
            if (_lines[i].IndexOf(mark, from, StringComparison.Ordinal) >= 0)
            {
                return i - at + 1;
            }
        }

        Refuse(at, 0, "", () => $"the text that begins here does not end; {mark} is due at its end");
        return 1;
    }

    private int List(int at, string key, int column)
    {
        int depth = 0, i = at;
        for (; i < _lines.Length; i++)
        {
            if (i > at && (depth == 0 || HeaderLine().IsMatch(_lines[i].Trim()) || OpenPair().IsMatch(_lines[i])))
            {
                break;
            }

            depth += Depth(i == at ? _lines[i][column..] : _lines[i]);
            if (depth <= 0)
            {
                i++;
                break;
            }
        }

        string list = string.Join('\n', _lines[at..i])[column..];
        string? wrong = TomlFaults.List(Full(key), key, list, depth, out int offset);
        if (wrong is null)
        {
            return i - at;
        }

        string before = list[..offset];
        int row = before.Count(c => c == '\n'), from = row == 0 ? column + offset : offset - before.LastIndexOf('\n') - 1;
        _fault(at + row + 1, from + 1, Full(key), wrong);
        Array.Fill(_lines, "", at, i - at);
        return i - at;
    }

    // What is wrong is worked out only where it will be told.
    private void Refuse(int at, int column, string key, Func<string> message)
    {
        _fault(at + 1, column + 1, key, ++_count > ScenarioFault.MostTold ? "this line cannot be read" : message());
        _lines[at] = "";
    }

    private string Full(string key) => _table.Length == 0 ? key : $"{_table}.{key}";

    // Brackets that a line opens less those that it closes, outside of texts and remarks.
    private static int Depth(string line)
    {
        int depth = 0;
        foreach (char c in Text().Replace(line, "").TakeWhile(c => c != '#'))
        {
            depth += c is '[' or '{' ? 1 : c is ']' or '}' ? -1 : 0;
        }

        return depth;
    }

    [GeneratedRegex(@"^(?<key>[A-Za-z0-9_\-]+(\s*\.\s*[A-Za-z0-9_\-]+)*|""[^""]*"")\s*=(?!=)\s*(?<value>.*)$")]
    private static partial Regex KeyValue();

    // A text, a number or a flag that TOML reads, and nothing behind it but a remark.
    [GeneratedRegex("""^("([^"\\]|\\["\\btnfre]|\\u[0-9A-Fa-f]{4}|\\x[0-9A-Fa-f]{2}|\\U[0-9A-Fa-f]{8})*"|'[^']*'|true|false|[+-]?(inf|nan)|[+-]?(0|[1-9](_?\d)*)(\.\d(_?\d)*)?([eE][+-]?\d+)?|0[xob][0-9A-Fa-f_]+|\d{4}-\d\d-\d\d[\dT:.Z +-]*)\s*(#.*)?$""")]
    private static partial Regex Whole();

    [GeneratedRegex("""^\[\[?\s*(?<name>[A-Za-z0-9_\-]+(\s*\.\s*[A-Za-z0-9_\-]+)*|"[^"]*")\s*\]\]?\s*(#.*)?$""")]
    private static partial Regex HeaderLine();

    // A key at the very start of a line: a list that was not closed ends before it.
    [GeneratedRegex(@"^[A-Za-z_]+\s*=")]
    private static partial Regex OpenPair();

    [GeneratedRegex(@"[^A-Za-z0-9_.\- ]|\s+$")]
    private static partial Regex NotName();

    [GeneratedRegex("""("([^"\\]|\\.)*")|('[^']*')""")]
    private static partial Regex Text();
}
