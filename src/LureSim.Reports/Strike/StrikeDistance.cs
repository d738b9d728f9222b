using LureSim.Model.Strike;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Strike;

/// <summary>Largest pull on the hook against the distance: lines above, rods below; the shape of a mark says what limits the pull.</summary>
public static class StrikeDistance
{
    private const int Height = 1200;
    private const double Margins = 150;

    private static readonly (StrikeLimit Limit, string Words, MarkerType Marker)[] Limits =
    [
        (StrikeLimit.Hands, "hands limit it", MarkerType.Circle), (StrikeLimit.Stroke, "stroke runs out", MarkerType.Triangle), (StrikeLimit.Clutch, "drag slips", MarkerType.Square),
    ];

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Strike with its curves.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(StrikeReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        StrikeCurves curves = report.Curves;
        StrikeCurve own = curves.Lines[0];
        StrikeCurve[][] groups = [[.. curves.Lines], [own, .. curves.Rods]];
        double most = 1.08 * groups.SelectMany(g => g).SelectMany(c => c.Points).Select(p => p.HookForceN).Where(double.IsFinite).Append(curves.SettingN).Max();
        double far = own.Points[^1].DistanceM;
        ShownUnit pull = shown.Unit(ShownQuantity.Pull, most), way = shown.Unit(ShownQuantity.Distance, far);
        PlotModel model = ChartStyle.NewModel(CurveWords.Title(curves, report.Strike.Setup.Hook.Points, shown), Subtitle(report.Strike, curves, shown.OneFamily));
        var panels = new Panels(model, Height, [.. groups.Select(_ => ChartStyle.NewAxis(AxisPosition.Left, $"Pull, {pull.Name}", 0.0, pull.Of(most)))]);
        string[][] names = [[.. curves.Lines.Select(CurveWords.Line)], ["this rod", .. curves.Rods.Select(r => CurveWords.Rod(r, own, shown.OneFamily))]];
        LinearAxis distance = ChartStyle.NewAxis(AxisPosition.Bottom, $"Distance from rod tip to hook, {way.Name}", 0.0, way.Of(1.02 * far));
        distance.EndPosition = 1.0 - ((names.SelectMany(n => n).Max(Wide) + EndNames.Beside) / (ChartStyle.Width - Margins));
        model.Axes.Add(distance);
        for (int i = 0; i < groups.Length; i++)
        {
            SetLevel.Draw(panels, i, report, pull, way.Of(1.02 * far));
            Draw(panels, i, groups[i], names[i], way, pull);
        }

        StrikeLimit?[] seen = [.. groups.SelectMany(g => g).SelectMany(c => c.Points).Select(p => p.Limit).Distinct()];
        panels.Header(0, $"By line, all of {shown.OneFamily.Pull(curves.LabelN)} label",
            [.. Limits.Where(l => seen.Contains(l.Limit)).Select(l => new HeaderEntry(l.Words, new Look(ChartStyle.Ink, LineStyle.Solid, l.Marker), marked: true))]);
        panels.Header(1, "By rod", SetLevel.Legend(report));
        return new Chart("strike_distance", model, Height: Height);
    }

    private static double Wide(string name) => TextLayout.Measure(name, ChartStyle.TextSize, FontWeights.Bold).Width;

    private static string Subtitle(StrikeResult strike, StrikeCurves curves, Shown shown) =>
        $"Largest pull on the hook, {StrikeNames.Of(strike.Task.Stroke.Style)} each time, drag at {shown.Pull(strike.Setup.Reel.DragN)}: {strike.Setup.Title}";

    private static void Draw(Panels panels, int panel, StrikeCurve[] curves, string[] names, ShownUnit way, ShownUnit pull)
    {
        var ends = new List<EndName>();
        for (int i = 0; i < curves.Length; i++)
        {
            Look look = Looks.Series(i);
            StrikeCurvePoint[] points = [.. curves[i].Points];
            panels.Line(panel, [.. points.Select(p => way.Of(p.DistanceM))], [.. points.Select(p => pull.Of(p.HookForceN))], look);
            foreach ((StrikeLimit limit, _, MarkerType marker) in Limits)
            {
                StrikeCurvePoint[] mine = [.. points.Where(p => p.Limit == limit)];
                panels.Dots(panel, mine.Select(p => way.Of(p.DistanceM)), mine.Select(p => pull.Of(p.HookForceN)), look with { Marker = marker }, i == 0 ? 9 : 7);
            }

            if (Array.FindLast(points, p => double.IsFinite(p.HookForceN)) is StrikeCurvePoint last)
            {
                ends.Add(new(new(way.Of(last.DistanceM), pull.Of(last.HookForceN)), names[i], look.Color, i == 0));
            }
        }

        panels.Model.Annotations.Add(new EndNames(ends) { YAxisKey = Panels.Key(panel) });
    }
}
