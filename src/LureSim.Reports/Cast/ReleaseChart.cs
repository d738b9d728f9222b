using LureSim.Model.Cast;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Distance against the moment of release.</summary>
public static class ReleaseChart
{
    private const double ReachMs = 40;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        ReleasePoint[] near = [.. result.ReleaseCurve.Where(p => Math.Abs(1e3 * p.DelayS) <= ReachMs)];
        double[] x = [.. near.Select(p => 1e3 * p.DelayS)], y = [.. near.Select(p => result.DistanceM + p.ChangeM)];
        double sigma = 1e3 * result.Setup.Hands.ReleaseErrorS;
        double reach = 1.05 * Math.Max(1.0, Math.Max(sigma, x.Max(Math.Abs)));
        double low = Math.Min(0.0, y.Min()), high = Math.Max(1.0, y.Max());
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, high);
        PlotModel model = ChartStyle.NewModel(
            $"Let go 0.01 s late: {CastAcrossWords.Change(result.DistanceChangeM(0.010), shown)}; 0.01 s early: {CastAcrossWords.Change(result.DistanceChangeM(-0.010), shown)}",
            $"{result.Setup.Title}: let go {Trade.Fixed(result.ReleaseTimeS, 3)} s after the start of the swing");
        var panels = new Panels(model, 900, [ChartStyle.NewAxis(AxisPosition.Left, $"Distance, {unit.Name}", unit.Of(1.1 * low), unit.Of(1.12 * high))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Later than in this cast, thousandths of a second (negative: earlier)", -reach, reach));
        panels.Shade(0, -sigma, sigma, ChartStyle.Light);
        double[] distance = [.. y.Select(unit.Of)];
        panels.Line(0, x, distance, Looks.Lure);
        panels.Dots(0, x, distance, Looks.Lure, 6);
        panels.Dots(0, [0.0], [unit.Of(result.DistanceM)], new Look(Looks.Mean), 12);
        panels.Header(0, "Distance",
            new("by the moment", Looks.Lure), new("this cast", Looks.Mean, Swatch.Dot), new("two of three casts", ChartStyle.Light, Swatch.Box));
        return new Chart("cast_release", model, Height: 900);
    }
}
