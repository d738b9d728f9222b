using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using LureSim.Studies.Design;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Design;

/// <summary>Maps over two things that a builder can change: how the lure floats, and whether it keeps a straight tow.</summary>
public static class DesignMapCharts
{
    private const double Degree = Math.PI / 180.0;

    // Half the width of a dot where all rhythms walk and where none does, px, and of the room between two dots; the plot, px, about.
    private const double LargestDot = 13.0, SmallDot = 4.0, DotShare = 0.45, PlotWidth = 1300.0, PlotHeight = 700.0;

    // A share that rounds to none of a hundred.
    private const double Few = 0.005;

    private const string Tows = "design_tow_map";

    private static readonly OxyColor LiesOver = ChartStyle.Sand, Sinks = ChartStyle.Dark, Refused = ChartStyle.Light;

    /// <summary>Float angle as shade; what lies over, sinks or cannot be made as colours of their own.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="shown">Units.</param>
    public static Chart Angle(string title, DesignMap map, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(map);
        double[] angles = [.. map.Cells.Where(Floats).Select(c => c.TrimRad)];
        string message = angles.Length == 0 ? "It floats upright nowhere here" : $"These lures float {TrimText.Angle(angles.Min())} to {TrimText.Angle(angles.Max())}";
        return Build("design_float_map", message, title, map, shown, c => c.TrimRad / Degree, "Float angle, deg; tail-down above 0", []);
    }

    /// <summary>Side force over what the straight tow needs as shade, its border, and the walk where it was tried.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="shown">Units.</param>
    public static Chart Tow(string title, DesignMap map, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(map);
        MapCell[] known = [.. map.Cells.Where(c => Floats(c) && double.IsFinite(c.SheddingMargin))];
        double leaves = known.Length == 0 ? double.NaN : known.Count(c => c.SheddingMargin < 0.0) / (double)known.Length;
        string message = known.Length == 0 ? "No straight tow is known here"
            : leaves < Few ? $"Comes straight on a tight line {(leaves == 0.0 ? "" : "nearly ")}everywhere here"
            : leaves > 1.0 - Few ? $"Leaves the straight line {(leaves == 1.0 ? "" : "nearly ")}everywhere here"
            : $"Leaves the straight line in {Trade.Fixed(100.0 * leaves, 0)} % of these lures, comes straight in the rest";
        List<HeaderEntry> entries = [];
        if (leaves is > 0.0 and < 1.0)
        {
            entries.Add(new("border: below 0 it leaves the line", ChartStyle.Vermilion));
        }

        WindowCell[] tried = [.. (map.Windows?.Cells ?? []).Where(w => w.Reason is null)];
        if (tried.Any(w => w.WalkShare > 0.0))
        {
            entries.Add(new($"walks: the larger, the more of {map.Windows!.RhythmsPerS.Count} rhythms", ChartStyle.Green, Swatch.Dot));
        }

        if (tried.Any(w => w.WalkShare == 0.0))
        {
            entries.Add(new("at none", ChartStyle.Ink, Swatch.Dot));
        }

        Chart chart = Build(Tows, message, title, map, shown, c => c.SheddingMargin, "Side force over critical (chi - critical chi)", entries);
        if (leaves is > 0.0 and < 1.0)
        {
            chart.Model.Series.Add(MapBorder.Of(Grid(map, shown, c => c.SheddingMargin), IsCounted(map)));
        }

        (ShownUnit x, ShownUnit y) = (new MapAxisWords(map, map.Task.Columns, shown).Unit, new MapAxisWords(map, map.Task.Rows, shown).Unit);
        double most = map.Windows is { } grid ? Math.Min(LargestDot, DotShare * Math.Min(PlotWidth * grid.ColumnStep / map.Columns.Count, PlotHeight * grid.RowStep / map.Rows.Count)) : 0.0;
        foreach (WindowCell w in tried)
        {
            bool walks = w.WalkShare > 0.0;
            Dot(chart.Model, x.Of(map.Columns[w.Column]), y.Of(map.Rows[w.Row]), walks ? ChartStyle.Green : ChartStyle.Ink, SmallDot + (walks ? (most - SmallDot) * w.WalkShare : 0.0));
        }

        return chart;
    }

    private static bool Floats(MapCell cell) => cell.Word == FloatWord.Floats;

