using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Kit.Charts;

/// <summary>
/// Panels over one x axis: several y axes of one model, each on its share of the height. Panel 0 is the topmost.
/// </summary>
public sealed class Panels
{
    // Title, subtitle, x labels and x title take about this much of the picture's height, px.
    private const double Outside = 220;
    private readonly LinearAxis[] _axes;

    /// <summary>Puts the y axes of a model one below the other.</summary>
    /// <param name="model">Receives the axes.</param>
    /// <param name="height">Height of the picture, px.</param>
    /// <param name="axes">One axis per panel, top to bottom.</param>
    /// <param name="weights">Relative heights; none = equal.</param>
    public Panels(PlotModel model, int height, LinearAxis[] axes, double[]? weights = null)
    {
        Model = model;
        _axes = axes;
        double gap = PanelHeader.Height / (height - Outside);
        double free = 1 - (axes.Length * gap);
        double sum = weights?.Sum() ?? axes.Length;
        double top = 1;
        for (int i = 0; i < axes.Length; i++)
        {
            double share = free * (weights?[i] ?? 1) / sum;
            top -= gap;
            axes[i].Key = Key(i);
            axes[i].IntervalLength = axes.Length == 1 ? 80 : 45;
            axes[i].EndPosition = top;
            axes[i].StartPosition = Math.Max(0, top - share);
            top -= share;
            model.Axes.Add(axes[i]);
        }
    }

    /// <summary>The model.</summary>
    public PlotModel Model { get; }

    /// <summary>Key of a panel's y axis.</summary>
    /// <param name="panel">Panel from the top.</param>
    public static string Key(int panel) => "y" + panel;

    /// <summary>Upper end of a panel, as a share of the plot's height from below.</summary>
    /// <param name="panel">Panel from the top.</param>
    public double Top(int panel) => _axes[panel].EndPosition;

    /// <summary>Adds the strip of words and legend over a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="words">Plain words.</param>
    /// <param name="entries">Legend.</param>
    public void Header(int panel, string words, params IReadOnlyList<HeaderEntry> entries) =>
        Model.Annotations.Add(new PanelHeader(Key(panel), words, entries));

    /// <summary>Adds a line.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="color">Colour.</param>
    /// <param name="width">Thickness, px.</param>
    /// <param name="style">Solid or dashed.</param>
    public void Line(
        int panel, ReadOnlySpan<double> x, ReadOnlySpan<double> y, OxyColor color, double width = ChartStyle.LineWidth,
        LineStyle style = LineStyle.Solid)
    {
        var line = new LineSeries
        {
            YAxisKey = Key(panel),
            Color = color,
            StrokeThickness = width,
            LineStyle = style,
            LineJoin = LineJoin.Round,
        };
        for (int i = 0; i < x.Length; i++)
        {
            line.Points.Add(new DataPoint(x[i], y[i]));
        }

        Model.Series.Add(line);
    }

    /// <summary>Shades a span of x over the height of a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    /// <param name="fill">Colour.</param>
    public void Shade(int panel, double from, double to, OxyColor fill) =>
        Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Key(panel),
            MinimumX = from,
            MaximumX = to,
            Fill = fill,
            Layer = AnnotationLayer.BelowSeries,
            MinimumY = _axes[panel].Minimum,
            MaximumY = _axes[panel].Maximum,
        });

    /// <summary>Marks a span of x by a strip along the top of a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    /// <param name="fill">Colour.</param>
    public void Strip(int panel, double from, double to, OxyColor fill)
    {
        double top = _axes[panel].Maximum, range = top - _axes[panel].Minimum;
        Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Key(panel),
            MinimumX = from,
            MaximumX = to,
            Fill = fill,
            Layer = AnnotationLayer.AboveSeries,
            MinimumY = top - (0.07 * range),
            MaximumY = top,
        });
    }

    /// <summary>Writes words into the free part of a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="x">Middle of the words.</param>
    /// <param name="y">Middle of the words.</param>
    /// <param name="text">One or more lines.</param>
    /// <param name="ground">Colour behind the words; none = see-through.</param>
    public void Words(int panel, double x, double y, string text, OxyColor? ground = null) =>
        Model.Annotations.Add(new TextAnnotation
        {
            YAxisKey = Key(panel),
            Text = text,
            TextPosition = new DataPoint(x, y),
            Stroke = OxyColors.Undefined,
            FontSize = ChartStyle.TextSize,
            TextHorizontalAlignment = HorizontalAlignment.Center,
            TextVerticalAlignment = VerticalAlignment.Middle,
            Background = ground ?? OxyColors.Undefined,
        });

    /// <summary>Draws a level across a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="y">Level.</param>
    /// <param name="color">Colour.</param>
    public void Level(int panel, double y, OxyColor color) =>
        Model.Annotations.Add(new LineAnnotation
        {
            YAxisKey = Key(panel),
            Type = LineAnnotationType.Horizontal,
            Y = y,
            Color = color,
            StrokeThickness = 2.5,
            LineStyle = LineStyle.Solid,
            Layer = AnnotationLayer.BelowSeries,
        });
}
