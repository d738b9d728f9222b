using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Distance and loose line against the strength of the spool's brake.</summary>
public static class BrakeChart
{
    // A marker on zero stays whole.
    private const double Below = 0.07;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Cast with the curve of its brakes, two points or more.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastReport report, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        shown ??= Shown.Both;
        IReadOnlyList<BrakePoint> curve = report.Brakes;
        double[] strength = [.. curve.Select(b => b.Strength)];
        double farthest = curve.Max(b => b.DistanceMeanM), loops = Math.Max(0.5, curve.Max(b => b.LoopsMean)), tangles = Math.Max(10.0, 100.0 * curve.Max(b => b.TangleShare));
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, farthest);
        PlotModel model = ChartStyle.NewModel(Title(report, farthest, shown), $"{report.Cast.Setup.Title}; 1 is the brake with which spool and lure slow together");
        var panels = new Panels(model, ChartStyle.Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, unit.Name, -Below * unit.Of(farthest), 1.15 * unit.Of(farthest)),
            ChartStyle.NewAxis(AxisPosition.Left, "loops", -Below * loops, 1.15 * loops),
            ChartStyle.NewAxis(AxisPosition.Left, "of 100", -Below * tangles, 1.15 * tangles),
        ], [1.4, 1.0, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Strength of the brake", -0.02 * strength[^1], 1.02 * strength[^1]));
        Draw(panels, 0, strength, [.. curve.Select(b => unit.Of(b.DistanceMeanM))], Looks.Lure);
        Draw(panels, 1, strength, [.. curve.Select(b => b.LoopsMean)], Looks.Spool.Solid);
        Draw(panels, 2, strength, [.. curve.Select(b => 100.0 * b.TangleShare)], Looks.Hand.Solid with { Marker = MarkerType.Square });
        if (report.LeastBrake is double least and > 0.0)
        {
            Mark(panels, least);
        }

        panels.Header(0, "Distance, mean of many casts", report.LeastBrake > 0.0 ? [new("least brake that will do", ChartStyle.Grey, Swatch.Dash)] : []);
        panels.Header(1, "Loose line on the spool, mean of many casts");
        panels.Header(2, "Casts that tangle (a guess: spools bear 0.6 to 5 loops)");
        return new Chart("cast_brake", model);
    }

    private static string Title(CastReport report, double farthestM, Shown shown) => report.LeastBrake switch
    {
        null => $"Even the strongest brake leaves more than one tangle in twenty casts, at {shown.Distance(report.Brakes[^1].DistanceMeanM)}",
        0.0 => "This thumb needs no brake: fewer than one cast in twenty tangles",
        double least => $"A brake of {Trade.Fixed(least, 1)} costs {shown.Distance(Math.Max(0.0, farthestM - At(report.Brakes, least)))} and keeps tangles under one cast in twenty",
    };

    // Straight between the points, as the least brake is found.
    private static double At(IReadOnlyList<BrakePoint> curve, double strength)
    {
        int after = Math.Max(1, curve.TakeWhile(b => b.Strength < strength).Count());
        (BrakePoint a, BrakePoint b) = (curve[after - 1], curve[after]);
        return a.DistanceMeanM + ((strength - a.Strength) / (b.Strength - a.Strength) * (b.DistanceMeanM - a.DistanceMeanM));
    }

    private static void Draw(Panels panels, int panel, double[] x, double[] y, Look look)
    {
        panels.Line(panel, x, y, look);
        panels.Dots(panel, x, y, look);
    }

    private static void Mark(Panels panels, double strength)
    {
        for (int i = 0; i < 3; i++)
        {
            panels.Model.Annotations.Add(new LineAnnotation
            {
                YAxisKey = Panels.Key(i),
                Type = LineAnnotationType.Vertical,
                X = strength,
                Color = ChartStyle.Grey,
                StrokeThickness = 3,
                LineStyle = LineStyle.Dash,
            });
        }
    }
}
