using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Rod and lure at even intervals through the swing, as under a flash lamp.</summary>
public static class SwingStrobe
{
    private static readonly OxyColor Faint = Looks.Rod.Pale(0.6).Color;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        IReadOnlyList<CastPose> poses = result.Series.Strobe;
        PlotModel model = ChartStyle.NewModel(
            $"The rod bends by {Trade.Fixed(100 * result.PeakBendShare, 0)} % of its length and throws the lure at {shown.Speed(result.LaunchSpeedMS)}",
            $"{result.Setup.Title}: rod and lure every 20 ms, let go after {Trade.Fixed(result.ReleaseTimeS, 2)} s");
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, 1.0);
        // One scale on both axes: bends and angles must look as they are.
        model.PlotType = PlotType.Cartesian;
        (double left, double right, double low, double high) = Frame(poses);
        var panels = new Panels(model, ChartStyle.Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Height over the water, {unit.Name}", unit.Of(low), unit.Of(high))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Forward of the hand's place at the start, {unit.Name}", unit.Of(left), unit.Of(right)));
        model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MaximumY = 0.0,
            Fill = Looks.Water,
            Layer = AnnotationLayer.BelowSeries,
        });
        CastPose released = poses.MinBy(p => Math.Abs(p.TimeS - result.ReleaseTimeS))!;
        foreach (CastPose pose in poses)
        {
            Draw(panels, pose, pose == released, unit);
        }

        Lures(panels, poses, released, right, unit);
        Label(panels, poses[0], "start", unit);
        Label(panels, released, "let go", unit);
        panels.Header(0, "Side view, to scale",
            new("rod", Faint), new("rod when let go", Looks.Rod.Solid), new("line", Looks.Line.Solid), new("lure", Looks.Lure.Color, Swatch.Dot));
        return new Chart("cast_swing", model);
    }

    private static (double Left, double Right, double Low, double High) Frame(IReadOnlyList<CastPose> poses)
    {
        double left = poses.Min(p => p.XM.Min()), high = poses.Max(p => p.ZM.Max());
        double tips = poses.Max(p => p.XM[p.TipIndex]);

        // The lure runs off to the right; a rod length beyond the tips is enough of it.
        return (left - 0.3, tips + 1.2, Math.Min(-0.15, poses.Min(p => p.ZM.Min()) - 0.1), high + 0.3);
    }

    private static void Draw(Panels panels, CastPose pose, bool released, ShownUnit unit)
    {
        int rod = pose.TipIndex + 1;
        double[] x = [.. pose.XM.Select(unit.Of)], z = [.. pose.ZM.Select(unit.Of)];
        panels.Line(0, x.AsSpan(pose.TipIndex), z.AsSpan(pose.TipIndex), Looks.Line.Solid, 2);
        panels.Line(0, x.AsSpan(0, rod), z.AsSpan(0, rod), released ? Looks.Rod.Color : Faint, released ? 6 : 3);
    }

    private static void Lures(Panels panels, IReadOnlyList<CastPose> poses, CastPose released, double right, ShownUnit unit)
    {
        foreach (CastPose pose in poses.Where(p => p.XM[^1] < right))
        {
            panels.Model.Annotations.Add(new PointAnnotation
            {
                YAxisKey = Panels.Key(0),
                X = unit.Of(pose.XM[^1]),
                Y = unit.Of(pose.ZM[^1]),
                Size = pose == released ? 11 : 7,
                Shape = MarkerType.Circle,
                Fill = Looks.Lure.Color,
            });
        }
    }

    // Behind the lure, where it has not been yet.
    private static void Label(Panels panels, CastPose pose, string words, ShownUnit unit) => panels.Model.Annotations.Add(new TextAnnotation
    {
        YAxisKey = Panels.Key(0),
        Text = words,
        TextPosition = new DataPoint(unit.Of(pose.XM[^1]), unit.Of(pose.ZM[^1])),
        Offset = new ScreenVector(-22, 0),
        Stroke = OxyColors.Undefined,
        FontSize = ChartStyle.TextSize,
        TextHorizontalAlignment = HorizontalAlignment.Right,
        TextVerticalAlignment = VerticalAlignment.Middle,
    });
}
