using LureSim.Model.Lures;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Trim;
using LureSim.Studies.Design;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Series;

namespace LureSim.Reports.Design;

/// <summary>Maps over the place of a weight and its mass or height: how the lure floats, and whether it keeps a straight tow.</summary>
public static class BallastMapCharts
{
    private const double Degree = Math.PI / 180.0, HalfOfThem = 0.5;

    // A share that rounds to none of a hundred.
    private const double Few = 0.005;

    private static readonly OxyColor LiesOver = ChartStyle.Sand, Sinks = ChartStyle.Dark, Refused = ChartStyle.Light;

    /// <summary>Float angle as shade; what lies over, sinks or cannot be made as colours of their own.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="shown">Units.</param>
    public static Chart Angle(string title, BallastMap map, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(map);
        double[] angles = [.. map.Cells.Where(Floats).Select(c => c.TrimRad)];
        string message = angles.Length == 0 ? "It floats upright nowhere here" : $"Floats {TrimText.Angle(angles.Min())} to {TrimText.Angle(angles.Max())} as its weight moves";
        return Build("design_float_map", message, title, map, shown, c => c.TrimRad / Degree, "Float angle, deg; tail-down above 0", []);
    }

    /// <summary>Side force over what the straight tow needs as shade, its border, and the walk where it was tried.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="map">Map.</param>
    /// <param name="shown">Units.</param>
    public static Chart Tow(string title, BallastMap map, Shown shown)
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
            entries.Add(new("border: 0", ChartStyle.Vermilion));
        }

        if (map.Windows is not null)
        {
            entries.AddRange([new("walks at half the rhythms tried or more", ChartStyle.Green, Swatch.Dot), new("at fewer", ChartStyle.Yellow, Swatch.Dot), new("at none", ChartStyle.Ink, Swatch.Dot)]);
        }

        Chart chart = Build("design_tow_map", message, title, map, shown, c => c.SheddingMargin, "Side force over critical, chi; leaves below 0", entries);
        Border(chart.Model, leaves is > 0.0 and < 1.0);
        foreach (WindowCell w in (map.Windows?.Cells ?? []).Where(w => w.Reason is null))
        {
            OxyColor color = Walk(w);
            Dot(chart.Model, X(map, shown).Of(map.XM[w.Column]), Y(map, shown).Unit.Of(map.Second[w.Row]), color, color == ChartStyle.Ink ? 5.0 : 9.0);
        }

        return chart;
    }

    private static OxyColor Walk(WindowCell w) => w.WalkShare >= HalfOfThem ? ChartStyle.Green : w.WalkShare > 0.0 ? ChartStyle.Yellow : ChartStyle.Ink;

    private static bool Floats(MapCell cell) => cell.Word == FloatWord.Floats;

    private static ShownUnit X(BallastMap map, Shown shown) => shown.Unit(ShownQuantity.Size, map.XM.Max(Math.Abs));

    private static (ShownUnit Unit, string Title) Y(BallastMap map, Shown shown)
    {
        bool mass = map.Task.Second == MapSecond.Mass;
        ShownUnit unit = shown.Unit(mass ? ShownQuantity.Mass : ShownQuantity.Size, map.Second.Max(Math.Abs));
        return (unit, mass ? $"Mass of the weight, {unit.Name}" : $"Weight over the axis, {unit.Name}");
    }

    private static Chart Build(
        string name, string message, string title, BallastMap map, Shown shown, Func<MapCell, double> value, string valueTitle, IReadOnlyList<HeaderEntry> own)
    {
        ArgumentNullException.ThrowIfNull(shown);
        ShownUnit x = X(map, shown);
        (ShownUnit y, string yTitle) = Y(map, shown);
        var values = new double[map.XM.Count, map.Second.Count];
        for (int i = 0; i < map.XM.Count; i++)
        {
            for (int j = 0; j < map.Second.Count; j++)
            {
                MapCell cell = map.At(i, j);
                values[i, j] = Floats(cell) ? value(cell) : double.NaN;
            }
        }

        var grid = new StudyGrid([.. map.XM.Select(x.Of)], [.. map.Second.Select(y.Of)], values);
        BallastSpec weight = BallastSlot.Of(map.Lure).Weight;
        double at = map.Task.Second == MapSecond.Mass ? weight.MassKg : weight.ZM;
        bool inside = weight.MassKg > 0.0 && weight.XM >= map.XM[0] && weight.XM <= map.XM[^1] && at >= map.Second[0] && at <= map.Second[^1];
        HeaderEntry[] entries =
        [
            .. inside ? [new HeaderEntry("as it is", ChartStyle.Vermilion, Swatch.Ring)] : Array.Empty<HeaderEntry>(),
            .. own,
            .. Classes.Where(c => map.Cells.Any(k => k.Word == c.Word)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
        ];
        string keeps = map.Task.Second == MapSecond.Up ? "" : map.Task.Keeps == KeptMass.Total ? ", total mass kept" : ", body kept";
        Chart chart = StudyMap.Shade(
            name, message, $"Its heaviest weight moved{keeps}: {title}", $"Weight toward the nose from the middle, {x.Name}", yTitle, grid, valueTitle, entries: entries);
        for (int i = 0; i < map.XM.Count; i++)
        {
            for (int j = 0; j < map.Second.Count; j++)
            {
                if (Array.Find(Classes, c => c.Word == map.At(i, j).Word) is { Label: not null } found)
                {
                    // Over the shade, which paints what has no number white.
                    RectangleAnnotation cell = StudyMap.Cell(grid, i, j, found.Color);
                    cell.Layer = AnnotationLayer.AboveSeries;
                    chart.Model.Annotations.Add(cell);
                }
            }
        }

        if (inside)
        {
            Dot(chart.Model, x.Of(weight.XM), y.Of(at), ChartStyle.Vermilion, 12.0);
            Dot(chart.Model, x.Of(weight.XM), y.Of(at), OxyColors.White, 6.0);
        }

        return chart;
    }

    private static readonly (FloatWord Word, string Label, OxyColor Color)[] Classes =
        [(FloatWord.LiesOver, "lies over", LiesOver), (FloatWord.Sinks, "sinks", Sinks), (FloatWord.Refused, "cannot be made", Refused)];

    // The contour of 0 again, in a colour of its own.
    private static void Border(PlotModel model, bool exists)
    {
        if (exists && model.Series.OfType<ContourSeries>().FirstOrDefault() is { } all)
        {
            model.Series.Add(new ContourSeries
            {
                ColumnCoordinates = all.ColumnCoordinates,
                RowCoordinates = all.RowCoordinates,
                Data = all.Data,
                ContourLevels = [0.0],
                YAxisKey = all.YAxisKey,
                Color = ChartStyle.Vermilion,
                StrokeThickness = 6,
                LineStyle = LineStyle.Solid,
                FontSize = 0,
                LabelBackground = OxyColors.Undefined,
            });
        }
    }

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
