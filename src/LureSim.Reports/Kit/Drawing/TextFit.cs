using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>Words made to fit a width of a picture: broken between words, and cut with an ellipsis where the lines that there are do not hold them.</summary>
internal static class TextFit
{
    private const string Ellipsis = "…";

    /// <summary>Breaks a text into lines.</summary>
    /// <param name="text">Any text; line breaks count as blanks.</param>
    /// <param name="size">Font size, px.</param>
    /// <param name="weight">Font weight.</param>
    /// <param name="width">Widest line, px.</param>
    /// <param name="lines">Most lines, at least 1.</param>
    /// <returns>Lines with line feeds between them; what no longer fits is cut, and ends in an ellipsis.</returns>
    public static string Wrap(string? text, double size, double weight, double width, int lines)
    {
        var font = FontMetrics.For(weight);
        double room = width / size;
        var done = new List<string>();
        var line = new StringBuilder();
        foreach (string word in PlainText.Escape((text ?? string.Empty).ReplaceLineEndings(" ")).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && font.Width($"{line} {word}") > room && done.Count < lines - 1)
            {
                done.Add(Cut(line.ToString(), font, room));
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : string.Empty).Append(word);
        }

        done.Add(Cut(line.ToString(), font, room));
        return string.Join('\n', done);
    }

    private static string Cut(string line, FontMetrics font, double room)
    {
        if (font.Width(line) <= room)
        {
            return line;
        }

        int kept = line.Length;
        while (kept > 0 && font.Width(line[..kept].TrimEnd() + Ellipsis) > room)
        {
            // Never half of a pair.
            kept -= kept > 1 && char.IsLowSurrogate(line[kept - 1]) ? 2 : 1;
        }

        return line[..kept].TrimEnd() + Ellipsis;
    }
}
