using LureSim.Model.Pool;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Pool;

/// <summary>Roll, heave and pitch over time after letting go.</summary>
public static class PoolSwingChart
{
    private const double PanelHeight = 300.0, Rest = 260.0, SeenShare = 0.02, Swings = 2.5;

    /// <summary>Builds the picture.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(string title, PoolResult pool, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(shown);
        ShownUnit unit = shown.Unit(ShownQuantity.Size, Math.Abs(pool.Heave.Release));
        Panel[] all =
        [
            .. pool.Roll.Trace.Count == 0 ? [] : new[] { new Panel(pool.Roll, "Let go heeled", "Roll, deg", 1.0, ChartStyle.Vermilion) },
            new Panel(pool.Heave, "Let go pressed down", $"Heave, {unit.Name}", 1.0 / unit.Si, ChartStyle.Ink),
            new Panel(pool.Pitch, "Let go with the nose pressed down", "Pitch, deg", 1.0, ChartStyle.Blue),
        ];
        int height = (int)(Rest + (PanelHeight * all.Length));
        PlotModel model = ChartStyle.NewModel(Message(pool), title);
        var panels = new Panels(model, height, [.. all.Select(Axis)]);
        double end = End(all);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time since letting go, s", 0.0, end));
        for (int i = 0; i < all.Length; i++)
        {
            int count = all[i].Swing.TimeS.Count(t => t <= end);
            panels.Level(i, 0.0, ChartStyle.Grey);
            panels.Line(i, all[i].Swing.TimeS[..count], Array.ConvertAll([.. all[i].Swing.Trace.Take(count)], v => all[i].Scale * v), all[i].Color);
            panels.Header(i, all[i].Words, new HeaderEntry(Told(all[i].Swing), all[i].Color));
        }

        return new Chart("pool_swings", model, Height: height);
    }

    // Until nothing moves to the eye, but no more than a few swings, and no farther than every trace goes.
    private static double End(Panel[] all)
    {
        double slowest = all.Max(p => p.Swing.PeriodS ?? 0.0), seen = 1.08 * all.Max(p => LastSeen(p.Swing));
        return Math.Min(all.Min(p => p.Swing.TimeS[^1]), slowest > 0.0 ? Math.Min(seen, Swings * slowest) : seen);
    }

    private static string Message(PoolResult pool)
    {
        string roll = pool.Roll.Trace.Count == 0 ? "Stands too steep to roll" : pool.Roll.PeriodS is double r ? $"Rolls in {Trade.Fixed(r, 2)} s" : "Does not swing in roll";
        return $"{roll}, {(pool.Heave.PeriodS is double h ? $"bobs in {Trade.Fixed(h, 2)} s" : "bobs no more than once")}";
    }

    private static string Told(SwingResult swing) => swing.PeriodS is double period
        ? $"period {Trade.Fixed(period, 2)} s, loses {Trade.Fixed(100.0 * swing.LossShare!.Value, 0)} % a swing"
        : "does not swing";

    private static LinearAxis Axis(Panel p)
    {
        double low = Math.Min(0.0, p.Swing.Trace.Min()), high = Math.Max(0.0, p.Swing.Trace.Max()), room = 0.1 * Math.Max(high - low, 1e-6);
        return ChartStyle.NewAxis(AxisPosition.Left, p.YTitle, p.Scale * (low - room), p.Scale * (high + room));
    }

    private static double LastSeen(SwingResult swing)
    {
        int last = swing.Trace.Count - 1;
        while (last > 0 && Math.Abs(swing.Trace[last]) < SeenShare * Math.Abs(swing.Release))
        {
            last--;
        }

        return swing.TimeS[last];
    }

    private sealed record Panel(SwingResult Swing, string Words, string YTitle, double Scale, OxyColor Color);
}
