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
    private static readonly OxyColor Scatter = ChartStyle.Pale(Looks.Casts, 0.25);

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit to two or more casts.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(MatchReport report, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        shown ??= Shown.Both;
        MatchFit fit = report.Fit;
        double low = Math.Min(fit.Rows.Min(r => r.MeasuredM), fit.Rows.Min(r => r.ComputedM));
        double high = Math.Max(fit.Rows.Max(r => r.MeasuredM), fit.Rows.Max(r => r.ComputedM));
        double margin = Math.Max(0.25 * (high - low), 0.06 * high);
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, high);
        (low, high) = (unit.Of(Math.Max(0.0, low - margin)), unit.Of(high + margin));
        PlotModel model = ChartStyle.NewModel(
            $"One effort of {Trade.Fixed(fit.Effort, 2)} explains {fit.Casts} casts; they scatter by {Trade.Fixed(100.0 * fit.ScatterShare, 1)} %",
            fit.Rows.All(r => r.Casts == 1) ? "One dot, one cast" : "One dot, one cast or the mean of some");
        var panels = new Panels(model, ChartStyle.Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Measured, {unit.Name}", low, high)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Computed with that effort, {unit.Name}", low, high));
        model.Series.Add(Band(low, high, fit.ScatterShare, Scatter));
        panels.Line(0, [low, high], [low, high], Looks.Reference, 2.5);
        panels.Dots(0, fit.Rows.Select(r => unit.Of(r.ComputedM)), fit.Rows.Select(r => unit.Of(r.MeasuredM)), Looks.Lure, 10);
        panels.Header(
            0, string.Empty, new("as computed", Looks.Reference), new("two of three casts", Scatter, Swatch.Box), new("measured", Looks.Lure.Color, Swatch.Dot));
        return new Chart("cast_match", model);
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
