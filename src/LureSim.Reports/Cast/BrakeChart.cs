using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Distance and loose line against the strength of the spool's brake.</summary>
public static class BrakeChart
{
    private const int Height = 1000;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Cast with the curve of its brakes, two points or more.</param>
    public static Chart Build(CastReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        IReadOnlyList<BrakePoint> curve = report.Brakes;
        double[] strength = [.. curve.Select(b => b.Strength)];
        BrakePoint farthest = curve.MaxBy(b => b.DistanceMeanM)!;
        PlotModel model = ChartStyle.NewModel("What a brake costs, and what it saves", report.LeastBrake switch
        {
            null => $"Even the strongest leaves more than one tangle in twenty casts; farthest {Trade.Fixed(farthest.DistanceMeanM, 1)} m",
            0.0 => "This thumb needs no brake: fewer than one cast in twenty tangles",
            double least => $"From {Trade.Fixed(least, 1)} of the brake that matches the lure on, fewer than one cast in twenty tangles",
        });
        var panels = new Panels(model, Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, "Mean distance, m", 0.0, 1.15 * curve.Max(b => b.DistanceMeanM)),
            ChartStyle.NewAxis(AxisPosition.Left, "Loops", 0.0, 1.15 * Math.Max(0.5, curve.Max(b => b.LoopsMean))),
            ChartStyle.NewAxis(AxisPosition.Left, "Casts, %", 0.0, Math.Max(10.0, 115.0 * curve.Max(b => b.TangleShare))),
        ], [1.4, 1.0, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Strength of the brake (1: spool and lure slow together)", 0.0, strength[^1]));
        panels.Line(0, strength, [.. curve.Select(b => b.DistanceMeanM)], ChartStyle.Blue);
        panels.Line(1, strength, [.. curve.Select(b => b.LoopsMean)], ChartStyle.Vermilion);
        panels.Line(2, strength, [.. curve.Select(b => 100.0 * b.TangleShare)], ChartStyle.Purple);
        panels.Header(0, "Distance, mean of many casts");
        panels.Header(1, "Loose line on the spool, mean of many casts");
        panels.Header(2, "Casts that tangle (a guess: spools bear 0.6 to 5 loops)");
        return new Chart("cast_brake", model, Height: Height);
    }
}
