using LureSim.Model.Lures;
using LureSim.Model.Pool;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Pool;

/// <summary>The push from above: path of the centre, and the hull to scale at the start, where it has turned 45 degrees, and in the end.</summary>
public static class PoolPushChart
{
    private const int Height = 800;
    private const double Degree = Math.PI / 180.0, Turned = 45.0;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, PoolResult pool, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(shown);
        PushResult push = pool.Push;
        PlotModel model = ChartStyle.NewModel(
            Message(push, shown), $"{title}, pushed at {shown.OneFamily.Speed(pool.Task.PushSpeedMS)} with {Trade.Fixed(pool.Task.PushDriftRad / Degree, 0)}° of drift");
        // One scale on both axes: a turn of 45 degrees must look like one.
        model.PlotType = PlotType.Cartesian;
        ShownUnit unit = shown.Unit(ShownQuantity.Size, 1.0);
        double[] x = [.. push.XM.Select(unit.Of)], y = [.. push.YM.Select(unit.Of)];
        int turn = TurnIndex(push);
        List<PolygonAnnotation> hulls = [Hull(pool, 0, ChartStyle.Sky, unit), Hull(pool, push.TimeS.Count - 1, ChartStyle.Yellow, unit)];
        if (turn > 0)
        {
            hulls.Add(Hull(pool, turn, ChartStyle.Orange, unit));
        }

        DataPoint[] seen = [.. hulls.SelectMany(h => h.Points), .. x.Zip(y, (a, b) => new DataPoint(a, b))];
        double room = 0.05 * (seen.Max(s => s.X) - seen.Min(s => s.X)), left = seen.Min(s => s.X) - room, right = seen.Max(s => s.X) + room;
        double middle = 0.5 * (seen.Min(s => s.Y) + seen.Max(s => s.Y)), reach = Math.Max((0.5 * (seen.Max(s => s.Y) - seen.Min(s => s.Y))) + room, 0.19 * (right - left));
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"To the left, {unit.Name}", middle - reach, middle + reach)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Along the push, {unit.Name}", left, right));
        panels.Level(0, 0.0, ChartStyle.Grey);
        hulls.ForEach(model.Annotations.Add);
        panels.Line(0, x, y, ChartStyle.Ink, 3);
        panels.Header(
            0, "Lure to scale",
            [
                new HeaderEntry("let go", ChartStyle.Sky, Swatch.Box),
                .. turn > 0 ? new[] { new HeaderEntry("turned 45°", ChartStyle.Orange, Swatch.Box) } : [],
                new HeaderEntry("a tenth of the speed left", ChartStyle.Yellow, Swatch.Box), new HeaderEntry("centre of gravity", ChartStyle.Ink),
            ]);
        return new Chart("pool_push", model, Height: Height);
    }

    private static string Message(PushResult push, Shown shown) => push.TurnM is double way
        ? $"Turns 45° after {shown.Size(way)}, ends {shown.Size(Math.Abs(push.OffsetM))} beside its line"
        : $"Never turns 45°: keeps within {Trade.Fixed(Math.Max(1.0, push.HeadingDeg.Max(h => Math.Abs(h - push.HeadingDeg[0]))), 0)}° of the push";

    // First kept point past the turn; 0 where there is none.
    private static int TurnIndex(PushResult push)
    {
        for (int i = 1; push.TurnM is not null && i < push.HeadingDeg.Count; i++)
        {
            if (Math.Abs(push.HeadingDeg[i] - push.HeadingDeg[0]) >= Turned)
            {
                return i;
            }
        }

        return 0;
    }

    private static PolygonAnnotation Hull(PoolResult pool, int at, OxyColor color, ShownUnit unit)
    {
        double x = pool.Push.XM[at], y = pool.Push.YM[at], psi = pool.Push.HeadingDeg[at] * Degree;
        var rest = new Attitude(0.0, pool.RestTrimDeg * Degree, pool.RestHeelDeg * Degree);
        var outline = new PolygonAnnotation
        {
            YAxisKey = Panels.Key(0),
            Fill = ChartStyle.Faint(color, 0.75),
            Stroke = ChartStyle.Ink,
            StrokeThickness = 2,
            LineStyle = LineStyle.Solid,
            LineJoin = LineJoin.Round,
            Layer = AnnotationLayer.BelowSeries,
        };
        outline.Points.AddRange(LureBody.Of(pool.Lure).FromAbove(rest).Select(p => LureBody.Place(unit.Of(x), unit.Of(y), psi, unit.Of(p.X), unit.Of(p.Y))));
        return outline;
    }
}
