using SkiaSharp;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>The embedded typefaces for Skia, read once. Loads native code.</summary>
internal static class FontFaces
{
    private static readonly Lazy<SKTypeface> RegularFace = new(() => Load(bold: false));
    private static readonly Lazy<SKTypeface> BoldFace = new(() => Load(bold: true));

    /// <summary>A font without hinting and with linear advances: its widths are those of the font file, as measured for the layout.</summary>
    /// <param name="size">Size, in units of the canvas.</param>
    /// <param name="bold">Bold instead of regular.</param>
    public static SKFont New(double size, bool bold) => new((bold ? BoldFace : RegularFace).Value, (float)size)
    {
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
        Subpixel = true,
        Edging = SKFontEdging.Antialias,
    };

    private static SKTypeface Load(bool bold)
    {
        using SKData data = SKData.CreateCopy(FontFile.Read(bold));
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException("the embedded font cannot be read");
    }
}
