using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Annotations;

namespace LureSim.Reports.Compare;

/// <summary>Puts simple shapes, and words that stay inside their cell, onto a page whose axes count pixels from the upper left.</summary>
/// <param name="model">Page.</param>
internal sealed class PageBrush(PlotModel model)
{
    /// <summary>A filled box.</summary>
    public void Box(double left, double top, double width, double height, OxyColor fill, OxyColor? rim = null) => model.Annotations.Add(new RectangleAnnotation
    {
        MinimumX = left,
        MaximumX = left + Math.Max(0.0, width),
        MinimumY = top,
        MaximumY = top + Math.Max(0.0, height),
        Fill = fill,
        Stroke = rim ?? OxyColors.Undefined,
        StrokeThickness = rim is null ? 0 : 2,
        Layer = AnnotationLayer.AboveSeries,
    });

    /// <summary>A disc.</summary>
    public void Disc(double x, double y, double radius, OxyColor fill) => model.Annotations.Add(new PointAnnotation
    {
        X = x,
        Y = y,
        Size = radius,
        Shape = MarkerType.Circle,
        Fill = fill,
        Layer = AnnotationLayer.AboveSeries,
    });

    /// <summary>A line through points.</summary>
    public void Line(IEnumerable<DataPoint> points, OxyColor color, double width, bool dashed = false)
    {
        var line = new PolylineAnnotation { Color = color, StrokeThickness = width, LineStyle = dashed ? LineStyle.Dash : LineStyle.Solid, LineJoin = LineJoin.Round, Layer = AnnotationLayer.AboveSeries };
        line.Points.AddRange(points);
        model.Annotations.Add(line);
    }

    /// <summary>Words of one or more lines, made smaller where they would be wider than their room.</summary>
    public void Words(double x, double y, string text, double room, HorizontalAlignment where, double size = ChartStyle.TextSize, bool bold = false, OxyColor? color = null)
    {
        double weight = bold ? FontWeights.Bold : FontWeights.Normal, wide = TextLayout.Measure(text, size, weight).Width;
        model.Annotations.Add(new TextAnnotation
        {
            Text = text,
            TextPosition = new DataPoint(x, y),
            Stroke = OxyColors.Undefined,
            Padding = new OxyThickness(0),
            FontSize = wide > room ? size * room / wide : size,
            FontWeight = weight,
            TextColor = color ?? ChartStyle.Ink,
            TextHorizontalAlignment = where,
            TextVerticalAlignment = VerticalAlignment.Middle,
            Layer = AnnotationLayer.AboveSeries,
        });
    }
}
