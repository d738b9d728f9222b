using LureSim.Model;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Cover;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Cover;

/// <summary>Three covers under each other: pull on the hook against what is needed and borne, then the drag window of each.</summary>
public static class CoverChart
{
    private const int Height = 1150;
    private const double Half = 0.36;
    private static readonly OxyColor Need = ChartStyle.Faint(ChartStyle.Orange, 0.35), Borne = ChartStyle.Faint(ChartStyle.Vermilion, 0.25), Good = ChartStyle.Pale(ChartStyle.Green, 0.45);
    private static readonly Look Now = new(ChartStyle.Ink), First = new(ChartStyle.Vermilion), Sets = new(ChartStyle.Orange);

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Three covers.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(CoverReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        string[] names = [.. report.Cases.Select(c => $"{Trade.Capital(CoverNames.Of(c.Kind))}: {CoverNames.Of(c.Verdict)}")];
        double most = 1.15 * report.Cases.Max(c => Math.Max(BorneN(c).Value, Math.Max(PeakN(c), c.Own[CoverCriterion.Sets].Need.High))), shut = report.Cases.Max(c => c.Window.LockedN);
        ShownUnit unit = shown.Unit(ShownQuantity.Pull, Math.Max(most, shut));
        PlotModel model = ChartStyle.NewModel(Title(report), report.Title);
        var panels = new Panels(model, Height, [SetUpRows.Axis(names), SetUpRows.Axis([.. report.Cases.Select(c => Trade.Capital(CoverNames.Of(c.Kind)))])]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Pull on the hook above, drag setting below, {unit.Name}", 0.0, unit.Of(Math.Max(most, 1.05 * shut))));
        for (int i = 0; i < report.Cases.Count; i++)
        {
            Pulls(panels, report.Cases[i], report.Cases.Count - 1 - i, unit);
            Drags(panels, report.Cases[i], report.Cases.Count - 1 - i, unit);
        }

        panels.Header(0, "Strike",
        [
            new("pull on the hook", Looks.NosePull.Color, Swatch.Box), new("sets all points", Sets), new("range of that guess", Need, Swatch.Box),
            new("something gives", First), new("range of that guess", Borne, Swatch.Box),
        ]);
        panels.Header(1, "Drag", [new("sets, nothing gives in the strike", Good, Swatch.Box), new("as set", Now), new("spares all at the boat", ChartStyle.Green, Swatch.Dot)]);
        return new Chart("cover", model, Height: Height);
    }

    private static string Title(CoverReport report) =>
        string.Join(", ", report.Cases.GroupBy(c => c.Verdict).Select(g => $"{string.Join(" and ", g.Select(c => CoverNames.Of(c.Kind)))}: {(g.Key == CoverVerdict.WorksWhen ? "works, with conditions" : CoverNames.Of(g.Key))}"))
        is var text ? Trade.Capital(text) : "";

    private static double PeakN(CoverCase c) => c.Own[CoverCriterion.Sets].Have.Value;

    // Pull on the hook at which the weakest place of the strike gives: all loads taken to grow with it.
    private static Ranged BorneN(CoverCase c)
    {
        CoverCheck holds = c.Own[CoverCriterion.Holds];
        double each = PeakN(c) / holds.Need.Value;
        return new(each * holds.Have.Value, each * holds.Have.Low, each * holds.Have.High);
    }

    private static void Pulls(Panels panels, CoverCase c, int row, ShownUnit unit)
    {
        Ranged need = c.Own[CoverCriterion.Sets].Need, borne = BorneN(c);
        Box(panels, 0, unit.Of(need.Low), unit.Of(need.High), row, Half, Need);
        Box(panels, 0, unit.Of(borne.Low), unit.Of(borne.High), row, Half, Borne);
        Box(panels, 0, 0.0, unit.Of(PeakN(c)), row, 0.5 * Half, Looks.NosePull.Color);
        panels.Line(0, [unit.Of(need.Value), unit.Of(need.Value)], [row - Half, row + Half], Sets, 6);
        panels.Line(0, [unit.Of(borne.Value), unit.Of(borne.Value)], [row - Half, row + Half], First, 6);
    }

    private static void Drags(Panels panels, CoverCase c, int row, ShownUnit unit)
    {
        Box(panels, 1, 0.0, unit.Of(c.Window.LockedN), row, Half, ChartStyle.Light);
        if (c.Window.InStrike is { LowN: double low, HighN: double high } && low <= high)
        {
            Box(panels, 1, unit.Of(low), unit.Of(high), row, Half, Good);
        }

        double now = unit.Of(c.Own.Try.Setup.Reel.DragN);
        panels.Line(1, [now, now], [row - Half, row + Half], Now, 6);
        panels.Dots(1, [unit.Of(Math.Min(c.Own.EasedN, c.Window.LockedN))], [row], new Look(ChartStyle.Green), 11);
    }

    private static void Box(Panels panels, int panel, double from, double to, int row, double half, OxyColor fill) => panels.Model.Annotations.Add(new RectangleAnnotation
    {
        YAxisKey = Panels.Key(panel),
        MinimumX = from,
        MaximumX = to,
        MinimumY = row - half,
        MaximumY = row + half,
        Fill = fill,
        Layer = AnnotationLayer.BelowSeries,
    });
}
