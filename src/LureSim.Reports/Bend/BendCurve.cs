using LureSim.Model.Bend;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Bend;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Bend;

/// <summary>Measured drops over weight, the curve of the fitted rod with its band, and the weight that drops the tip by a third.</summary>
public static class BendCurve
{
    private const int Height = 1000;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fitted test.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(BendReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        Shown one = shown.OneFamily;
        BendFit fit = report.Fit;
        BendEstimate third = fit[BendValue.BendLoad];
        BendRow[] drops = [.. fit.Rows.Where(r => r.Kind == ReadingKind.Drop)];
        ShownUnit load = one.Unit(ShownQuantity.Pull, fit.Curve[^1].LoadN), size = one.Unit(ShownQuantity.Size, 0.1);
        double deepest = size.Of(1.1 * Math.Max(Math.Max(fit.Curve.Max(c => c.High), drops.Max(d => d.Measured)), fit.Test.FreeLengthM / 3.0));
        PlotModel model = ChartStyle.NewModel($"{BendWording.Load(third.Value, one)} at the tip bring it down by a third of the free length", report.File.Name);
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Drop of the tip, {size.Name}", 0.0, deepest)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Weight at the tip, {load.Name}", 0.0, load.Of(fit.Curve[^1].LoadN)));
        OxyColor band = ChartStyle.Faint(ChartStyle.Sky, 0.4);
        model.Series.Add(Band(fit, load, size, band));
        panels.Line(0, [.. fit.Curve.Select(c => load.Of(c.LoadN))], [.. fit.Curve.Select(c => size.Of(c.DropM))], ChartStyle.Blue);
        double down = size.Of(fit.Test.FreeLengthM / 3.0);
        panels.Line(0, [0.0, load.Of(fit.Curve[^1].LoadN)], [down, down], ChartStyle.Green, 3, LineStyle.Dash);
        panels.Shade(0, load.Of(third.Low), load.Of(third.High), ChartStyle.Faint(ChartStyle.Orange, 0.35));
        var dots = new ScatterSeries { YAxisKey = Panels.Key(0), MarkerType = MarkerType.Circle, MarkerSize = 10, MarkerFill = ChartStyle.Vermilion };
        dots.Points.AddRange(drops.Select(d => new ScatterPoint(load.Of(d.LoadN), size.Of(d.Measured))));
        model.Series.Add(dots);
        if (fit.Odd is { Kind: ReadingKind.Drop } odd)
        {
            model.Annotations.Add(Ring(load.Of(odd.LoadN), size.Of(odd.Measured)));
        }

        panels.Header(
            0, "Bend test", new("measured", ChartStyle.Vermilion, Swatch.Dot), new("fitted rod", ChartStyle.Blue), new("in 80 of 100 tests", band, Swatch.Box),
            new("a third down", ChartStyle.Green, Swatch.Dash), new("weight for it", ChartStyle.Faint(ChartStyle.Orange, 0.35), Swatch.Box));
        return new Chart("bend_curve", model, Height: Height);
    }

    private static AreaSeries Band(BendFit fit, ShownUnit load, ShownUnit size, OxyColor color)
    {
        var area = new AreaSeries { YAxisKey = Panels.Key(0), Fill = color, Color = OxyColors.Transparent, Color2 = OxyColors.Transparent };
        foreach (BendPoint point in fit.Curve)
        {
            area.Points.Add(new DataPoint(load.Of(point.LoadN), size.Of(point.Low)));
            area.Points2.Add(new DataPoint(load.Of(point.LoadN), size.Of(point.High)));
        }

        return area;
    }

    // The reading that does not fit the others.
    private static PointAnnotation Ring(double x, double y) => new()
    {
        YAxisKey = Panels.Key(0),
        X = x,
        Y = y,
        Size = 20,
        Shape = MarkerType.Circle,
        Fill = OxyColors.Transparent,
        Stroke = ChartStyle.Ink,
        StrokeThickness = 4,
        Text = "does not fit the others",
        TextHorizontalAlignment = HorizontalAlignment.Center,
        TextVerticalAlignment = VerticalAlignment.Top,
        TextMargin = 26,
    };
}
