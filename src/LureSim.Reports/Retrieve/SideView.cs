using LureSim.Model;
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

    // The surface film carries a dry line this high.
    private const double OnWaterM = 0.005;

    /// <summary>Builds the picture; the result must hold at least one snapshot.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        IReadOnlyList<Snapshot> shots = result.Snapshots;
        (double left, double right, double low, double high) = Frame(shots);
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, right);
        PlotModel model = ChartStyle.NewModel($"Between rod tip and lure the line sags {shown.Size(result.Summary.LineSagM)} on average", Subtitle(shots, shown.OneFamily));
        LinearAxis[] axes = [.. shots.Select(_ => ChartStyle.NewAxis(AxisPosition.Left, $"Height, {unit.Name}", unit.Of(low), unit.Of(high)))];
        LinearAxis xAxis = ChartStyle.NewAxis(AxisPosition.Bottom, $"Distance from the resting rod tip, {unit.Name}", unit.Of(left), unit.Of(right));
        var panels = new Panels(model, Height, axes);
        model.Axes.Add(xAxis);
        for (int i = 0; i < shots.Count; i++)
        {
            Draw(panels, i, shots, unit.Of(low), unit);
        }

        return new Chart("side_view", model, Height: Height);
    }

    private static string Subtitle(IReadOnlyList<Snapshot> shots, Shown shown)
    {
        double[] ways = [.. shots.Select(InTheAir).OfType<double>()];
        return ways.Length < shots.Count
            ? "Seen from the side; the lure is a dot"
            : $"The line meets the water {shown.List(ShownQuantity.Distance, ways)} from the rod tip";
    }

    // Level distance from the rod tip to where the line first lies on the water; null where it never does.
    private static double? InTheAir(Snapshot shot)
    {
        for (int i = 0; i < shot.Line[2].Count - 1; i++)
        {
            if (shot.Line[2][i] < OnWaterM)
            {
                return shot.Line[0][i] - shot.Line[0][0];
            }
        }

        return null;
    }

    private static (double Left, double Right, double Low, double High) Frame(IReadOnlyList<Snapshot> shots)
    {
        double left = shots.Min(s => s.Rod[0].Min()), right = shots.Max(s => Math.Max(s.LureXM, s.Line[0].Max()));
        double low = shots.Min(s => s.Line[2].Min()), high = shots.Max(s => Math.Max(s.Rod[2].Max(), s.Line[2].Max()));
        double width = right - left, height = high - Math.Min(low, 0);
        return (left - (0.02 * width), right + (0.04 * width), Math.Min(low, 0) - (0.15 * height), high + (0.08 * height));
    }

    private static void Draw(Panels panels, int i, IReadOnlyList<Snapshot> shots, double low, ShownUnit unit)
    {
        panels.Model.Annotations.Add(new RectangleAnnotation
        {
            YAxisKey = Panels.Key(i),
            MinimumY = low,
            MaximumY = 0,
            Fill = Looks.Water,
            Layer = AnnotationLayer.BelowSeries,
        });
        foreach (Snapshot other in shots)
        {
            Line(panels, i, other.Line, unit, OxyColor.FromRgb(150, 150, 150), 2);
        }

        Snapshot shot = shots[i];
        Line(panels, i, shot.Rod, unit, Looks.Rod.Color, 7);
        Line(panels, i, shot.Line, unit, Looks.Line.Color, ChartStyle.LineWidth);
        panels.Model.Annotations.Add(new PointAnnotation
        {
            YAxisKey = Panels.Key(i),
            X = unit.Of(shot.LureXM),
            Y = unit.Of(shot.LureZM),
            Size = 11,
            Shape = MarkerType.Circle,
            Fill = ChartStyle.Ink,
        });
        HeaderEntry[] legend =
        [
            new("rod", Looks.Rod.Color), new("line", Looks.Line.Color),
            new("other instants", OxyColor.FromRgb(150, 150, 150)), new("lure (not to scale)", ChartStyle.Ink, Swatch.Dot),
        ];
        panels.Model.Annotations.Add(new ScaleHeader(Panels.Key(i), Words(shot), i == 0 ? legend : []));
    }

    private static void Line(Panels panels, int panel, ValueList<ValueList<double>> shape, ShownUnit unit, OxyColor color, double width) =>
        panels.Line(panel, [.. shape[0].Select(unit.Of)], [.. shape[2].Select(unit.Of)], color, width);

    private static string Words(Snapshot shot) =>
        $"{Trade.Capital(shot.Label)}, {Trade.Fixed(shot.TimeS, 2)} s";

    /// <summary>Header that says how much taller heights are drawn: panel sizes are known only when drawn.</summary>
    private sealed class ScaleHeader(string key, string text, IReadOnlyList<HeaderEntry> entries)
        : PanelHeader(key, text, entries)
    {
        protected override string Longest(string words) => $"{words} (heights x 10.0)";

        protected override string Words(Axis xAxis, Axis yAxis) =>
            $"{base.Words(xAxis, yAxis)} (heights x {Trade.Fixed(Math.Abs(yAxis.Scale / xAxis.Scale), 1)})";
    }
}
