using System.Text;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>Words made to fit a width of a picture: broken between words, and cut with an ellipsis where the lines that there are do not hold them.</summary>
internal static class TextFit
{
    private const string Ellipsis = "…";
    private const int LongestUnit = 5;

    /// <summary>Breaks a text into lines of about one length, a number kept with its unit and brackets kept whole.</summary>
    /// <param name="text">Any text; line breaks count as blanks.</param>
    /// <param name="size">Font size, px.</param>
    /// <param name="weight">Font weight.</param>
    /// <param name="width">Widest line, px.</param>
    /// <param name="lines">Most lines, at least 1.</param>
    /// <returns>Lines with line feeds between them; what no longer fits is cut, and ends in an ellipsis.</returns>
    public static string Wrap(string? text, double size, double weight, double width, int lines)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return text ?? string.Empty;
        }

        var font = FontMetrics.For(weight);
        string plain = PlainText.Escape(text.ReplaceLineEndings(" "));
        double room = width / size;
        List<string> best = Break(Glued(plain, room, font), font, room, lines);
        // As narrow as the same number of lines allows: no last line of one word.
        for (double narrow = 0.95 * room; best.Count > 1 && narrow > 0.5 * room; narrow *= 0.95)
        {
            List<string> closer = Break(Glued(plain, room, font), font, narrow, lines);
            if (closer.Count > best.Count || closer.Any(l => font.Width(l) > narrow))
            {
                break;
            }

            best = closer;
        }

        return string.Join('\n', best.Select(l => Cut(l, font, room)));
    }

    private static List<string> Break(IReadOnlyList<string> words, FontMetrics font, double room, int lines)
    {
        var done = new List<string>();
        var line = new StringBuilder();
        foreach (string word in words)
        {
            if (line.Length > 0 && font.Width($"{line} {word}") > room && done.Count < lines - 1)
            {
                done.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : string.Empty).Append(word);
        }

        done.Add(line.ToString());
        return done;
    }

    // Words that stay on one line, unless they would fill half of it.
    private static List<string> Glued(string text, double room, FontMetrics font)
    {
        var glued = new List<string>();
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string together = glued.Count > 0 ? $"{glued[^1]} {word}" : word;
            bool open = glued.Count > 0 && glued[^1].LastIndexOf('(') > glued[^1].LastIndexOf(')');
            bool unit = glued.Count > 0 && char.IsAsciiDigit(glued[^1][^1]) && word.Length <= LongestUnit && !char.IsAsciiDigit(word[0]);
            if ((open || unit) && font.Width(together) <= 0.6 * room)
            {
                glued[^1] = together;
            }
            else
            {
                glued.Add(word);
            }
        }

        return glued;
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
