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
    // One line of title and of subtitle, x labels and x title take about this much of the picture's height, px.
    private const double Outside = 220;

    // Room of a header: over one panel the whole picture, over several what the names of their axes leave.
    private const double Margins = 60, Names = 100, LineHeight = 1.17;
    private readonly LinearAxis[] _axes;
    private readonly double[] _weights;
    private readonly int[] _lines;
    private readonly double _inside;

    /// <summary>Puts the y axes of a model one below the other.</summary>
    /// <param name="model">Receives the axes.</param>
    /// <param name="height">Height of the picture, px.</param>
    /// <param name="axes">One axis per panel, top to bottom.</param>
    /// <param name="weights">Relative heights; none = equal.</param>
    public Panels(PlotModel model, int height, LinearAxis[] axes, double[]? weights = null)
    {
        Model = model;
        _axes = axes;
        _weights = weights ?? [.. axes.Select(_ => 1.0)];
        _lines = [.. axes.Select(_ => 1)];
        _inside = Inside(model, height);
        for (int i = 0; i < axes.Length; i++)
        {
            axes[i].Key = Key(i);
            axes[i].IntervalLength = axes.Length == 1 ? 80 : 45;
            model.Axes.Add(axes[i]);
        }

        Arrange();
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
        Header(panel, room => new PanelHeader(Key(panel), words, entries) { Room = room });

    /// <summary>Height that title, subtitle and the header of a single panel take beyond one line each, px: for a picture whose scale must stay.</summary>
    /// <param name="model">Model with its title.</param>
    /// <param name="words">Plain words.</param>
    /// <param name="entries">Legend.</param>
    public static double MoreThanOneLine(PlotModel model, string words, params IReadOnlyList<HeaderEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(model);
        return TitleHeight(model) + ((HeaderLayout.Lines(words, entries, HeaderRoom(1)) - 1) * PanelHeader.LineHeight);
    }

    /// <summary>Adds a strip of its own kind over a panel.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="make">Makes it for a width, px.</param>
    public void Header(int panel, Func<double, PanelHeader> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        PanelHeader header = make(HeaderRoom(_axes.Length));
        _lines[panel] = header.Lines;
        Arrange();
        Model.Annotations.Add(header);
    }

    /// <summary>Lays the panels of a finished model out anew for a picture of another size: headers and panels as for a picture made so.</summary>
    /// <param name="model">Model whose title is broken for that size.</param>
    /// <param name="width">Width of the picture, px.</param>
    /// <param name="height">Height of the picture, px.</param>
    public static void Refit(PlotModel model, int width, int height)
    {
        ArgumentNullException.ThrowIfNull(model);
        LinearAxis[] axes = [.. model.Axes.OfType<LinearAxis>().Where(a => a.Position == AxisPosition.Left).OrderByDescending(a => a.EndPosition)];
        double[] weights = [.. axes.Select(a => a.EndPosition - a.StartPosition)];
        PanelHeader[] headers = [.. model.Annotations.OfType<PanelHeader>()];
        Array.ForEach(headers, h => h.Room = HeaderRoom(axes.Length, width));
        int[] lines = [.. axes.Select(a => headers.FirstOrDefault(h => h.YAxisKey == a.Key)?.Lines ?? 1)];
        Arrange(axes, weights, lines, Inside(model, height));
    }

    private static double Inside(PlotModel model, int height) => height - Outside - TitleHeight(model);

    private void Arrange() => Arrange(_axes, _weights, _lines, _inside);

    // Panels share what their headers leave.
    private static void Arrange(LinearAxis[] axes, double[] weights, int[] lines, double inside)
    {
        double[] gaps = [.. lines.Select(n => (PanelHeader.Margin + (n * PanelHeader.LineHeight)) / inside)];
        double free = 1 - gaps.Sum(), sum = weights.Sum(), top = 1;
        for (int i = 0; i < axes.Length; i++)
        {
            top -= gaps[i];
            axes[i].EndPosition = top;
            top -= free * weights[i] / sum;
            axes[i].StartPosition = Math.Max(0, top);
        }
    }

    private static double HeaderRoom(int panels, int width = ChartStyle.Width) => width - Margins - (panels > 1 ? Names : 0);

    // Of lines beyond the first.
    private static double TitleHeight(PlotModel model) => (ExtraLines(model.Title) * ChartStyle.TitleSize * LineHeight) + (ExtraLines(model.Subtitle) * ChartStyle.TextSize * LineHeight);

    private static int ExtraLines(string? text) => text?.Count(c => c == '\n') ?? 0;

    /// <summary>Adds a line of a quantity.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates.</param>
    /// <param name="look">Look of the quantity.</param>
    /// <param name="width">Thickness, px.</param>
    public void Line(int panel, ReadOnlySpan<double> x, ReadOnlySpan<double> y, Look look, double width = ChartStyle.LineWidth)
    {
        ArgumentNullException.ThrowIfNull(look);
        Line(panel, x, y, look.Color, width, look.Style);
    }

    /// <summary>Adds the markers of a quantity.</summary>
    /// <param name="panel">Panel from the top.</param>
    /// <param name="x">Abscissae.</param>
    /// <param name="y">Ordinates; NaN leaves one out.</param>
    /// <param name="look">Look of the quantity.</param>
    /// <param name="size">Half of a marker's width, px.</param>
    public void Dots(int panel, IEnumerable<double> x, IEnumerable<double> y, Look look, double size = 7)
    {
        ArgumentNullException.ThrowIfNull(look);
        bool open = look.Marker is MarkerType.Plus or MarkerType.Cross or MarkerType.Star;
        var dots = new ScatterSeries
        {
            YAxisKey = Key(panel),
            MarkerType = look.Marker,
            MarkerSize = size,
            MarkerFill = look.Color,
            MarkerStroke = open ? look.Color : OxyColors.Automatic,
            MarkerStrokeThickness = open ? 3 : 1,
        };
        dots.Points.AddRange(x.Zip(y, (a, b) => new ScatterPoint(a, b)));
        Model.Series.Add(dots);
    }

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
            Dashes = Look.Of(style),
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
