using OxyPlot;
using OxyPlot.SkiaSharp;
using SkiaSharp;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>
/// Skia canvas whose text comes from the embedded font. The base class asks the system for a font and, on a machine
/// without any, writes a picture with no text at all; so the two text members are implemented anew here.
/// </summary>
internal sealed class PngCanvas : SkiaRenderContext, IRenderContext
{
    public PngCanvas(SKCanvas canvas)
    {
        SkCanvas = canvas;
        RenderTarget = RenderTarget.PixelGraphic;
        UseTextShaping = false;
    }

    OxySize IRenderContext.MeasureText(string text, string? fontFamily, double fontSize, double fontWeight) =>
        TextLayout.Measure(text, fontSize, fontWeight);

    void IRenderContext.DrawText(
        ScreenPoint p,
        string text,
        OxyColor fill,
        string? fontFamily,
        double fontSize,
        double fontWeight,
        double rotation,
        HorizontalAlignment horizontalAlignment,
        VerticalAlignment verticalAlignment,
        OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || !fill.IsVisible())
        {
            return;
        }

        string[] lines = TextLayout.Lines(text);
        ScreenPoint[] at = TextLayout.Baselines(p, lines, fontSize, fontWeight, rotation, verticalAlignment);
        var metrics = FontMetrics.For(fontWeight);
        using SKFont font = FontFaces.New(fontSize, fontWeight >= FontFile.BoldFrom);
        using var paint = new SKPaint { Color = fill.ToSKColor(), IsAntialias = true };
        for (int i = 0; i < lines.Length; i++)
        {
            using var restore = new SKAutoCanvasRestore(SkCanvas);
            SkCanvas.Translate((float)at[i].X, (float)at[i].Y);
            SkCanvas.RotateDegrees((float)rotation);
            double dx = -TextLayout.LeftShare(horizontalAlignment) * metrics.Width(lines[i]) * fontSize;
            SkCanvas.DrawText(lines[i], (float)dx, 0, font, paint);
        }
    }
}
