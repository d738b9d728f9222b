using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>The drag window: pull on the hook over the drag setting, the zones of what happens, and how they move with the thresholds that nobody has measured.</summary>
public static class DragWindowChart
{
    private const int Height = 1200;
    private const double Half = 0.36, NameShare = 0.11, RowWeight = 0.16;

    // Of the plot with the longest names of rows, px; only decides which words fit.
    private const double PlotWidth = 1100;
    private static readonly Look Now = new(ChartStyle.Ink), Best = new(ChartStyle.Green, LineStyle.LongDash), Shut = new(ChartStyle.Grey, LineStyle.Dot);
    private static readonly Look Gives = new(ChartStyle.Vermilion);

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Strike with its drag window.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(StrikeReport report, Shown shown) => Build(report, shown, withReadings: true);

    /// <summary>The same without the other readings of the thresholds: for a slide, which has no room for their rows.</summary>
    /// <param name="report">Strike with its drag window.</param>
    /// <param name="shown">Units.</param>
    public static Chart OfWindowAlone(StrikeReport report, Shown shown) => Build(report, shown, withReadings: false);

    private static Chart Build(StrikeReport report, Shown shown, bool withReadings)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        DragWindow window = report.Window;
        double shut = Math.Max(window.LockedN, report.Strike.Setup.Reel.DragN), most = Most(window);
        ShownUnit drag = shown.Unit(ShownQuantity.Pull, shut), pull = shown.Unit(ShownQuantity.Pull, most);
        (string Name, DragRange Range)[] readings = withReadings ? [.. DragWindowWords.Readings(window, shown.OneFamily)] : [];
        PlotModel model = ChartStyle.NewModel(DragWindowWords.Title(window, report.Strike.Setup.Hook.Points, shown), Subtitle(report.Strike, shown.OneFamily));
        LinearAxis upper = ChartStyle.NewAxis(AxisPosition.Left, string.Empty, 0.0, pull.Of(most));
        Panels panels = withReadings
            ? new(model, Height, [upper, SetUpRows.Axis([.. readings.Select(r => r.Name)])], [1.4, RowWeight * (readings.Length + 0.5)])
            : new(model, ChartStyle.Height, [upper]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Drag setting, full spool, {drag.Name}", 0.0, drag.Of(1.03 * shut)));
        DrawZones(panels, window, drag, pull.Of(most));
        DrawPulls(panels, report, drag, pull);
        (double DragN, string Words, Look Look)[] marks = [.. Marks(report)];
        DrawMarks(panels, 0, marks, drag, (1.0 - NameShare) * pull.Of(most));
        panels.Header(0, $"Pull on the hook, {pull.Name}",
        [
            new("in the strike", Looks.NosePull), new("fish surging at the boat", Looks.Spool), .. SetLevel.Legend(report, withRange: false),
            .. window.Range is { Gives: not null, HighN: not null } ? [new(DragWindowWords.Gives(window.Range), Gives.Color, Swatch.Dot)] : Array.Empty<HeaderEntry>(),
            .. marks.Select(m => new HeaderEntry($"{m.Words}, {drag.Text(m.DragN)}", m.Look)),
        ]);
        if (withReadings)
        {
            DrawReadings(panels, readings, window.LockedN, drag);
            DrawMarks(panels, 1, marks, drag, readings.Length);
        }

        return new Chart("drag_window", model, Height: withReadings ? Height : ChartStyle.Height);
    }

    private static string Subtitle(StrikeResult strike, Shown shown) =>
        $"{Trade.Capital(StrikeNames.Of(strike.Task.Stroke.Style))} {shown.Distance(strike.Task.DistanceM)} away: {strike.Setup.Title}";

    // Upper end of the pulls shown, N: what the boat does beyond the point where something gives is of no use.
    private static double Most(DragWindow window) =>
        1.2 * Math.Max(Math.Max(window.SettingN, window.Points.Max(p => p.HookForceN)), window.Range is { Gives: not null, HighN: double high } ? LoadN(window, high) : 0.0);

