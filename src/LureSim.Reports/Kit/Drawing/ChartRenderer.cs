using System.Text;
using OxyPlot;
using SkiaSharp;

namespace LureSim.Reports.Kit.Drawing;

/// <summary>Turns a <see cref="Chart"/> into the bytes of a picture: the same bytes for the same chart.</summary>
public static class ChartRenderer
{
    /// <summary>The chart as an SVG document in UTF-8 with a view box, so that it scales.</summary>
    /// <param name="chart">What to draw.</param>
    public static byte[] Svg(Chart chart)
    {
        using var stream = new MemoryStream();
        IPlotModel model = chart.Model;
        using (var canvas = new SvgCanvas(stream, chart.Width, chart.Height, OxyColors.White))
        {
            model.Update(true);
            model.Render(canvas, new OxyRect(0, 0, chart.Width, chart.Height));
            canvas.Complete();
            canvas.Flush();
        }

        string size = $"width=\"{chart.Width}\" height=\"{chart.Height}\"";
        string text = Encoding.UTF8.GetString(stream.ToArray()).TrimStart('\uFEFF').ReplaceLineEndings("\n");
        int at = text.IndexOf(size, StringComparison.Ordinal);
        string boxed = text.Insert(at, $"viewBox=\"0 0 {chart.Width} {chart.Height}\" ");
        return Encoding.UTF8.GetBytes(boxed + "\n");
    }

    /// <summary>The chart as a PNG file. Loads native Skia on first use.</summary>
    /// <param name="chart">What to draw.</param>
    /// <param name="width">Width of the picture in pixels; 0 = that of the chart. Everything is drawn larger or smaller with it.</param>
    public static byte[] Png(Chart chart, int width = 0)
    {
        double scale = width > 0 ? (double)width / chart.Width : 1.0;
        using var bitmap = new SKBitmap((int)Math.Round(scale * chart.Width), (int)Math.Round(scale * chart.Height));
        IPlotModel model = chart.Model;
        using (var canvas = new SKCanvas(bitmap))
        using (var context = new PngCanvas(canvas))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale((float)scale);
            model.Update(true);
            model.Render(context, new OxyRect(0, 0, chart.Width, chart.Height));
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
