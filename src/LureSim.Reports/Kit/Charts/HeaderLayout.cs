using LureSim.Reports.Kit.Drawing;
using OxyPlot;

namespace LureSim.Reports.Kit.Charts;

/// <summary>How words and legend of a panel share lines: side by side where both fit, else the words first and the legend below, broken between entries.</summary>
internal static class HeaderLayout
{
    /// <summary>Width of a swatch, px.</summary>
    public const double SwatchWidth = 48;

    /// <summary>Gap between swatch and label, px; between entries it is three times as wide.</summary>
    public const double Gap = 12;

    // A name longer than this is cut, px.
    private const double LongestLabel = 640;

    /// <summary>A label as drawn.</summary>
    /// <param name="label">Label.</param>
    public static string Fit(string label) => TextFit.Wrap(label, ChartStyle.TextSize, FontWeights.Normal, LongestLabel, 1);

    /// <summary>Words as drawn.</summary>
    /// <param name="words">Words.</param>
    /// <param name="room">Width that there is, px.</param>
    public static string Fit(string words, double room) => TextFit.Wrap(words, ChartStyle.HeaderSize, FontWeights.Bold, room, 1);

    /// <summary>Width of the words, px.</summary>
    /// <param name="words">Words.</param>
    public static double Width(string words) => TextLayout.Measure(words, ChartStyle.HeaderSize, FontWeights.Bold).Width;

    /// <summary>Width of an entry with its gap, px.</summary>
    /// <param name="entry">Entry.</param>
    public static double Width(HeaderEntry entry) => SwatchWidth + TextLayout.Measure(Fit(entry.Label), ChartStyle.TextSize, FontWeights.Normal).Width + (3 * Gap);

    /// <summary>Rows of the legend; the first stands beside the words where <see cref="IsBeside"/>.</summary>
    /// <param name="words">Words.</param>
    /// <param name="entries">Legend.</param>
    /// <param name="room">Width that there is, px.</param>
    public static IReadOnlyList<IReadOnlyList<HeaderEntry>> Rows(string words, IReadOnlyList<HeaderEntry> entries, double room)
    {
        if (entries.Count == 0)
        {
            return [];
        }

        if (IsBeside(words, entries, room))
        {
            return [entries];
        }

        var rows = new List<List<HeaderEntry>> { new() };
        double used = 0;
        foreach (HeaderEntry entry in entries)
        {
            double width = Width(entry);
            if (used > 0 && used + width > room)
            {
                rows.Add([]);
                used = 0;
            }

            rows[^1].Add(entry);
            used += width;
        }

        return rows;
    }

    /// <summary>True when words and legend fit on one line.</summary>
    /// <param name="words">Words.</param>
    /// <param name="entries">Legend.</param>
    /// <param name="room">Width that there is, px.</param>
    public static bool IsBeside(string words, IReadOnlyList<HeaderEntry> entries, double room) =>
        (words.Length > 0 ? Width(words) + (2 * Gap) : 0) + entries.Sum(Width) <= room;

    /// <summary>Number of lines, at least 1.</summary>
    /// <param name="words">Words.</param>
    /// <param name="entries">Legend.</param>
    /// <param name="room">Width that there is, px.</param>
    public static int Lines(string words, IReadOnlyList<HeaderEntry> entries, double room)
    {
        int rows = Rows(words, entries, room).Count;
        return Math.Max(1, words.Length > 0 && rows > 0 && !IsBeside(words, entries, room) ? rows + 1 : rows);
    }
}
