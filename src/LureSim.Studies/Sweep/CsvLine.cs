using System.Globalization;
using System.Text;

namespace LureSim.Studies.Sweep;

/// <summary>One line of a CSV file (RFC 4180), without its line feed. A text that a spreadsheet would take for a formula gets an apostrophe before it.</summary>
public static class CsvLine
{
    /// <summary>Joins cells; those with a comma or a quote are quoted, line breaks and tabs become blanks.</summary>
    /// <param name="cells">Cells.</param>
    public static string Join(IEnumerable<string> cells) => string.Join(',', cells.Select(c => Quote(Text(c))));

    /// <summary>A text as a cell that no spreadsheet runs: one that begins with =, +, -, @, a tab or a line break and is no number gets an
    /// apostrophe before it.</summary>
    /// <param name="text">Text, unquoted.</param>
    public static string Text(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        bool runs = text is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..];
        return runs && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? "'" + text : text;
    }

    /// <summary>A number as the shortest text that reads back to the same bits; empty for one that does not exist.</summary>
    /// <param name="value">Number, or NaN.</param>
    public static string Number(double value) => double.IsNaN(value) ? "" : value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Cells of a line.</summary>
    /// <param name="line">Line as <see cref="Join"/> makes it.</param>
    public static List<string> Split(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append(line[i++]);
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(line[i]);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }

    private static string Quote(string cell)
    {
        string plain = cell.AsSpan().ContainsAny("\t\r\n") ? cell.ReplaceLineEndings(" ").Replace('\t', ' ') : cell;
        return plain.AsSpan().ContainsAny(",\"") ? $"\"{plain.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : plain;
    }
}
