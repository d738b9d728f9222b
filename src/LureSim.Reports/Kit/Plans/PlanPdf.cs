using LureSim.Scenarios.Quantities;
using SkiaSharp;

namespace LureSim.Reports.Kit.Plans;

/// <summary>Sheets as a PDF, a page each, at true scale. It carries no date and its letters are shapes: the same bytes for the same sheets. Loads native Skia on first use.</summary>
public static class PlanPdf
{
    // A point of PDF is 1/72 in (ISO 32000).
    private const double PointsPerMm = 72.0 / 25.4;

    // Skia rounds the size of a page to its dots; nothing here is drawn by dots.
    private const float DotsPerInch = 7200f;

    /// <summary>The file.</summary>
    /// <param name="sheets">Pages, at least one.</param>
    /// <param name="title">Title that programs show; any text.</param>
    public static byte[] Write(IReadOnlyList<PlanSheet> sheets, string title)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        using var stream = new MemoryStream();
        var about = new SKDocumentPdfMetadata { Title = PlainText.Escape(title), RasterDpi = DotsPerInch };
        using (SKDocument document = SKDocument.CreatePdf(stream, about))
        {
            foreach (PlanSheet sheet in sheets)
            {
                SKCanvas canvas = document.BeginPage((float)(sheet.WidthMm * PointsPerMm), (float)(sheet.HeightMm * PointsPerMm));
                canvas.Scale((float)PointsPerMm);
                PlanCanvas.Draw(canvas, sheet.Items);
                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }
}
