using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cast;

/// <summary>Measured against computed distance of several casts.</summary>
public static class MatchChart
{
    private const int Height = 1000;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit to two or more casts.</param>
    public static Chart Build(MatchReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        MatchFit fit = report.Fit;
        double low = Math.Min(fit.Rows.Min(r => r.MeasuredM), fit.Rows.Min(r => r.ComputedM));
        double high = Math.Max(fit.Rows.Max(r => r.MeasuredM), fit.Rows.Max(r => r.ComputedM));
        double margin = Math.Max(0.25 * (high - low), 0.06 * high);
        (low, high) = (Math.Max(0.0, low - margin), high + margin);
        PlotModel model = ChartStyle.NewModel(
            "Measured casts against the model",
            $"Effort {Trade.Fixed(fit.Effort, 2)} for all {fit.Casts} casts; they scatter by {Trade.Fixed(100.0 * fit.ScatterShare, 1)} %");
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, "Measured, m", low, high)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Computed with that effort, m", low, high));
        OxyColor band = ChartStyle.Faint(ChartStyle.Sky, 0.3);
        model.Series.Add(Band(low, high, fit.ScatterShare, band));
        panels.Line(0, [low, high], [low, high], ChartStyle.Grey, 2.5);
        var dots = new ScatterSeries { YAxisKey = Panels.Key(0), MarkerType = MarkerType.Circle, MarkerSize = 10, MarkerFill = ChartStyle.Blue };
        dots.Points.AddRange(fit.Rows.Select(r => new ScatterPoint(r.ComputedM, r.MeasuredM)));
        model.Series.Add(dots);
        panels.Header(
            0, report.Fit.Rows.All(r => r.Casts == 1) ? "One dot, one cast" : "One dot, one cast or the mean of some", new("as computed", ChartStyle.Grey), new("one sigma of their scatter", band, Swatch.Box), new("measured", ChartStyle.Blue, Swatch.Dot));
        return new Chart("cast_match", model, Height: Height);
    }

    private static AreaSeries Band(double low, double high, double share, OxyColor color)
    {
        var area = new AreaSeries { YAxisKey = Panels.Key(0), Fill = color, Color = OxyColors.Transparent, Color2 = OxyColors.Transparent };
        foreach (double x in (double[])[low, high])
        {
            area.Points.Add(new DataPoint(x, x * (1.0 - share)));
            area.Points2.Add(new DataPoint(x, x * (1.0 + share)));
        }

        return area;
    }
}
