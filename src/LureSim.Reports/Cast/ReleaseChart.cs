using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cast;

/// <summary>Distance against the moment of release.</summary>
public static class ReleaseChart
{
    private const double ReachMs = 40;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    public static Chart Build(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        ReleasePoint[] near = [.. result.ReleaseCurve.Where(p => Math.Abs(1e3 * p.DelayS) <= ReachMs)];
        double[] x = [.. near.Select(p => 1e3 * p.DelayS)], y = [.. near.Select(p => result.DistanceM + p.ChangeM)];
        double sigma = 1e3 * result.Setup.Hands.ReleaseErrorS;
        double reach = 1.05 * Math.Max(1.0, Math.Max(sigma, x.Max(Math.Abs)));
        double low = Math.Min(0.0, y.Min()), high = Math.Max(1.0, y.Max());
        PlotModel model = ChartStyle.NewModel("Distance against the moment of release",
            $"10 ms early: {Signed(result.DistanceChangeM(-0.010))} m; 10 ms late: {Signed(result.DistanceChangeM(0.010))} m");
        var panels = new Panels(model, 900, [ChartStyle.NewAxis(AxisPosition.Left, "Distance, m", 1.1 * low, 1.12 * high)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Later than in this cast, ms (negative: earlier)", -reach, reach));
        OxyColor band = OxyColor.FromRgb(236, 236, 236);
        panels.Shade(0, -sigma, sigma, band);
        panels.Line(0, x, y, ChartStyle.Blue);
        Dots(model, x, y, ChartStyle.Blue, 5);
        Dots(model, [0.0], [result.DistanceM], ChartStyle.Vermilion, 11);
        panels.Header(0, $"Released after {Trade.Fixed(result.ReleaseTimeS, 3)} s",
            new("distance", ChartStyle.Blue), new("this cast", ChartStyle.Vermilion, Swatch.Dot),
            new($"two of three casts: ±{Trade.Fixed(sigma, 0)} ms", band, Swatch.Box));
        return new Chart("cast_release", model, Height: 900);
    }

    private static void Dots(PlotModel model, double[] x, double[] y, OxyColor color, double size)
    {
        var dots = new ScatterSeries { YAxisKey = Panels.Key(0), MarkerType = MarkerType.Circle, MarkerSize = size, MarkerFill = color };
        dots.Points.AddRange(x.Zip(y, (a, b) => new ScatterPoint(a, b)));
        model.Series.Add(dots);
    }

    private static string Signed(double m) => (m > 0.0 ? "+" : "") + Trade.Fixed(m, 1);
}
