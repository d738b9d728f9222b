using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using SkiaSharp;

namespace LureSim.Reports.Tests.Drawing;

public sealed class FontMetricsTests
{
    [Theory]
    [InlineData("Heading, deg 0123456789", 400)]
    [InlineData("Pull, slack and turn: 156°", 700)]
    [InlineData("η ≤ µ × λ — é", 400)]
    public void Widths_equal_those_of_the_drawing_library(string text, double weight)
    {
        using SKTypeface face = SKTypeface.FromData(SKData.CreateCopy(FontFile.Read(weight >= 600)));
        using var font = new SKFont(face, 100) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
        // Skia keeps advances in 1/64 px; 0.02 px a glyph at 100 px is that and single precision.
        Assert.Equal(font.MeasureText(face.GetGlyphs(text)), 100 * FontMetrics.For(weight).Width(text), 0.02 * text.Length);
    }

    [Fact]
    public void Line_height_is_that_of_the_font_file()
    {
        // hhea of DejaVu Sans: ascent 1901, descent -483 of 2048 units.
        Assert.Equal(1901 / 2048.0, FontMetrics.For(400).Ascent, 12);
        Assert.Equal(483 / 2048.0, FontMetrics.For(400).Descent, 12);
    }

    [Fact]
    public void A_character_without_glyph_has_glyph_zero() => Assert.Equal(0, FontMetrics.For(400).Glyph('\u4e00'));

    [Fact]
    public void Two_lines_are_twice_as_high_and_turn_about_their_anchor()
    {
        OxySize one = TextLayout.Measure("ab", 20, 400), two = TextLayout.Measure("ab\r\nabc", 20, 400);
        Assert.Equal(2 * one.Height, two.Height, 9);
        Assert.True(two.Width > one.Width);
        ScreenPoint[] flat = TextLayout.Baselines(default, ["a", "b"], 20, 400, 0, VerticalAlignment.Middle);
        ScreenPoint[] up = TextLayout.Baselines(default, ["a", "b"], 20, 400, -90, VerticalAlignment.Middle);
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(flat[i].Y, up[i].X, 9);
            Assert.Equal(flat[i].X, -up[i].Y, 9);
        }
    }
}
