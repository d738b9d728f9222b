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
    public string Text => Name.Length == 0 ? $"{Number}" : $"{Number}: {Name}";
}

/// <summary>Writes tags beside their places, where they cover least of what is drawn; those of nearly one place stand together.</summary>
internal static class Tags
{
    // Places nearer than this are one; distances of a tag from its place; px.
    private const double Near = 22, Edge = 6, Lead = 30;
    private static readonly double[] Off = [14, 44, 90];
    private static readonly ScreenVector[] Directions = [new(0, -1), new(1, -1), new(-1, -1), new(1, 1), new(-1, 1), new(0, 1), new(1, 0), new(-1, 0)];

    /// <summary>Draws them, with a stroke to the place where it is not near.</summary>
    /// <param name="rc">Canvas.</param>
    /// <param name="font">Font.</param>
    /// <param name="room">Where they may stand, px.</param>
    /// <param name="tags">Tags.</param>
    /// <param name="drawn">Points of what is drawn, px.</param>
    public static void Draw(IRenderContext rc, string font, OxyRect room, IReadOnlyList<Tag> tags, IReadOnlyList<ScreenPoint> drawn)
    {
        IReadOnlyList<(string Text, OxyRect Box, ScreenPoint At)> placed = Place(room, tags, drawn);
        foreach ((_, OxyRect box, ScreenPoint at) in placed)
        {
            var edge = new ScreenPoint(Math.Clamp(at.X, box.Left, box.Right), Math.Clamp(at.Y, box.Top, box.Bottom));
            if (edge.DistanceTo(at) > Lead)
            {
                rc.DrawLine([edge, at], ChartStyle.Grey, 1.5, EdgeRenderingMode.PreferGeometricAccuracy, null, LineJoin.Round);
            }
        }

        foreach ((string text, OxyRect box, _) in placed)
        {
            rc.DrawRectangle(box, ChartStyle.Faint(OxyColors.White, 0.85), OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
            rc.DrawText(
                new ScreenPoint(box.Left + (0.5 * box.Width), box.Top + (0.5 * box.Height)), text, ChartStyle.Ink, font, ChartStyle.TextSize, FontWeights.Bold, 0,
                HorizontalAlignment.Center, VerticalAlignment.Middle);
        }
    }

    /// <summary>Words, boxes and places of what stands together.</summary>
    /// <param name="room">Where they may stand, px.</param>
    /// <param name="tags">Tags.</param>
    /// <param name="drawn">Points of what is drawn, px.</param>
    /// <param name="letters">Size of the letters, px.</param>
    public static IReadOnlyList<(string Text, OxyRect Box, ScreenPoint At)> Place(
        OxyRect room, IReadOnlyList<Tag> tags, IReadOnlyList<ScreenPoint> drawn, double letters = ChartStyle.TextSize)
    {
        ArgumentNullException.ThrowIfNull(tags);
        var placed = new List<(string Text, OxyRect Box, ScreenPoint At)>();
        double scale = letters / ChartStyle.TextSize;
        foreach ((string text, ScreenPoint at) in Together(tags, Near * scale))
        {
            OxySize size = TextLayout.Measure(text, letters, FontWeights.Bold);
            OxyRect best = Off.SelectMany(off => Directions.Select(d => Box(room, at, size, d * (off * scale))))
                .MinBy(box => drawn.Count(p => Holds(box, p)) + (1000 * placed.Count(p => Overlap(box, p.Box))));
            placed.Add((text, best, at));
        }

        return placed;
    }

    /// <summary>Points along a polyline, near enough to each other to be found under a tag.</summary>
    /// <param name="corners">Corners, px.</param>
    public static IEnumerable<ScreenPoint> Along(IReadOnlyList<ScreenPoint> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        for (int i = 1; i < corners.Count; i++)
        {
            int pieces = (int)Math.Clamp(corners[i].DistanceTo(corners[i - 1]) / 6.0, 1.0, 400.0);
            for (int k = 0; k < pieces; k++)
            {
                yield return corners[i - 1] + ((corners[i] - corners[i - 1]) * ((double)k / pieces));
            }
        }
    }

    private static List<(string Text, ScreenPoint At)> Together(IReadOnlyList<Tag> tags, double near)
    {
        var groups = new List<(string Text, ScreenPoint At)>();
        foreach (Tag tag in tags)
        {
            int same = groups.FindIndex(g => g.At.DistanceTo(tag.At) < near);
            if (same >= 0)
            {
                groups[same] = ($"{groups[same].Text}, {tag.Text}", groups[same].At);
            }
            else
            {
                groups.Add((tag.Text, tag.At));
            }
        }

        return groups;
    }

    private static OxyRect Box(OxyRect room, ScreenPoint at, OxySize size, ScreenVector off)
    {
        double width = size.Width + (2 * Edge), height = size.Height;
        double left = at.X + off.X - (off.X > 0 ? 0 : off.X < 0 ? width : 0.5 * width), top = at.Y + off.Y - (off.Y > 0 ? 0 : off.Y < 0 ? height : 0.5 * height);
        return new(Math.Clamp(left, room.Left, Math.Max(room.Left, room.Right - width)), Math.Clamp(top, room.Top, Math.Max(room.Top, room.Bottom - height)), width, height);
    }

    private static bool Holds(OxyRect box, ScreenPoint p) => p.X > box.Left && p.X < box.Right && p.Y > box.Top && p.Y < box.Bottom;

    private static bool Overlap(OxyRect a, OxyRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
