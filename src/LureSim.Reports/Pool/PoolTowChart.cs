using LureSim.Model.Pool;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Pool;

/// <summary>Sheer and trim over the speed of the tow.</summary>
public static class PoolTowChart
{
    private const int Height = 900;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, PoolResult pool, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(shown);
        PlotModel model = ChartStyle.NewModel(Message(pool, shown), $"{title}, towed on {shown.OneFamily.Distance(pool.Task.TowLineM)} of line");
        ShownUnit unit = shown.Unit(ShownQuantity.Speed, pool.Tow.Max(t => t.SpeedMS));
        double[] speed = [.. pool.Tow.Select(t => unit.Of(t.SpeedMS))], sheer = [.. pool.Tow.Select(t => t.SheerDeg)], trim = [.. pool.Tow.Select(t => t.TrimDeg)];
        double most = Math.Max(10.0, 1.25 * sheer.Max()), low = Math.Min(0.0, Math.Min(pool.RestTrimDeg, trim.Min())), high = Math.Max(pool.RestTrimDeg, trim.Max());
        double room = 0.15 * Math.Max(high - low, 4.0);
        var panels = new Panels(
            model, Height,
            [
                ChartStyle.NewAxis(AxisPosition.Left, "Sheer, deg", -0.05 * most, most),
                ChartStyle.NewAxis(AxisPosition.Left, "Trim, deg", low - room, high + room),
            ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Speed of the tow, {unit.Name}", 0.0, 1.08 * speed[^1]));
        panels.Line(0, speed, sheer, ChartStyle.Green);
        panels.Line(1, speed, trim, ChartStyle.Blue);
        Dots(panels, 0, speed, sheer, ChartStyle.Green);
        Dots(panels, 1, speed, trim, ChartStyle.Blue);
        panels.Level(1, pool.RestTrimDeg, ChartStyle.Grey);
        foreach (TowRow row in pool.Tow.Where(t => t.Course is not (TowCourse.Straight or TowCourse.Sheers)))
        {
            panels.Words(0, unit.Of(row.SpeedMS), 0.93 * most, PoolFigures.Name(row.Course), OxyColors.White);
        }

        panels.Header(0, "Angle between axis and line, from above", new HeaderEntry("mean over the end of the tow", ChartStyle.Green));
        panels.Header(1, "Nose up", new HeaderEntry("towed", ChartStyle.Blue), new HeaderEntry("at rest", ChartStyle.Grey));
        return new Chart("pool_tow", model, Height: Height);
    }

    private static string Message(PoolResult pool, Shown shown) => pool.Course switch
    {
        TowCourse.Straight => $"Comes straight from {shown.Range(ShownQuantity.Speed, pool.Tow[0].SpeedMS, pool.Tow[^1].SpeedMS)}",
        TowCourse.Sheers => $"Sheers {Trade.Fixed(pool.SheerDeg, 0)}° off its line at {shown.Speed(pool.Tow.MaxBy(t => t.SheerDeg)!.SpeedMS)}",
        TowCourse.Fishtails => "Fishtails on a tight line",
        TowCourse.NoseUnder => "The tow pulls its nose under",
        TowCourse.Dives => "Dives when it is towed",
        _ => "Rolls over when it is towed",
    };

    private static void Dots(Panels panels, int panel, double[] x, double[] y, OxyColor color)
    {
        var dots = new ScatterSeries { YAxisKey = Panels.Key(panel), MarkerType = MarkerType.Circle, MarkerSize = 8, MarkerFill = color };
        dots.Points.AddRange(x.Zip(y, (a, b) => new ScatterPoint(a, b)));
        panels.Model.Series.Add(dots);
    }
}
