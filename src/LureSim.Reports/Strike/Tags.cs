using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;

namespace LureSim.Reports.Strike;

/// <summary>The number of a moment, and perhaps its name, at a place of a picture.</summary>
/// <param name="Number">Number.</param>
/// <param name="At">Place, px.</param>
/// <param name="Name">Name; empty for the number alone.</param>
internal readonly record struct Tag(int Number, ScreenPoint At, string Name = "")
{
    /// <summary>As written.</summary>
    public string Text => Name.Length == 0 ? $"{Number}" : $"{Number} {Name}";
}

/// <summary>Writes tags over their places; those that would lie on each other stand together, one after the other.</summary>
internal static class Tags
{
    private const double Lift = 12, Edge = 6;

    /// <summary>Draws them.</summary>
    /// <param name="rc">Canvas.</param>
    /// <param name="font">Font.</param>
    /// <param name="room">Where they may stand, px.</param>
    /// <param name="tags">Tags.</param>
    public static void Draw(IRenderContext rc, string font, OxyRect room, IReadOnlyList<Tag> tags)
    {
        foreach ((string text, OxyRect box) in Place(room, tags))
        {
            rc.DrawRectangle(box, ChartStyle.Faint(OxyColors.White, 0.85), OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
            rc.DrawText(
                new ScreenPoint(box.Left + (0.5 * box.Width), box.Top + (0.5 * box.Height)), text, ChartStyle.Ink, font, ChartStyle.TextSize, FontWeights.Bold, 0,
                HorizontalAlignment.Center, VerticalAlignment.Middle);
        }
    }

    /// <summary>Words and boxes of what stands together.</summary>
    /// <param name="room">Where they may stand, px.</param>
    /// <param name="tags">Tags.</param>
    public static IReadOnlyList<(string Text, OxyRect Box)> Place(OxyRect room, IReadOnlyList<Tag> tags)
    {
        List<(string Text, ScreenPoint At)> groups = [.. tags.Select(t => (t.Text, t.At))];
        while (Clash(room, groups) is (int first, int second))
        {
            // The later one gives its place up.
            groups[first] = ($"{groups[first].Text}, {groups[second].Text}", groups[first].At);
            groups.RemoveAt(second);
        }

        return [.. groups.Select(g => (g.Text, Box(room, g.Text, g.At)))];
    }

    private static (int First, int Second)? Clash(OxyRect room, IReadOnlyList<(string Text, ScreenPoint At)> groups)
    {
        for (int i = 0; i < groups.Count; i++)
        {
            for (int j = i + 1; j < groups.Count; j++)
            {
                if (Overlap(Box(room, groups[i].Text, groups[i].At), Box(room, groups[j].Text, groups[j].At)))
                {
                    return (i, j);
                }
            }
        }

        return null;
    }

    private static bool Overlap(OxyRect a, OxyRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static OxyRect Box(OxyRect room, string text, ScreenPoint at)
    {
        OxySize size = TextLayout.Measure(text, ChartStyle.TextSize, FontWeights.Bold);
        double width = size.Width + (2 * Edge), left = Math.Clamp(at.X - (0.5 * width), room.Left, Math.Max(room.Left, room.Right - width));
        return new(left, Math.Max(room.Top, at.Y - Lift - size.Height), width, size.Height);
    }
}
