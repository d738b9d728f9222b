using LureSim.Model.Bend;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Bend;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Bend;

/// <summary>The test itself, to scale: the fitted rod held at its grip under each weight, and where the tip was measured.</summary>
public static class BendShapes
{
    private const int Width = 1600, Height = 1000;

    // A thread of this length carries the weight, m.
    private const double ThreadM = 0.06;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fitted test.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(BendReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        Shown one = shown.OneFamily;
        BendFit fit = report.Fit;
        ShownUnit unit = one.Unit(ShownQuantity.Distance, fit.Test.LengthM);
        string steps = fit.DropShareReached >= 1.0 / 3.0 ? "more than a third" : $"{Trade.Fixed(100.0 * fit.DropShareReached, 0)} %";
        PlotModel model = ChartStyle.NewModel($"The test to scale: the tip went down by {steps} of the free length", report.File.Name);
        model.PlotType = PlotType.Cartesian;
        double left = unit.Of(-fit.Test.ClampedM - 0.1), right = unit.Of(fit.Test.FreeLengthM + 0.35);
        double lowest = unit.Of(Math.Min(fit.Shapes.Min(s => s.YM.Min()) - (2.0 * ThreadM), -0.4 * fit.Test.FreeLengthM)), top = unit.Of(0.12);
        double room = Math.Max(0.0, (0.48 * (right - left)) - (top - lowest));
        var panels = new Panels(model, Height, [ChartStyle.NewAxis(AxisPosition.Left, $"Height over the clamp, {unit.Name}", lowest - (0.7 * room), top + (0.3 * room))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"From the clamp, {unit.Name}", left, right));
        Table(model, unit, fit, lowest - room);
        double third = unit.Of(fit.Shapes[0].YM[^1] - (fit.Test.FreeLengthM / 3.0));
        panels.Line(0, [0.0, unit.Of(fit.Shapes.Min(s => s.XM[^1]) - 0.04)], [third, third], ChartStyle.Green, 3, LineStyle.Dash);
        panels.Line(0, [unit.Of(-fit.Test.ClampedM), 0.0], [0.0, 0.0], ChartStyle.Ink, 12);
        foreach (BentShape shape in fit.Shapes)
        {
            Draw(panels, shape, unit, one);
        }

        foreach (BendRow row in fit.Rows.Where(r => r.Kind == ReadingKind.Drop))
        {
            Measured(model, fit, row, unit);
        }

        panels.Header(
            0, "Side view", new("without a weight", ChartStyle.Grey), new("with a weight", ChartStyle.Blue), new("tip as measured", ChartStyle.Vermilion, Swatch.Ring),
            new("a third down", ChartStyle.Green, Swatch.Dash));
        return new Chart("bend_shapes", model, Width, Height);
    }

    // What the rod is clamped to.
    private static void Table(PlotModel model, ShownUnit unit, BendFit fit, double bottom) => model.Annotations.Add(new RectangleAnnotation
    {
        YAxisKey = Panels.Key(0),
        MinimumX = unit.Of(-fit.Test.ClampedM - 0.1),
        MaximumX = 0.0,
        MinimumY = bottom,
        MaximumY = unit.Of(-0.02),
        Fill = ChartStyle.Faint(ChartStyle.Grey, 0.35),
        Layer = AnnotationLayer.BelowSeries,
    });

    private static void Draw(Panels panels, BentShape shape, ShownUnit unit, Shown one)
    {
        bool bare = shape.LoadN == 0.0;
        panels.Line(0, [.. shape.XM.Select(unit.Of)], [.. shape.YM.Select(unit.Of)], bare ? ChartStyle.Grey : ChartStyle.Blue, bare ? 3 : 5);
        if (bare)
        {
            return;
        }

        double x = unit.Of(shape.XM[^1]), tip = unit.Of(shape.YM[^1]), end = unit.Of(shape.YM[^1] - ThreadM);
        panels.Line(0, [x, x], [tip, end], ChartStyle.Ink, 2);
        panels.Model.Annotations.Add(new PointAnnotation
        {
            YAxisKey = Panels.Key(0),
            X = x,
            Y = end,
            Size = 10,
            Shape = MarkerType.Square,
            Fill = ChartStyle.Ink,
            Text = BendWording.Load(shape.LoadN, one),
            TextHorizontalAlignment = HorizontalAlignment.Left,
            TextVerticalAlignment = VerticalAlignment.Middle,
            TextMargin = 16,
        });
    }

    // At the tip's own place along the level; its height as it was read.
    private static void Measured(PlotModel model, BendFit fit, BendRow row, ShownUnit unit)
    {
        BentShape shape = fit.Shapes.First(s => s.LoadN == row.LoadN), bare = fit.Shapes[0];
        double from = fit.Test.IsFromLevel ? 0.0 : bare.YM[^1];
        model.Annotations.Add(new PointAnnotation
        {
            YAxisKey = Panels.Key(0),
            X = unit.Of(shape.XM[^1]),
            Y = unit.Of(from - row.Measured),
            Size = 8,
            Shape = MarkerType.Circle,
            Fill = OxyColors.White,
            Stroke = ChartStyle.Vermilion,
            StrokeThickness = 4,
        });
    }
}
