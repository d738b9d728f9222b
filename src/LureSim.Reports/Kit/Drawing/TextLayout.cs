using LureSim.Scenarios.Quantities;
using OxyPlot;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>Where each line of a text goes: one rule for SVG and PNG.</summary>
internal static class TextLayout
{
    /// <summary>Outer size of a text of one or more lines, in pixels.</summary>
    /// <param name="text">Text, lines split at line breaks.</param>
    /// <param name="size">Font size, px.</param>
    /// <param name="weight">Font weight.</param>
    public static OxySize Measure(string? text, double size, double weight)
    {
        if (string.IsNullOrEmpty(text))
        {
            return OxySize.Empty;
        }

        var font = FontMetrics.For(weight);
        string[] lines = Lines(text);
        return new OxySize(lines.Max(font.Width) * size, lines.Length * font.LineHeight * size);
    }

    /// <summary>Text split into lines, what cannot be seen escaped: a picture in SVG may not hold most of it.</summary>
    /// <param name="text">Any text.</param>
    public static string[] Lines(string text) => PlainText.Escape(text.ReplaceLineEndings("\n"), keepLines: true).Split('\n');

    /// <summary>Baseline anchor of every line.</summary>
    /// <param name="p">Anchor of the whole text.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="size">Font size, px.</param>
    /// <param name="weight">Font weight.</param>
    /// <param name="rotation">Clockwise on the screen, deg.</param>
    /// <param name="vertical">Which edge of the whole text lies at the anchor.</param>
    public static ScreenPoint[] Baselines(
        ScreenPoint p, string[] lines, double size, double weight, double rotation, VerticalAlignment vertical)
    {
        var font = FontMetrics.For(weight);
        double height = lines.Length * font.LineHeight * size;
        double top = vertical switch
        {
            VerticalAlignment.Top => 0,
            VerticalAlignment.Middle => -height / 2,
            _ => -height,
        };
        (double sin, double cos) = Math.SinCos(rotation * Math.PI / 180);
        var points = new ScreenPoint[lines.Length];
        for (int i = 0; i < lines.Length; i++)
        {
            double dy = top + (((i * font.LineHeight) + font.Ascent) * size);
            points[i] = new ScreenPoint(p.X - (sin * dy), p.Y + (cos * dy));
        }

        return points;
    }

    /// <summary>Share of a line's width that lies left of the anchor: 0, 0.5 or 1.</summary>
    /// <param name="horizontal">Alignment.</param>
    public static double LeftShare(HorizontalAlignment horizontal) => horizontal switch
    {
        HorizontalAlignment.Left => 0,
        HorizontalAlignment.Center => 0.5,
        _ => 1,
    };
}
