using System.Globalization;
using LureSim.Reports.Kit.Drawing;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Kit.Charts;

/// <summary>Maps over two quantities: classes as coloured cells, a number as contours or as shade.</summary>
public static class StudyMap
{
    private const int MostLevels = 7;

    // The plot between its axes and the bar of shades, px, about.
    private const double PlotWidth = 1300.0, PlotHeight = 720.0;

    private static readonly double[] RoundSteps = [1, 2, 5, 10, 20];

    /// <summary>Classes as coloured cells, their names written into their regions.</summary>
    /// <param name="name">File stem.</param>
    /// <param name="title">What the picture says, with its number.</param>
    /// <param name="subtitle">What it is about.</param>
    /// <param name="xTitle">Abscissa and unit.</param>
    /// <param name="yTitle">Ordinate and unit.</param>
    /// <param name="cells">Index into <paramref name="classes"/> per cell; negative or NaN = empty.</param>
    /// <param name="classes">Classes in the order of their index.</param>
    public static Chart Classes(
        string name, string title, string subtitle, string xTitle, string yTitle, StudyGrid cells, IReadOnlyList<StudyClass> classes)
    {
        PlotModel model = ChartStyle.NewModel(title, subtitle);
        Panels panels = Frame(model, cells, xTitle, yTitle);
        for (int i = 0; i < cells.X.Length; i++)
        {
            for (int j = 0; j < cells.Y.Length; j++)
            {
                double index = cells.Values[i, j];
                if (index >= 0)
                {
                    model.Annotations.Add(Cell(cells, i, j, classes[(int)index].Color));
                }
            }
        }

        foreach (IGrouping<string, StudyClass> region in classes.GroupBy(c => c.Region ?? c.Label))
        {
            AddName(panels, cells, classes, region.Key);
        }

        panels.Header(0, string.Empty, [.. classes.Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box))]);
        return new Chart(name, model);
    }

    private static void AddName(Panels panels, StudyGrid cells, IReadOnlyList<StudyClass> classes, string region)
    {
        bool Inside(int i, int j) => cells.Values[i, j] >= 0 && (classes[(int)cells.Values[i, j]].Region ?? classes[(int)cells.Values[i, j]].Label) == region;
        if (RegionNames.Place(cells, Inside, region) is { } at)
        {
            panels.Words(0, at.X, at.Y, region, ChartStyle.Faint(OxyColors.White, 0.8));
        }
    }

    /// <summary>A number as shade, light to dark, with contours.</summary>
    /// <param name="name">File stem.</param>
    /// <param name="title">What is shown.</param>
    /// <param name="subtitle">The sentence to take home.</param>
    /// <param name="xTitle">Abscissa and unit.</param>
    /// <param name="yTitle">Ordinate and unit.</param>
    /// <param name="grid">Values; NaN cells stay white.</param>
    /// <param name="valueTitle">The number and its unit.</param>
    /// <param name="levels">Contour levels; null = chosen from the values, an empty list = no contours.</param>
    /// <param name="entries">Legend of what is drawn on it; none = no legend.</param>
    public static Chart Shade(
        string name,
        string title,
        string subtitle,
        string xTitle,
        string yTitle,
        StudyGrid grid,
        string valueTitle,
        double[]? levels = null,
        IReadOnlyList<HeaderEntry>? entries = null)
    {
        PlotModel model = ChartStyle.NewModel(title, subtitle);
        Panels panels = Frame(model, grid, xTitle, yTitle);
        panels.Header(0, string.Empty, entries ?? []);
        LinearColorAxis scale = ColorScale(valueTitle);
        scale.EndPosition = panels.Top(0);
        model.Axes.Add(scale);
        model.Series.Add(new HeatMapSeries
        {
            X0 = grid.X[0],
            X1 = grid.X[^1],
            Y0 = grid.Y[0],
            Y1 = grid.Y[^1],
            Data = grid.Values,
            Interpolate = false,
            RenderMethod = HeatMapRenderMethod.Rectangles,
            YAxisKey = Panels.Key(0),
            ColorAxisKey = scale.Key,
            EdgeRenderingMode = EdgeRenderingMode.PreferSharpness,
        });
        AddContours(panels, grid, levels ?? Levels(grid.Values, MostLevels));
        return new Chart(name, model);
    }

    private static Panels Frame(PlotModel model, StudyGrid grid, string xTitle, string yTitle)
    {
        double dx = Spacing(grid.X), dy = Spacing(grid.Y);
        var panels = new Panels(
            model, 1000, [ChartStyle.NewAxis(AxisPosition.Left, yTitle, grid.Y[0] - (dy / 2), grid.Y[^1] + (dy / 2))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, xTitle, grid.X[0] - (dx / 2), grid.X[^1] + (dx / 2)));
        return panels;
    }

    /// <summary>A coloured cell of a map: a class, or a cell of a shade that has no number.</summary>
    /// <param name="grid">Grid.</param>
    /// <param name="i">Column.</param>
    /// <param name="j">Row.</param>
    /// <param name="color">Fill.</param>
    internal static RectangleAnnotation Cell(StudyGrid grid, int i, int j, OxyColor color)
    {
        double dx = Spacing(grid.X), dy = Spacing(grid.Y);
        return new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            Fill = color,
            Layer = AnnotationLayer.BelowSeries,
            EdgeRenderingMode = EdgeRenderingMode.PreferSharpness,
            MinimumX = grid.X[i] - (dx / 2),
            MaximumX = grid.X[i] + (dx / 2),
            MinimumY = grid.Y[j] - (dy / 2),
            MaximumY = grid.Y[j] + (dy / 2),
        };
    }

    private static void AddContours(Panels panels, StudyGrid grid, double[] levels)
    {
        if (levels.Length == 0)
        {
            return;
        }

        panels.Model.Series.Add(new ContourSeries
        {
            ColumnCoordinates = grid.X,
            RowCoordinates = grid.Y,
            Data = grid.Values,
            ContourLevels = levels,
            YAxisKey = Panels.Key(0),
            Color = ChartStyle.Ink,
            StrokeThickness = 3,
            LineStyle = LineStyle.Solid,
            // No labels from the series: it omits those of steep lines.
            FontSize = 0,
            LabelBackground = OxyColors.Undefined,
        });
        // A number that would be cut off, or lie on another, is left out: the bar of shades has it.
        var taken = new List<OxyRect>();
        foreach (double level in levels)
        {
            string text = level.ToString("0.####", CultureInfo.InvariantCulture);
            if (ContourLabels.Place(grid, level) is { } at && Place(grid, at, text) is var box && IsInside(box) && !taken.Exists(t => Overlap(t, box)))
            {
                taken.Add(box);
                panels.Words(0, at.X, at.Y, text, OxyColors.White);
            }
        }
    }

    // About where a label lies on the plot, px.
    private static OxyRect Place(StudyGrid grid, DataPoint at, string text)
    {
        OxySize size = TextLayout.Measure(text, ChartStyle.TextSize, FontWeights.Normal);
        double x = PlotWidth * (((at.X - grid.X[0]) / Spacing(grid.X)) + 0.5) / grid.X.Length, y = PlotHeight * (((at.Y - grid.Y[0]) / Spacing(grid.Y)) + 0.5) / grid.Y.Length;
        return new(x - (0.5 * size.Width), y - (0.5 * size.Height), size.Width, size.Height);
    }

    private static bool Overlap(OxyRect a, OxyRect b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static bool IsInside(OxyRect box) => box.Left >= 0.0 && box.Right <= PlotWidth && box.Top >= 0.0 && box.Bottom <= PlotHeight;

    private static LinearColorAxis ColorScale(string title) => new()
    {
        Key = "shade",
        Position = AxisPosition.Right,
        Title = title,
        AxisTitleDistance = 14,
        AxisDistance = 20,
        // One hue, light to dark: order is seen without knowing the colours, and in black and white.
        Palette = OxyPalette.Interpolate(64, OxyColor.FromRgb(240, 247, 252), ChartStyle.Sky, ChartStyle.Blue, OxyColor.FromRgb(0, 50, 90)),
        InvalidNumberColor = OxyColors.White,
        StringFormat = "0.####",
        // The bar is as wide as its major ticks.
        MajorTickSize = 32,
        MinorTickSize = 0,
    };

    /// <summary>Round levels inside the range of some values.</summary>
    /// <param name="values">Values; NaN and infinite ones do not count.</param>
    /// <param name="most">Most levels, at least 2.</param>
    internal static double[] Levels(double[,] values, int most)
    {
        double[] finite = [.. values.Cast<double>().Where(double.IsFinite).DefaultIfEmpty(0)];
        double low = finite.Min(), range = Math.Max(finite.Max() - low, 1e-9);
        double unit = Math.Pow(10, Math.Floor(Math.Log10(range / most)));
        double step = RoundSteps.Select(k => k * unit).First(s => range / s <= most);
        int first = (int)Math.Ceiling(low / step);
        return [.. Enumerable.Range(first, most + 1).Select(k => k * step).Where(v => v > low && v < low + range)];
    }

    private static double Spacing(double[] values) =>
        values.Length > 1 ? (values[^1] - values[0]) / (values.Length - 1) : 1;
}
