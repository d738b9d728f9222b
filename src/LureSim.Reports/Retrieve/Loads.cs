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
    public static Chart Build(RetrieveResult result)
    {
        Series s = result.Series;
        ValueList<double> time = s["time_s"], nose = s["nose_tension_N"], tip = s["tip_tension_N"], drag = s["line_drag_N"];
        RetrieveSummary sum = result.Summary;
        PlotModel model = ChartStyle.NewModel("Loads over the run",
            $"Line drag {Trade.Fixed(sum.LineDragMeanN, 2)} N on average, at most {Trade.Fixed(sum.LineDragPeakN, 2)} N; nose pull up to "
            + $"{Trade.Fixed(sum.NoseTensionPeakN, 2)} N = {Trade.Digits(Trade.OunceForce(sum.NoseTensionPeakN))} oz-force");
        var panels = new Panels(model, Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, "Tension, N", 0, Top(nose, tip)),
            ChartStyle.NewAxis(AxisPosition.Left, "Line drag, N", 0, Top(drag)),
        ]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", time[0], time[^1]));
        ShadeWarmUp(panels, result, time);
        (double[] t, double[] v) = Thinned.MinMax(time, tip, MostPoints);
        panels.Line(0, t, v, ChartStyle.Vermilion, 2.5);
        (t, v) = Thinned.MinMax(time, nose, MostPoints);
        panels.Line(0, t, v, ChartStyle.Blue, 2.5);
        (t, v) = Thinned.MinMax(time, drag, MostPoints);
        panels.Line(1, t, v, ChartStyle.Green, 2.5);
        panels.Header(0, "Line tension", new("at the rod tip", ChartStyle.Vermilion), new("at the nose", ChartStyle.Blue),
            new("warm-up, not counted", WarmUp, Swatch.Box));
        panels.Header(1, "Drag of water and air on the line", new HeaderEntry("line drag", ChartStyle.Green));
        return new Chart("loads", model, Height: Height);
    }

    private static OxyColor WarmUp => OxyColor.FromRgb(236, 236, 236);

    private static double Top(params ReadOnlySpan<ValueList<double>> channels)
    {
        double top = 0;
        foreach (ValueList<double> values in channels)
        {
            top = Math.Max(top, values.Max());
        }

        return Math.Max(1.05 * top, 0.01);
    }

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
