using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LureSim.Reports.Cast;

/// <summary>Speed of lure and tip, below it the line that the lure takes beside that which the reel gives, and loose loops (or the pull at the tip for a
/// fixed spool).</summary>
public static class CastSpeeds
{
    private const double Thin = 3;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        CastSeries s = result.Series;
        bool revolving = result.Setup.Reel.Kind == ReelKind.Revolving;
        double top = Math.Max(s.LureSpeedMS.Max(), s.TipSpeedMS.Max()), given = Math.Max(s.LineSpeedMS.Max(), s.SpoolSpeedMS.Max());
        ShownUnit speed = shown.Unit(ShownQuantity.Speed, top);
        PlotModel model = ChartStyle.NewModel(Title(result, revolving, shown), Subtitle(result, revolving, shown));
        (double[] lower, string axis, Look look) = Lowest(s, revolving, shown);
        var panels = new Panels(model, ChartStyle.Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, speed.Name, 0, 1.08 * speed.Of(top)),
            ChartStyle.NewAxis(AxisPosition.Left, speed.Name, 0, 1.12 * speed.Of(Math.Max(given, 0.1))),
            ChartStyle.NewAxis(AxisPosition.Left, axis, 0, Math.Max(1.1 * lower.Max(), 0.1)),
        ], [1.5, 1.5, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time from the start of the swing, s", 0, 1.01 * s.TimeS[^1]));
        for (int i = 0; i < 3; i++)
        {
            panels.Shade(i, 0, result.ReleaseTimeS, ChartStyle.Light);
        }

        panels.Line(0, s.TimeS, Scaled(s.TipSpeedMS, speed), Looks.Rod, Thin);
        panels.Line(0, s.TimeS, Scaled(s.LureSpeedMS, speed), Looks.Lure);
        AddGiven(panels, result, speed);
        panels.Line(2, s.TimeS, lower, look.Solid);
        panels.Header(0, "Speed of the lure", new("lure", Looks.Lure), new("rod tip", Looks.Rod), new("swing", ChartStyle.Light, Swatch.Box));
        panels.Header(1, revolving ? "Does the spool keep to the line?" : "Line off the reel",
            new("taken by the lure", Looks.Line.Pale(0.45).Color, Swatch.Box), new(revolving ? "given by the spool" : "given by the reel", Looks.Spool.Solid));
        panels.Header(2, revolving ? "Loose line, in loops on the spool" : "Pull of the line at the rod tip");
        return new Chart("cast_speeds", model);
    }

    private static string Title(CastResult result, bool revolving, Shown shown) => revolving
        ? $"At most {Trade.Fixed(result.LoopsThrown, 1)} loops of line lie loose: {Tangles(result.TangleShare)}"
        : $"The lure leaves at {shown.Speed(result.LaunchSpeedMS)} and lands at {shown.Speed(result.Series.LureSpeedMS[^1])}";

    private static string Tangles(double share) =>
        share < 0.005 ? "no cast in 100 tangles (a guess)" : $"{Trade.Fixed(100.0 * share, 0)} of 100 casts tangle (a guess)";

    private static string Subtitle(CastResult result, bool revolving, Shown shown) => revolving
        ? $"{result.Setup.Title}: leaves at {shown.Speed(result.LaunchSpeedMS)}; the spool peaks at {Trade.Rpm(result.SpoolPeakRpm)}"
        : $"{result.Setup.Title}: let go {Trade.Fixed(result.ReleaseTimeS, 2)} s after the start of the swing";

    private static (double[] Values, string Axis, Look Look) Lowest(CastSeries s, bool revolving, Shown shown)
    {
        if (revolving)
        {
            return ([.. s.LooseM.Zip(s.LoopM, (loose, loop) => loose / loop)], "loops", Looks.Spool);
        }

        ShownUnit pull = shown.Unit(ShownQuantity.Pull, s.TensionN.Max());
        return (Scaled(s.TensionN, pull), pull.Name, Looks.TipPull);
    }

    // An area and a line cannot be taken for each other, however often they cross.
    private static void AddGiven(Panels panels, CastResult result, ShownUnit speed)
    {
        CastSeries s = result.Series;
        int from = s.TimeS.TakeWhile(t => t < result.ReleaseTimeS).Count();
        double[] time = [.. s.TimeS.Skip(from)];
        var taken = new AreaSeries
        {
            YAxisKey = Panels.Key(1),
            Fill = Looks.Line.Pale(0.45).Color,
            Color = OxyColors.Transparent,
            Color2 = OxyColors.Transparent,
        };
        taken.Points.AddRange(time.Zip(Released(s.LineSpeedMS, from, speed), (t, v) => new DataPoint(t, v)));
        taken.Points2.AddRange(time.Select(t => new DataPoint(t, 0.0)));
        panels.Model.Series.Add(taken);
        panels.Line(1, time, Released(s.SpoolSpeedMS, from, speed), Looks.Spool.Solid, Thin);
    }

    private static double[] Released(ValueList<double> speed, int from, ShownUnit unit) => [.. speed.Skip(from).Select(v => unit.Of(Math.Max(0.0, v)))];

    private static double[] Scaled(ValueList<double> values, ShownUnit unit) => [.. values.Select(unit.Of)];
}
