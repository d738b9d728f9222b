using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>Speed of tip, lure, line and spool over time; loose loops below (or the pull at the tip for a fixed spool).</summary>
public static class CastSpeeds
{
    private const int Height = 1100;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    public static Chart Build(CastResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CastSeries s = result.Series;
        bool revolving = result.Setup.Reel.Kind == ReelKind.Revolving;
        ValueList<double> lower = revolving ? [.. s.LooseM.Zip(s.LoopM, (loose, loop) => loose / loop)] : s.TensionN;
        double top = 1.08 * Math.Max(s.LureSpeedMS.Max(), Math.Max(s.TipSpeedMS.Max(), s.SpoolSpeedMS.Max()));
        PlotModel model = ChartStyle.NewModel("Speeds through swing and flight", Subtitle(result, revolving));
        var panels = new Panels(model, Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, "Speed, m/s", 0, top),
            ChartStyle.NewAxis(AxisPosition.Left, revolving ? "Loops" : "Pull, N", 0, Math.Max(1.1 * lower.Max(), 0.1)),
        ], [1.7, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time from the start of the swing, s", 0, 1.01 * s.TimeS[^1]));
        OxyColor swing = OxyColor.FromRgb(236, 236, 236);
        panels.Shade(0, 0, result.ReleaseTimeS, swing);
        panels.Shade(1, 0, result.ReleaseTimeS, swing);
        panels.Line(0, s.TimeS, s.TipSpeedMS, ChartStyle.Purple, 3);
        panels.Line(0, s.TimeS, s.LureSpeedMS, ChartStyle.Blue);
        Released(panels, result, s.LineSpeedMS, ChartStyle.Green, LineStyle.Solid);
        Released(panels, result, s.SpoolSpeedMS, ChartStyle.Vermilion, LineStyle.Dash);
        panels.Line(1, s.TimeS, lower, revolving ? ChartStyle.Vermilion : ChartStyle.Blue);
        panels.Header(0, "Speed",
            new("lure", ChartStyle.Blue), new("rod tip", ChartStyle.Purple), new("line: lure from tip", ChartStyle.Green),
            new(revolving ? "spool gives" : "reel gives", ChartStyle.Vermilion, Swatch.Dash), new("swing", swing, Swatch.Box));
        panels.Header(1, revolving ? "Loose line, in loops on the spool" : "Pull of the line at the rod tip");
        return new Chart("cast_speeds", model, Height: Height);
    }

    private static string Subtitle(CastResult result, bool revolving) => revolving
        ? $"The spool peaks at {Trade.Rpm(result.SpoolPeakRpm)}; at most {Trade.Fixed(result.LoopsThrown, 1)} loops lie loose"
        : $"The lure leaves at {Trade.Fixed(result.LaunchSpeedMS, 1)} m/s and lands at {Trade.Fixed(result.Series.LureSpeedMS[^1], 1)} m/s";

    private static void Released(Panels panels, CastResult result, ValueList<double> speed, OxyColor color, LineStyle style)
    {
        int from = result.Series.TimeS.TakeWhile(t => t < result.ReleaseTimeS).Count();
        panels.Line(0, result.Series.TimeS[from..], Array.ConvertAll(speed[from..].ToArray(), v => Math.Max(0.0, v)), color, 3, style);
    }
}
