using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>The lure's path, the line in the air at four moments, and where eight of ten casts land.</summary>
public static class FlightPath
{
    private const int Height = 900;
    private const int Shots = 4;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    public static Chart Build(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CastSeries s = result.Series;
        PlotModel model = ChartStyle.NewModel(Title(result),
            $"Leaves at {Trade.Fixed(result.LaunchSpeedMS, 1)} m/s and {Trade.Fixed(result.LaunchAngleRad * 180.0 / Math.PI, 0)}°, flies {Trade.Fixed(result.FlightTimeS, 1)} s, "
            + $"{Trade.Fixed(result.LineOutM, 1)} m of line out at the splash");
        double left = Math.Min(s.LureXM.Min(), Math.Min(result.DistanceM, result.DistanceP10M)), right = Math.Max(s.LureXM.Max(), Math.Max(result.DistanceP90M, 1.0));
        double width = right - left, high = s.LureZM.Max();
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, "Height, m", -0.14 * high, 1.12 * high)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Distance from the hand's place at the start, m", left - (0.02 * width), right + (0.03 * width)));
        model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MaximumY = 0.0,
            Fill = ChartStyle.Faint(ChartStyle.Sky, 0.35),
            Layer = AnnotationLayer.BelowSeries,
        });
        Lines(panels, s.InFlight);
        panels.Line(0, s.LureXM, s.LureZM, ChartStyle.Blue);
        Band(panels, result, high);
        panels.Model.Annotations.Add(new ScaleHeader(
        [
            new("lure", ChartStyle.Blue), new("line at four moments", ChartStyle.Green), new("rod", ChartStyle.Vermilion),
            new("8 of 10 casts land here", ChartStyle.Orange, Swatch.Box),
        ]));
        return new Chart("cast_path", model, Height: Height);
    }

    private static string Title(CastResult result) => result.DistanceM < 0.0
        ? $"The flight: lands {Trade.Fixed(-result.DistanceM, 1)} m behind the angler"
        : $"The flight: {Trade.Fixed(result.DistanceM, 1)} m ({Trade.Fixed(Trade.Feet(result.DistanceM), 0)} ft) at best, {Trade.Fixed(result.DistanceMeanM, 1)} m on average";

    // Even parts of the flight, the splash last.
    private static void Lines(Panels panels, IReadOnlyList<CastPose> poses)
    {
        for (int i = 1; i <= Shots; i++)
        {
            CastPose pose = poses[(poses.Count - 1) * i / Shots];
            panels.Line(0, pose.XM[pose.TipIndex..], pose.ZM[pose.TipIndex..], ChartStyle.Green, 2);
        }

        CastPose last = poses[^1];
        panels.Line(0, last.XM[..(last.TipIndex + 1)], last.ZM[..(last.TipIndex + 1)], ChartStyle.Vermilion, 6);
    }

    private static void Band(Panels panels, CastResult result, double high)
    {
        panels.Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MinimumX = result.DistanceP10M,
            MaximumX = result.DistanceP90M,
            MinimumY = -0.05 * high,
            MaximumY = 0.0,
            Fill = ChartStyle.Orange,
            Layer = AnnotationLayer.AboveSeries,
        });
        panels.Words(0, 0.5 * (result.DistanceP10M + result.DistanceP90M), -0.095 * high, $"{Trade.Fixed(result.DistanceP10M, 0)} to {Trade.Fixed(result.DistanceP90M, 0)} m");
    }

    /// <summary>Header that says how much taller heights are drawn: panel sizes are known only when drawn.</summary>
    private sealed class ScaleHeader(IReadOnlyList<HeaderEntry> entries) : PanelHeader(Panels.Key(0), "Side view", entries)
    {
        protected override string Words(Axis xAxis, Axis yAxis) =>
            $"{base.Words(xAxis, yAxis)} (heights x {Trade.Fixed(Math.Abs(yAxis.Scale / xAxis.Scale), 1)})";
    }
}
