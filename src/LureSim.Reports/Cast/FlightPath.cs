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
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        CastSeries s = result.Series;
        PlotModel model = ChartStyle.NewModel(Title(result, shown),
            $"{result.Setup.Title}: leaves at {shown.Speed(result.LaunchSpeedMS)} and {Trade.Fixed(result.LaunchAngleRad * 180.0 / Math.PI, 0)}°, flies {Trade.Fixed(result.FlightTimeS, 1)} s");
        double left = Math.Min(s.LureXM.Min(), Math.Min(result.DistanceM, result.DistanceP10M)), right = Math.Max(s.LureXM.Max(), Math.Max(result.DistanceP90M, 1.0));
        double width = right - left, high = s.LureZM.Max();
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, right);
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Height, {unit.Name}", unit.Of(-0.16 * high), unit.Of(1.12 * high))]);
        model.Axes.Add(ChartStyle.NewAxis(
            AxisPosition.Bottom, $"Distance from the hand's place at the start, {unit.Name}", unit.Of(left - (0.02 * width)), unit.Of(right + (0.07 * width))));
        model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MaximumY = 0.0,
            Fill = Looks.Water,
            Layer = AnnotationLayer.BelowSeries,
        });
        Lines(panels, s.InFlight, unit);
        panels.Line(0, Scaled(s.LureXM, unit), Scaled(s.LureZM, unit), Looks.Lure);
        Band(panels, result, high, unit, shown);
        panels.Header(0, room => new ScaleHeader(
        [
            new("lure", Looks.Lure), new("line at four moments", Looks.Line.Solid), new("rod", Looks.Rod.Solid), new("8 of 10 casts", Looks.Casts, Swatch.Box),
        ])
        { Room = room });
        return new Chart("cast_path", model, Height: Height);
    }

    private static string Title(CastResult result, Shown shown) => result.DistanceM < 0.0
        ? $"The lure lands {shown.Distance(-result.DistanceM)} behind the angler"
        : $"Casts {shown.Distance(result.DistanceMeanM)} on average; 8 of 10 casts land at {shown.Range(ShownQuantity.Distance, result.DistanceP10M, result.DistanceP90M)}";

    // Even parts of the flight, the splash last.
    private static void Lines(Panels panels, IReadOnlyList<CastPose> poses, ShownUnit unit)
    {
        for (int i = 1; i <= Shots; i++)
        {
            CastPose pose = poses[(poses.Count - 1) * i / Shots];
            panels.Line(0, Scaled(pose.XM[pose.TipIndex..], unit), Scaled(pose.ZM[pose.TipIndex..], unit), Looks.Line.Solid, 2.5);
        }

        CastPose last = poses[^1];
        panels.Line(0, Scaled(last.XM[..(last.TipIndex + 1)], unit), Scaled(last.ZM[..(last.TipIndex + 1)], unit), Looks.Rod.Solid, 6);
    }

    private static void Band(Panels panels, CastResult result, double high, ShownUnit unit, Shown shown)
    {
        panels.Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(0),
            MinimumX = unit.Of(result.DistanceP10M),
            MaximumX = unit.Of(result.DistanceP90M),
            MinimumY = unit.Of(-0.05 * high),
            MaximumY = 0.0,
            Fill = Looks.Casts,
            Layer = AnnotationLayer.AboveSeries,
        });
        panels.Words(
            0, unit.Of(0.5 * (result.DistanceP10M + result.DistanceP90M)), unit.Of(-0.105 * high),
            shown.OneFamily.Range(ShownQuantity.Distance, result.DistanceP10M, result.DistanceP90M));
    }

    private static double[] Scaled(ReadOnlySpan<double> values, ShownUnit unit) => Array.ConvertAll(values.ToArray(), unit.Of);

    /// <summary>Header that says how much taller heights are drawn: panel sizes are known only when drawn.</summary>
    private sealed class ScaleHeader(IReadOnlyList<HeaderEntry> entries) : PanelHeader(Panels.Key(0), "Side view", entries)
    {
        protected override string Longest(string words) => $"{words} (heights x 10.0)";

        protected override string Words(Axis xAxis, Axis yAxis) =>
            $"{base.Words(xAxis, yAxis)} (heights x {Trade.Fixed(Math.Abs(yAxis.Scale / xAxis.Scale), 1)})";
    }
}
