using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Measured;

/// <summary>Cells of a line as spreadsheets and thumbs write them: commas, semicolons or tabs between, quotes around where a cell needs them.</summary>
internal static class CsvCells
{
    /// <summary>Lines that say something, with their numbers from 1; <c>#</c> starts a remark.</summary>
    public static (string Line, int Number)[] Lines(string text) =>
        [.. text.ReplaceLineEndings("\n").Split('\n').Select((l, i) => (Line: l.Trim(), Number: i + 1)).Where(l => l.Line.Length > 0 && l.Line[0] != '#')];

    /// <summary>A bare number with the unit of its column, or what is usual; anything else as it is.</summary>
    public static string WithUnit(string text, string unit) =>
        unit.Length > 0 && NumberReader.Take(text, out _, out int used) is null && used == text.Length ? $"{text} {unit}" : text;

    /// <summary>The mark between cells: a semicolon or a tab where a line holds one, since some spreadsheets use the comma in numbers; else the comma.</summary>
    public static char MarkOf(IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        return Array.Exists(all, l => l.Contains(';', StringComparison.Ordinal)) ? ';' : Array.Exists(all, l => l.Contains('\t', StringComparison.Ordinal)) ? '\t' : ',';
    }

    /// <summary>The cells without blanks around them; a comma inside a number is a point where cells end otherwise.</summary>
    public static string[] Split(string line, char mark)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false, atStart = true;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append(line[++i]);
            }
            else if (c == '"' && (quoted || atStart))
            {
                quoted = !quoted;
            }
            else if (c == mark && !quoted)
            {
                cells.Add(Plain(cell, mark));
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }

            atStart = !quoted && cell.ToString().Trim().Length == 0;
        }

        cells.Add(Plain(cell, mark));
        return [.. cells];
    }

    private static string Plain(StringBuilder cell, char mark)
    {
        for (int i = 1; mark != ',' && i < cell.Length - 1; i++)
        {
            if (cell[i] == ',' && char.IsAsciiDigit(cell[i - 1]) && char.IsAsciiDigit(cell[i + 1]))
            {
                cell[i] = '.';
            }
        }

        return cell.ToString().Replace('\u00A0', ' ').Trim();
    }
}
