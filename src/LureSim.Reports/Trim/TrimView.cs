using LureSim.Model.Trim;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Trim;

/// <summary>The hull from the side at its waterline, with centres, tie, weights and hooks.</summary>
public static class TrimView
{
    private const int Height = 800;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="trim">Lure at rest.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, TrimResult trim, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(trim);
        ArgumentNullException.ThrowIfNull(shown);
        HullProfile p = trim.Profile;
        ShownUnit unit = shown.Unit(ShownQuantity.Size, p.BackXM.Max() - p.BackXM.Min());
        PlotModel model = ChartStyle.NewModel(TrimText.Headline(trim, shown), title);
        model.PlotType = PlotType.Cartesian;
        double left = unit.Of(Math.Min(p.BackXM.Min(), p.BellyXM.Min())), right = unit.Of(Math.Max(p.BackXM.Max(), p.BellyXM.Max()));
        double low = unit.Of(Math.Min(p.BellyZM.Min(), p.Marks.Min(m => m.ZM))), high = unit.Of(Math.Max(p.BackZM.Max(), p.Marks.Max(m => m.ZM)));
        double room = 0.08 * (right - left);

        // One scale on both axes: a trim of 20 degrees must look like one.
        double middle = 0.5 * (low + high), half = Math.Max(0.5 * (high - low) + room, 0.19 * (right - left));
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Over the water, {unit.Name}", middle - half, middle + half)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Toward the nose from the middle, {unit.Name}", left - room, right + room));
        model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MaximumY = 0.0,
            Fill = Looks.Water,
            Layer = AnnotationLayer.BelowSeries,
        });
        Draw(model, p, unit);
        panels.Level(0, 0.0, ChartStyle.Blue);
        panels.Header(0, "Side view", Legend);
        return new Chart("trim_side", model, Height: Height);
    }

    /// <summary>What the dots are.</summary>
    internal static IReadOnlyList<HeaderEntry> Legend { get; } =
    [
        new("centre of gravity", ColorOf("centre of gravity"), Swatch.Dot), new("of buoyancy", ColorOf("centre of buoyancy"), Swatch.Dot),
        new("line tie", ColorOf("line tie"), Swatch.Dot), new("ballast", ColorOf("ballast"), Swatch.Dot), new("hook", ColorOf("hook"), Swatch.Dot),
    ];

    /// <summary>Draws outline and marks into a picture of one panel.</summary>
    /// <param name="model">Picture.</param>
    /// <param name="profile">Hull from the side.</param>
    /// <param name="unit">Unit of both axes.</param>
    /// <param name="raised">Where its water lies on the axis, in the unit.</param>
    internal static void Draw(PlotModel model, HullProfile profile, ShownUnit unit, double raised = 0.0)
    {
        model.Annotations.Add(Outline(profile, unit, raised));
        foreach (HullMark mark in profile.Marks)
        {
            model.Annotations.Add(Dot(mark, unit, raised));
        }
    }

    private static PolygonAnnotation Outline(HullProfile p, ShownUnit unit, double raised)
    {
        var outline = new PolygonAnnotation
        {
            YAxisKey = Panels.Key(0),
            Fill = OxyColor.FromAColor(150, ChartStyle.Yellow),
            Stroke = ChartStyle.Ink,
            StrokeThickness = 3,
            LineStyle = LineStyle.Solid,
            LineJoin = LineJoin.Round,
            Layer = AnnotationLayer.BelowSeries,
        };
        outline.Points.AddRange(p.BackXM.Zip(p.BackZM, (x, z) => new DataPoint(unit.Of(x), raised + unit.Of(z))));
        outline.Points.AddRange(p.BellyXM.Zip(p.BellyZM, (x, z) => new DataPoint(unit.Of(x), raised + unit.Of(z))).Reverse());
        return outline;
    }

    private static PointAnnotation Dot(HullMark mark, ShownUnit unit, double raised) => new()
    {
        YAxisKey = Panels.Key(0),
        X = unit.Of(mark.XM),
        Y = raised + unit.Of(mark.ZM),
        Size = 9,
        Shape = MarkerType.Circle,
        Fill = ColorOf(mark.Name),
        Stroke = ChartStyle.Ink,
        StrokeThickness = 1,
    };

    private static OxyColor ColorOf(string name) => name switch
    {
        "centre of gravity" => ChartStyle.Vermilion,
        "centre of buoyancy" => ChartStyle.Blue,
        "line tie" => ChartStyle.Ink,
        "ballast" => ChartStyle.Grey,
        _ => ChartStyle.Green,
    };
}
