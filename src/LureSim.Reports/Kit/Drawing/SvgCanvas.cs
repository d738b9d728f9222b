using OxyPlot;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>
/// SVG canvas that places every line of text on its baseline by the embedded font's own measures: viewers disagree on
/// the other baselines, and none is asked for a width.
/// </summary>
internal sealed class SvgCanvas(Stream stream, double width, double height, OxyColor background)
    : SvgRenderContext(stream, width, height, true, new PdfRenderContext(1, 1, background), background, false)
{
    // The base class insists on a measurer (the PDF one above needs no native code); it is never asked.
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        TextLayout.Measure(text, fontSize, fontWeight);

    // Dashes count in thicknesses of the line, as in pixel pictures; the base class takes them for pixels.
    public override void DrawLine(
        IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin) =>
        base.DrawLine(points, stroke, thickness, edgeRenderingMode, dashArray is null ? null : Array.ConvertAll(dashArray, d => d * thickness), lineJoin);

    public override void DrawText(
        ScreenPoint p,
        string text,
        OxyColor c,
        string fontFamily,
        double fontSize,
        double fontWeight,
        double rotate,
        HorizontalAlignment halign,
        VerticalAlignment valign,
        OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || !c.IsVisible())
        {
            return;
        }

        string[] lines = TextLayout.Lines(text);
        ScreenPoint[] at = TextLayout.Baselines(p, lines, fontSize, fontWeight, rotate, valign);
        for (int i = 0; i < lines.Length; i++)
        {
            base.DrawText(
                at[i], lines[i], c, FontFile.Family, fontSize, fontWeight, rotate, halign, VerticalAlignment.Bottom, null);
        }
    }
}