    // Pull at a drag in the case that sets the high end, N.
    private static double LoadN(DragWindow window, double dragN)
    {
        if (window.Range.Case == DragCase.Boat)
        {
            return window.BoatFactor * dragN;
        }

        DragPoint[] points = [.. window.Points];
        int i = Math.Clamp(Array.FindIndex(points, p => p.DragN >= dragN), 1, points.Length - 1);
        double share = Math.Clamp((dragN - points[i - 1].DragN) / (points[i].DragN - points[i - 1].DragN), 0.0, 1.0);
        return points[i - 1].HookForceN + (share * (points[i].HookForceN - points[i - 1].HookForceN));
    }

    private static void DrawZones(Panels panels, DragWindow window, ShownUnit drag, double top)
    {
        foreach (DragZone zone in DragZone.Of(window.Range, window.LockedN))
        {
            panels.Shade(0, drag.Of(zone.FromN), drag.Of(zone.ToN), ChartStyle.Pale(zone.Color, 0.45));
            panels.Model.Annotations.Add(new NamedBox(DragWindowWords.Zone(zone, window.Range, PlotWidth * (zone.ToN - zone.FromN) / window.LockedN), double.NaN)
            {
                YAxisKey = Panels.Key(0),
                MinimumX = drag.Of(zone.FromN),
                MaximumX = drag.Of(zone.ToN),
                MinimumY = (1.0 - NameShare) * top,
                MaximumY = top,
                Fill = zone.Color,
                Layer = AnnotationLayer.AboveSeries,
            });
        }
    }

    private static void DrawPulls(Panels panels, StrikeReport report, ShownUnit drag, ShownUnit pull)
    {
        DragWindow window = report.Window;
        double shut = window.LockedN;
        SetLevel.Draw(panels, 0, report, pull, drag.Of(shut), withRange: false);
        double[] x = [.. window.Points.Select(p => drag.Of(p.DragN))], y = [.. window.Points.Select(p => pull.Of(p.HookForceN))];
        double boat = Math.Min(shut, (1.0 - NameShare) * Most(window) / window.BoatFactor);
        panels.Line(0, [0.0, drag.Of(boat)], [0.0, pull.Of(window.BoatFactor * boat)], Looks.Spool);
        panels.Line(0, x, y, Looks.NosePull);
        if (window.Range is { Gives: not null, HighN: double high })
        {
            panels.Dots(0, [drag.Of(high)], [pull.Of(LoadN(window, high))], Gives, 12);
        }
    }

    private static void DrawReadings(Panels panels, (string Name, DragRange Range)[] readings, double lockedN, ShownUnit drag)
    {
        for (int i = 0; i < readings.Length; i++)
        {
            int row = readings.Length - 1 - i;
            foreach (DragZone zone in DragZone.Of(readings[i].Range, lockedN))
            {
                panels.Model.Annotations.Add(new RectangleAnnotation
                {
                    YAxisKey = Panels.Key(1),
                    MinimumX = drag.Of(zone.FromN),
                    MaximumX = drag.Of(zone.ToN),
                    MinimumY = row - Half,
                    MaximumY = row + Half,
                    Fill = zone.Color,
                    Layer = AnnotationLayer.BelowSeries,
                });
            }
        }

        panels.Header(1, readings.Length > 1 ? "If the guesses are wrong" : "Zones",
            [.. readings.SelectMany(r => DragZone.Of(r.Range, lockedN)).Select(z => new HeaderEntry(z.Kind, z.Color, Swatch.Box)).DistinctBy(e => e.Label)]);
    }

    private static IEnumerable<(double DragN, string Words, Look Look)> Marks(StrikeReport report)
    {
        yield return (report.Window.LockedN, "drag shut", Shut);
        yield return (report.Strike.Setup.Reel.DragN, "drag now", Now);
        if (report.Window.Advice.DragN is double best)
        {
            yield return (best, report.Window.Advice.Reason == DragAdviceReason.SetThenEase ? "for the strike" : "recommended", Best);
        }
    }

    private static void DrawMarks(Panels panels, int panel, (double DragN, string Words, Look Look)[] marks, ShownUnit drag, double top)
    {
        foreach ((double dragN, _, Look look) in marks)
        {
            panels.Model.Annotations.Add(new LineAnnotation
            {
                YAxisKey = Panels.Key(panel),
                Type = LineAnnotationType.Vertical,
                X = drag.Of(dragN),
                MaximumY = top,
                Color = look.Color,
                StrokeThickness = 5,
                LineStyle = look.Style,
                Layer = AnnotationLayer.AboveSeries,
            });
        }
    }
}