    private static bool IsCounted(DesignMap map) => map.Task.Columns.IsCounted || map.Task.Rows.IsCounted;

    private static StudyGrid Grid(DesignMap map, Shown shown, Func<MapCell, double> value)
    {
        (ShownUnit x, ShownUnit y) = (new MapAxisWords(map, map.Task.Columns, shown).Unit, new MapAxisWords(map, map.Task.Rows, shown).Unit);
        var values = new double[map.Columns.Count, map.Rows.Count];
        for (int i = 0; i < map.Columns.Count; i++)
        {
            for (int j = 0; j < map.Rows.Count; j++)
            {
                MapCell cell = map.At(i, j);
                values[i, j] = Floats(cell) ? value(cell) : double.NaN;
            }
        }

        return new StudyGrid([.. map.Columns.Select(x.Of)], [.. map.Rows.Select(y.Of)], values);
    }

    private static Chart Build(
        string name, string message, string title, DesignMap map, Shown shown, Func<MapCell, double> value, string valueTitle, IReadOnlyList<HeaderEntry> own)
    {
        ArgumentNullException.ThrowIfNull(shown);
        MapAxisWords x = new(map, map.Task.Columns, shown), y = new(map, map.Task.Rows, shown);
        StudyGrid grid = Grid(map, shown, value);
        bool inside = IsInside(map, map.Task.Columns) && IsInside(map, map.Task.Rows);
        HeaderEntry[] entries =
        [
            .. inside ? [new HeaderEntry("as it is", ChartStyle.Vermilion, Swatch.Ring)] : Array.Empty<HeaderEntry>(),
            .. own,
            .. Classes.Where(c => map.Cells.Any(k => k.Word == c.Word)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
        ];
        string keeps = DesignMapFiles.Keeps(map), what = $"{Trade.Capital(x.With(y))}{(keeps.Length == 0 ? "" : ", " + keeps)}: {title}";

        // Between sizes of hooks there is nothing for a contour to pass through, and dots lie where its numbers would.
        Chart chart = StudyMap.Shade(name, message, what, x.Title, y.Title, grid, valueTitle, IsCounted(map) || (map.Windows is not null && name == Tows) ? [] : null, entries);
        HookTicks.Set(chart.Model, AxisPosition.Bottom, x);
        HookTicks.Set(chart.Model, AxisPosition.Left, y);
        AddClasses(chart.Model, map, grid);
        if (inside)
        {
            (double column, double row) = (x.Unit.Of(x.Axis.Own(map.Lure)), y.Unit.Of(y.Axis.Own(map.Lure)));
            Dot(chart.Model, column, row, ChartStyle.Vermilion, 12.0);
            Dot(chart.Model, column, row, OxyColors.White, 6.0);
        }

        return chart;
    }

    private static bool IsInside(DesignMap map, MapAxis axis) =>
        axis.Own(map.Lure) >= axis.From && axis.Own(map.Lure) <= axis.To && !(axis.IsOfWeight && BallastSlot.Of(map.Lure).Index < 0);

    // Over the shade, which paints what has no number white.
    private static void AddClasses(PlotModel model, DesignMap map, StudyGrid grid)
    {
        for (int i = 0; i < map.Columns.Count; i++)
        {
            for (int j = 0; j < map.Rows.Count; j++)
            {
                if (Array.Find(Classes, c => c.Word == map.At(i, j).Word) is { Label: not null } found)
                {
                    RectangleAnnotation cell = StudyMap.Cell(grid, i, j, found.Color);
                    cell.Layer = AnnotationLayer.AboveSeries;
                    model.Annotations.Add(cell);
                }
            }
        }
    }

    private static readonly (FloatWord Word, string Label, OxyColor Color)[] Classes =
        [(FloatWord.LiesOver, "lies over", LiesOver), (FloatWord.Sinks, "sinks", Sinks), (FloatWord.Refused, "cannot be made", Refused)];

    // Annotations: a series of dots would be coloured by the shade's own scale.
    private static void Dot(PlotModel model, double x, double y, OxyColor color, double size) => model.Annotations.Add(new PointAnnotation
    {
        YAxisKey = Panels.Key(0),
        X = x,
        Y = y,
        Size = size,
        Shape = MarkerType.Circle,
        Fill = color,
        Stroke = ChartStyle.Ink,
        StrokeThickness = 1,
    });
}
