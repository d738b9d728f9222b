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
    private const int Width = 1300, Height = 1150;
    private static readonly OxyColor Faint = OxyColor.FromRgb(225, 160, 120);

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    public static Chart Build(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        IReadOnlyList<CastPose> poses = result.Series.Strobe;
        PlotModel model = ChartStyle.NewModel("The swing: rod and lure every 20 ms",
            $"Let go after {Trade.Fixed(result.ReleaseTimeS, 2)} s; the rod bends by up to {Trade.Fixed(100 * result.PeakBendShare, 0)} % of its length; "
            + $"launch at {Trade.Fixed(result.LaunchSpeedMS, 1)} m/s");
        // One scale on both axes: bends and angles must look as they are.
        model.PlotType = PlotType.Cartesian;
        (double left, double right, double low, double high) = Frame(poses);
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, "Height over the water, m", low, high)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Forward of the hand's place at the start, m", left, right));
        model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MaximumY = 0.0,
            Fill = ChartStyle.Faint(ChartStyle.Sky, 0.35),
            Layer = AnnotationLayer.BelowSeries,
        });
        CastPose released = poses.MinBy(p => Math.Abs(p.TimeS - result.ReleaseTimeS))!;
        foreach (CastPose pose in poses)
        {
            Draw(panels, pose, pose == released);
        }

        Lures(panels, poses, released, right);
        Label(panels, poses[0], "start", -0.22);
        Label(panels, released, "released", 0.22);
        panels.Header(0, "Side view, to scale",
            new HeaderEntry("rod", Faint), new HeaderEntry("rod at release", ChartStyle.Vermilion), new HeaderEntry("line", ChartStyle.Grey),
            new HeaderEntry("lure", ChartStyle.Blue, Swatch.Dot));
        return new Chart("cast_swing", model, Width, Height);
    }

    private static (double Left, double Right, double Low, double High) Frame(IReadOnlyList<CastPose> poses)
    {
        double left = poses.Min(p => p.XM.Min()), high = poses.Max(p => p.ZM.Max());
        double tips = poses.Max(p => p.XM[p.TipIndex]);

        // The lure runs off to the right; a rod length beyond the tips is enough of it.
        return (left - 0.3, tips + 1.2, Math.Min(-0.15, poses.Min(p => p.ZM.Min()) - 0.1), high + 0.3);
    }

    private static void Draw(Panels panels, CastPose pose, bool released)
    {
        int rod = pose.TipIndex + 1;
        panels.Line(0, pose.XM[pose.TipIndex..], pose.ZM[pose.TipIndex..], ChartStyle.Grey, 1.5);
        panels.Line(0, pose.XM[..rod], pose.ZM[..rod], released ? ChartStyle.Vermilion : Faint, released ? 6 : 3);
    }

    private static void Lures(Panels panels, IReadOnlyList<CastPose> poses, CastPose released, double right)
    {
        foreach (CastPose pose in poses.Where(p => p.XM[^1] < right))
        {
            panels.Model.Annotations.Add(new PointAnnotation
            {
                YAxisKey = Panels.Key(0),
                X = pose.XM[^1],
                Y = pose.ZM[^1],
                Size = pose == released ? 11 : 7,
                Shape = MarkerType.Circle,
                Fill = ChartStyle.Blue,
            });
        }
    }

    private static void Label(Panels panels, CastPose pose, string words, double up) =>
        panels.Words(0, pose.XM[^1], pose.ZM[^1] + up, words, ChartStyle.Faint(OxyColors.White, 0.8));
}
