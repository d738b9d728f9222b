using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;

namespace LureSim.Reports.Strike;

/// <summary>The number of a moment, and perhaps its name, at a place of a picture.</summary>
/// <param name="Number">Number.</param>
/// <param name="At">Place, px.</param>
/// <param name="Name">Name; empty for the number alone.</param>
/// <param name="Below">True where it stands under its place and to the left instead of over it.</param>
internal readonly record struct Tag(int Number, ScreenPoint At, string Name = "", bool Below = false)
{
    /// <summary>As written.</summary>
    public string Text => Name.Length == 0 ? $"{Number}" : $"{Number}: {Name}";
}

/// <summary>Writes tags beside their places; those that would lie on each other stand together, one after the other.</summary>
internal static class Tags
{
    // Under a place, so far that a rod which rises by a third stays free.
    private const double Lift = 12, Edge = 6, Slope = 0.36;

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
        List<(string Text, Tag First)> groups = [.. tags.Select(t => (t.Text, t))];
        while (Clash(room, groups) is (int first, int second))
        {
            // The later one gives its place up.
            groups[first] = ($"{groups[first].Text}, {groups[second].Text}", groups[first].First);
            groups.RemoveAt(second);
        }

        return [.. groups.Select(g => (g.Text, Box(room, g.Text, g.First)))];
    }

    private static (int First, int Second)? Clash(OxyRect room, List<(string Text, Tag First)> groups)
    {
        for (int i = 0; i < groups.Count; i++)
        {
            for (int j = i + 1; j < groups.Count; j++)
            {
                if (Overlap(Box(room, groups[i].Text, groups[i].First), Box(room, groups[j].Text, groups[j].First)))
                {
                    return (i, j);
                }
            }
        }

        return null;
    }

    private static bool Overlap(OxyRect a, OxyRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static OxyRect Box(OxyRect room, string text, Tag tag)
    {
        OxySize size = TextLayout.Measure(text, ChartStyle.TextSize, FontWeights.Bold);
        double width = size.Width + (2 * Edge), left = tag.At.X - (tag.Below ? width : 0.5 * width), top = tag.Below ? tag.At.Y + Lift + (Slope * width) : tag.At.Y - Lift - size.Height;
        return new(
            Math.Clamp(left, room.Left, Math.Max(room.Left, room.Right - width)), Math.Clamp(top, room.Top, Math.Max(room.Top, room.Bottom - size.Height)), width, size.Height);
    }
}
