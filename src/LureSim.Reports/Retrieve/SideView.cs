using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>Rod, sagging line and lure from the side at the recorded instants, one panel each.</summary>
public static class SideView
{
    private const int Height = 1200;

    /// <summary>Builds the picture; the result must hold at least one snapshot.</summary>
    /// <param name="result">Retrieve.</param>
    public static Chart Build(RetrieveResult result)
    {
        IReadOnlyList<Snapshot> shots = result.Snapshots;
        (double left, double right, double low, double high) = Frame(shots);
        PlotModel model = ChartStyle.NewModel("Rod, line and lure from the side", string.Empty);
        LinearAxis[] axes = [.. shots.Select(_ => ChartStyle.NewAxis(AxisPosition.Left, "Height, m", low, high))];
        LinearAxis xAxis = ChartStyle.NewAxis(AxisPosition.Bottom, "Distance from the resting rod tip, m", left, right);
        var panels = new Panels(model, Height, axes);
        model.Axes.Add(xAxis);
        for (int i = 0; i < shots.Count; i++)
        {
            Draw(panels, i, shots, low);
        }

        return new Chart("side_view", model, Height: Height);
    }

    private static (double Left, double Right, double Low, double High) Frame(IReadOnlyList<Snapshot> shots)
    {
        double left = shots.Min(s => s.Rod[0].Min()), right = shots.Max(s => Math.Max(s.LureXM, s.Line[0].Max()));
        double low = shots.Min(s => s.Line[2].Min()), high = shots.Max(s => Math.Max(s.Rod[2].Max(), s.Line[2].Max()));
        double width = right - left, height = high - Math.Min(low, 0);
        return (left - (0.02 * width), right + (0.04 * width), Math.Min(low, 0) - (0.15 * height), high + (0.08 * height));
    }

    private static void Draw(Panels panels, int i, IReadOnlyList<Snapshot> shots, double low)
    {
        panels.Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(i),
            MinimumY = low,
            MaximumY = 0,
            Fill = ChartStyle.Faint(ChartStyle.Sky, 0.35),
            Layer = AnnotationLayer.BelowSeries,
        });
        foreach (Snapshot other in shots)
        {
            panels.Line(i, other.Line[0], other.Line[2], OxyColor.FromRgb(190, 190, 190), 2);
        }

        Snapshot shot = shots[i];
        panels.Line(i, shot.Rod[0], shot.Rod[2], ChartStyle.Vermilion, 7);
        panels.Line(i, shot.Line[0], shot.Line[2], ChartStyle.Blue, 3.5);
        panels.Model.Annotations.Add(new PointAnnotation
        {
            YAxisKey = Panels.Key(i),
            X = shot.LureXM,
            Y = shot.LureZM,
            Size = 11,
            Shape = MarkerType.Circle,
            Fill = ChartStyle.Ink,
        });
        HeaderEntry[] legend =
        [
            new("rod", ChartStyle.Vermilion), new("line", ChartStyle.Blue),
            new("other instants", OxyColor.FromRgb(190, 190, 190)), new("lure (not to scale)", ChartStyle.Ink, Swatch.Dot),
        ];
        panels.Model.Annotations.Add(new ScaleHeader(Panels.Key(i), Words(shot), i == 0 ? legend : []));
    }

    private static string Words(Snapshot shot) =>
        $"{char.ToUpperInvariant(shot.Label[0])}{shot.Label[1..]}, {Trade.Fixed(shot.TimeS, 2)} s";

    /// <summary>Header that says how much taller heights are drawn: panel sizes are known only when drawn.</summary>
    private sealed class ScaleHeader(string key, string text, IReadOnlyList<HeaderEntry> entries)
        : PanelHeader(key, text, entries)
    {
        protected override string Words(Axis xAxis, Axis yAxis) =>
            $"{base.Words(xAxis, yAxis)} (heights x {Trade.Fixed(Math.Abs(yAxis.Scale / xAxis.Scale), 1)})";
    }
}
