using LureSim.Reports.Kit.Drawing;
using LureSim.Scenarios.Quantities;
using OxyPlot.SkiaSharp;
using SkiaSharp;

namespace LureSim.Reports.Kit.Plans;

/// <summary>Draws a plan on a Skia canvas whose unit is a millimetre: one code for pages and for pixels.</summary>
internal static class PlanCanvas
{
    /// <summary>Draws.</summary>
    /// <param name="canvas">Canvas, scaled to millimetres.</param>
    /// <param name="items">What is on the plan.</param>
    public static void Draw(SKCanvas canvas, IReadOnlyList<PlanItem> items)
    {
        foreach (PlanItem item in items)
        {
            switch (item)
            {
                case PlanPath p:
                    Path(canvas, p);
                    break;
                case PlanCircle c:
                    using (SKPaint paint = Stroke(c.Pen))
                    {
                        canvas.DrawCircle(Point(c.Centre), (float)c.RadiusMm, paint);
                    }

                    break;
                case PlanText t:
                    Words(canvas, t);
                    break;
                case PlanWindow w:
                    using (new SKAutoCanvasRestore(canvas))
                    {
                        canvas.ClipRect(SKRect.Create((float)w.Corner.X, (float)w.Corner.Y, (float)w.WidthMm, (float)w.HeightMm));
                        canvas.Translate((float)(w.Corner.X - w.From.X), (float)(w.Corner.Y - w.From.Y));
                        Draw(canvas, w.Items);
                    }

                    break;
                default:
                    throw new NotSupportedException($"a {item.GetType().Name} cannot be drawn yet");
            }
        }
    }

    private static void Path(SKCanvas canvas, PlanPath p)
    {
        using var builder = new SKPath();
        builder.AddPoly([.. p.Points.Select(Point)], p.Closed);
        using SKPaint paint = Stroke(p.Pen);
        canvas.DrawPath(builder, paint);
    }

    // As shapes: a PDF with the two whole fonts in it would be ten times as large.
    private static void Words(SKCanvas canvas, PlanText t)
    {
        string text = PlainText.Escape(t.Text);
        using SKFont font = FontFaces.New(t.SizeMm, t.Bold);
        using var paint = new SKPaint { Color = t.Colour.ToSKColor(), IsAntialias = true };
        double width = FontMetrics.For(t.Bold ? FontFile.BoldFrom : 0.0).Width(text) * t.SizeMm;
        double left = t.At.X - (t.Anchor switch { PlanAnchor.Start => 0.0, PlanAnchor.Middle => 0.5, _ => 1.0 } * width);
        using SKPath letters = font.GetTextPath(text, new SKPoint((float)left, (float)t.At.Y));
        canvas.DrawPath(letters, paint);
    }

    private static SKPaint Stroke(PlanPen pen) => new()
    {
        Style = SKPaintStyle.Stroke,
        Color = pen.Colour.ToSKColor(),
        StrokeWidth = (float)pen.WidthMm,
        StrokeJoin = SKStrokeJoin.Round,
        IsAntialias = true,
        PathEffect = pen.DashMm > 0.0 ? SKPathEffect.CreateDash([(float)pen.DashMm, (float)pen.DashMm], 0f) : null,
    };

    private static SKPoint Point(PlanPoint p) => new((float)p.X, (float)p.Y);
}
