using LureSim.Model;
using LureSim.Model.Crawl;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Crawl;

/// <summary>Way of the lure over time, twitch by twitch, and the pulls that make it.</summary>
public static class CrawlChart
{
    private const int Height = 1000, MostPoints = 4000;

    /// <summary>Builds the picture.</summary>
    /// <param name="crawl">Crawl.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(CrawlResult crawl, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(crawl);
        ArgumentNullException.ThrowIfNull(shown);
        Series s = crawl.Series;
        ValueList<double> time = s["time_s"];
        double goal = crawl.Task.ToOpeningM, most = Math.Max(crawl.Summary.TipPullPeakN, crawl.Summary.NosePullPeakN);
        ShownUnit length = shown.Unit(ShownQuantity.Distance, goal), pull = shown.Unit(ShownQuantity.Pull, most);
        PlotModel model = ChartStyle.NewModel(CrawlWords.End(crawl, shown.OneFamily), $"{crawl.Setup.Title}, {shown.OneFamily.Distance(crawl.Task.DistanceM)} out, stroke {shown.OneFamily.Size(crawl.Task.StrokeM)}");
        var panels = new Panels(
            model, Height,
            [
                ChartStyle.NewAxis(AxisPosition.Left, $"Way, {length.Name}", 0.0, 1.12 * length.Of(goal)),
                ChartStyle.NewAxis(AxisPosition.Left, $"Pull, {pull.Name}", 0.0, 1.15 * Math.Max(pull.Of(most), 1e-3)),
            ],
            [1.3, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", 0.0, Math.Max(time[^1], 1e-3)));
        panels.Level(0, length.Of(goal), ChartStyle.Grey);
        Draw(panels, 0, time, s["way_m"], length, Looks.Lure);
        (double[] at, double[] ways) = Starts(crawl);
        panels.Dots(0, at, ways.Select(length.Of), Looks.Lure, at.Length > 60 ? 4 : 7);
        panels.Header(0, "Way toward the rod", new("lure", Looks.Lure), new("a pull begins", Looks.Lure.Color, Swatch.Dot), new("opening", ChartStyle.Grey));
        Draw(panels, 1, time, s["tip_tension_N"], pull, Looks.TipPull);
        Draw(panels, 1, time, s["nose_tension_N"], pull, Looks.NosePull);
        panels.Header(1, "Pull of the line", new("at the rod tip", Looks.TipPull), new("at the lure", Looks.NosePull));
        return new Chart("crawl", model, Height: Height);
    }

    private static void Draw(Panels panels, int panel, ValueList<double> time, ValueList<double> values, ShownUnit unit, Look look)
    {
        (double[] x, double[] y) = Thinned.MinMax(time, values, MostPoints);
        panels.Line(panel, x, Array.ConvertAll(y, unit.Of), look);
    }

    // Where each pull begins; the last twitch may not be a whole one.
    private static (double[] TimeS, double[] WayM) Starts(CrawlResult crawl)
    {
        ValueList<CrawlTwitch> twitches = crawl.Summary.Twitches;
        double[] ways = new double[twitches.Count + 1];
        for (int i = 0; i < twitches.Count; i++)
        {
            ways[i + 1] = ways[i] + twitches[i].WayM;
        }

        return ([.. Enumerable.Range(0, ways.Length).Select(i => i / crawl.Task.CadencePerS)], ways);
    }
}
