using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Retrieve;

/// <summary>Tension at both ends of the line, and the water's drag on it, over the whole run.</summary>
public static class Loads
{
    private const int Height = 1000;
    private const int MostPoints = 4000;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Retrieve.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(RetrieveResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        Series s = result.Series;
        RetrieveSummary sum = result.Summary;
        ValueList<double> time = s["time_s"];
        double pull = Math.Max(sum.NoseTensionPeakN, sum.TipForcePeakN);
        ShownUnit tension = shown.Unit(ShownQuantity.Pull, pull), drag = shown.Unit(ShownQuantity.Pull, sum.LineDragPeakN);
        PlotModel model = ChartStyle.NewModel(
            $"The line pulls the nose with up to {shown.Pull(sum.NoseTensionPeakN)}",
            $"At the rod tip up to {shown.Pull(sum.TipForcePeakN)}; drag on the line {shown.Pull(sum.LineDragMeanN)} on average, at most {shown.Pull(sum.LineDragPeakN)}");
        var panels = new Panels(model, Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, $"Pull, {tension.Name}", 0, Top(tension.Of(pull))),
            ChartStyle.NewAxis(AxisPosition.Left, $"Drag, {drag.Name}", 0, Top(drag.Of(sum.LineDragPeakN))),
        ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", time[0], time[^1]));
        ShadeWarmUp(panels, result, time);
        Draw(panels, 0, time, s["tip_tension_N"], tension, ChartStyle.Vermilion, ChartStyle.LineWidth);
        Draw(panels, 0, time, s["nose_tension_N"], tension, ChartStyle.Blue, 2.5);
        Draw(panels, 1, time, s["line_drag_N"], drag, ChartStyle.Green, 2.5);
        panels.Header(0, "Pull of the line", new("at the rod tip", ChartStyle.Vermilion), new("at the nose", ChartStyle.Blue), new(WarmUpWords(s, pull, shown.OneFamily), WarmUp, Swatch.Box));
        panels.Header(1, "Drag of water and air on the line");
        return new Chart("loads", model, Height: Height);
    }

    // Where the frame cuts a peak of the warm-up, the legend says how high it goes.
    private static string WarmUpWords(Series s, double counted, Shown shown)
    {
        double most = Math.Max(s["tip_tension_N"].Max(), s["nose_tension_N"].Max());
        return most > Top(counted) ? $"warm-up, not counted: up to {shown.Pull(most)}" : "warm-up, not counted";
    }

    private static void Draw(Panels panels, int panel, ValueList<double> time, ValueList<double> values, ShownUnit unit, OxyColor color, double width)
    {
        (double[] t, double[] v) = Thinned.MinMax(time, values, MostPoints);
        panels.Line(panel, t, Array.ConvertAll(v, unit.Of), color, width);
    }

    // From what is counted: the first pull of a warm-up may be many times as hard and would flatten the rest.
    private static double Top(double peak) => Math.Max(1.15 * peak, 1e-3);

    private static OxyColor WarmUp => OxyColor.FromRgb(236, 236, 236);

    private static void ShadeWarmUp(Panels panels, RetrieveResult result, ValueList<double> time)
    {
        int n = Math.Min(result.WarmUpTwitches, result.Twitches.Count);
        if (n <= 0)
        {
            return;
        }

        double end = n < result.Twitches.Count ? result.Twitches[n].StartS : time[^1];
        panels.Shade(0, time[0], end, WarmUp);
        panels.Shade(1, time[0], end, WarmUp);
    }
}
