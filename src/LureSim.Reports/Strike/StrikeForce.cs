using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>Rod and line at the moments of a strike, to scale, and below them the pull on the hook over time with the same moments.</summary>
public static class StrikeForce
{
    private const int Height = 1300;

    // The drag counts as slipping from this speed of the line on, m/s.
    private const double SlipsMS = 0.01;
    private static readonly OxyColor Slips = ChartStyle.Faint(Looks.Spool.Color, 0.18);

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(StrikeReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        StrikeResult result = report.Strike;
        bool side = result.Task.Stroke.Plane == StrokePlane.Side;
        PlotModel model = ChartStyle.NewModel(Title(result, shown), Subtitle(result, shown.OneFamily));
        double most = Math.Max(1.2 * result.Series["hook_force_N"].Max(), 1.1 * report.Window.SettingN);
        ShownUnit pull = shown.Unit(ShownQuantity.Pull, most), way = shown.Unit(ShownQuantity.Distance, 1.0);
        (double low, double high) = Frame(result.Moments);
        var panels = new Panels(model, Height,
        [
            ChartStyle.NewAxis(AxisPosition.Left, $"{(side ? "To the side" : "Height over the water")}, {way.Name}", way.Of(low), way.Of(high)),
            ChartStyle.NewAxis(AxisPosition.Left, $"Pull on the hook, {pull.Name}", 0.0, pull.Of(most)),
        ], [1.25, 1.0]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time from the first movement of the hands, s", 0.0, result.Series["time_s"][^1]));
        model.Annotations.Add(new RodScene(result.Moments, way, side, $"hook, {shown.OneFamily.Distance(result.Task.DistanceM)} from the tip") { YAxisKey = Panels.Key(0), Layer = AnnotationLayer.BelowSeries });
        bool slips = AddPull(panels, report, pull, shown);
        panels.Header(0, $"{(side ? "From above" : "From the side")}, to scale", new("rod", Looks.Rod.Solid), new("line", Looks.Line.Solid), new("water", Looks.Water, Swatch.Box));
        panels.Header(1, "Pull on the hook",
        [
            .. SetLevel.Legend(report), .. slips ? [new HeaderEntry("drag slips", Slips, Swatch.Box)] : Array.Empty<HeaderEntry>(),
        ]);
        return new Chart("strike_force", model, Height: Height);
    }

    /// <summary>The largest pull, and whether it is enough.</summary>
    /// <param name="result">Strike.</param>
    /// <param name="shown">Units.</param>
    internal static string Title(StrikeResult result, Shown shown)
    {
        StrikeSummary s = result.Summary;
        string points = StrikeNames.Points(result.Setup.Hook.Points);
        return s.Sets
            ? $"The hook gets {shown.Pull(s.HookForcePeakN)} after {Trade.Fixed(s.PeakTimeS, 2)} s: enough for {points}"
            : $"The hook gets {shown.Pull(s.HookForcePeakN)}, too little for {points}: {shown.Pull(result.Setup.Hook.SettingN)} would set {(result.Setup.Hook.Points == 1 ? "it" : "them")}";
    }

    /// <summary>Spans of time in which the drag slips, s.</summary>
    /// <param name="result">Strike.</param>
    internal static IEnumerable<(double From, double To)> SlipSpans(StrikeResult result)
    {
        ValueList<double> time = result.Series["time_s"], speed = result.Series["slip_speed_m_s"];
        return Spans.Where(0, time.Count, i => speed[i] > SlipsMS).Select(s => (time[s.From], time[s.To]));
    }

    private static string Subtitle(StrikeResult result, Shown shown)
    {
        string slack = result.Task.SlackM > 0.0 ? $"{shown.Size(result.Task.SlackM)} of slack" : "a tight line";
        return $"{Trade.Capital(StrikeNames.Of(result.Task.Stroke.Style))} {shown.Distance(result.Task.DistanceM)} away with {slack}: {result.Setup.Title}";
    }

    /// <summary>Lower and upper edge of a picture of the moments, m.</summary>
    /// <param name="moments">Moments.</param>
    internal static (double Low, double High) Frame(IReadOnlyList<StrikeMoment> moments)
    {
        double low = Math.Min(0.0, moments.Min(m => m.RodZ.Min())), high = moments.Max(m => Math.Max(m.RodZ.Max(), m.LineZ.Max()));
        return (low - RodScene.Below, high + RodScene.Above);
    }

    // True where the drag slips.
    private static bool AddPull(Panels panels, StrikeReport report, ShownUnit pull, Shown shown)
    {
        StrikeResult result = report.Strike;
        ValueList<double> time = result.Series["time_s"], force = result.Series["hook_force_N"];
        SetLevel.Draw(panels, 1, report, pull, time[^1]);
        (double From, double To)[] slips = [.. SlipSpans(result)];
        Array.ForEach(slips, s => panels.Shade(1, s.From, s.To, Slips));
        panels.Line(1, time[..], [.. force.Select(pull.Of)], Looks.NosePull);
        panels.Model.Annotations.Add(new MomentDots(
            [.. result.Moments.Select(m => (new DataPoint(m.TimeS, pull.Of(m.HookForceN)), m.Name == StrikeMomentName.Peak ? shown.Pull(m.HookForceN) : ""))],
            [.. time.Zip(force, (t, f) => new DataPoint(t, pull.Of(f)))])
        {
            YAxisKey = Panels.Key(1),
        });
        return slips.Length > 0;
    }
}
