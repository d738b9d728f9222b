using LureSim.Model;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cover;
using LureSim.Studies.Strike;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace LureSim.Reports.Cover;

/// <summary>Three covers under each other: pull on the hook against what is needed and borne, then the drag window of each.</summary>
public static class CoverChart
{
    private const int Height = 1150;
    private const double Half = 0.36, Inner = 0.12;
    private static readonly OxyColor Need = ChartStyle.Pale(ChartStyle.Orange, 0.4), Borne = ChartStyle.Pale(ChartStyle.Vermilion, 0.3), Good = ChartStyle.Pale(ChartStyle.Green, 0.6), AtBoat = ChartStyle.Pale(ChartStyle.Green, 0.22);
    private static readonly Look Now = new(ChartStyle.Ink), First = new(ChartStyle.Vermilion), Sets = new(ChartStyle.Orange), Best = new(ChartStyle.Green, LineStyle.LongDash);

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Three covers.</param>
    /// <param name="shown">Units.</param>
    public static Chart Build(CoverReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        string[] names = [.. report.Cases.Select(c => Trade.Capital(CoverNames.Of(c.Kind)))];
        double most = 1.15 * report.Cases.Max(c => Math.Max(BorneN(c).Value, Math.Max(PeakN(c), c.Own[CoverCriterion.Sets].Need.High))), shut = report.Cases.Max(c => c.Window.LockedN);
        ShownUnit unit = shown.Unit(ShownQuantity.Pull, Math.Max(most, shut));
        PlotModel model = ChartStyle.NewModel(Title(report), report.Title);
        var panels = new Panels(model, Height, [SetUpRows.Axis(names), SetUpRows.Axis(names)]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Pull on the hook above, drag setting below, {unit.Name}", 0.0, unit.Of(Math.Max(most, 1.05 * shut))));
        for (int i = 0; i < report.Cases.Count; i++)
        {
            Pulls(panels, report.Cases[i], report.Cases.Count - 1 - i, unit);
            Drags(panels, report.Cases[i], report.Cases.Count - 1 - i, unit);
        }

        panels.Header(0, "Strike",
        [
            new("sets all points", Sets), new("its range", Need, Swatch.Box), new("pull on the hook", Looks.NosePull.Color, Swatch.Box), new("something gives", First), new("its range", Borne, Swatch.Box),
        ]);
        panels.Header(1, "Drag", [new("sets, nothing gives", Good, Swatch.Box), new("gives at the boat", AtBoat, Swatch.Box), new("as set", Now), new("best", Best)]);
        return new Chart("cover", model, Height: Height);
    }

    private static string Title(CoverReport report) => Trade.Capital(string.Join("; ", report.Cases.GroupBy(c => c.Verdict).Select(g =>
        $"{Trade.And([.. g.Select(c => CoverNames.Of(c.Kind))])}: {(g.Key == CoverVerdict.WorksWhen ? "works, with conditions" : CoverNames.Of(g.Key))}")));

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
        Box(panels, 0, unit.Of(need.Low), unit.Of(need.High), row + Inner, row + Half, Need);
        Box(panels, 0, 0.0, unit.Of(PeakN(c)), row - Inner, row + Inner, Looks.NosePull.Color);
        Box(panels, 0, unit.Of(borne.Low), unit.Of(borne.High), row - Half, row - Inner, Borne);
        panels.Line(0, [unit.Of(need.Value), unit.Of(need.Value)], [row - Inner, row + Half], Sets, 6);
        panels.Line(0, [unit.Of(borne.Value), unit.Of(borne.Value)], [row - Half, row + Inner], First, 6);
    }

    private static void Drags(Panels panels, CoverCase c, int row, ShownUnit unit)
    {
        Box(panels, 1, 0.0, unit.Of(c.Window.LockedN), row - Half, row + Half, ChartStyle.Light);
        Window(panels, c.Window.InStrike, row, unit, AtBoat);
        Window(panels, c.Window.Range, row, unit, Good);
        Mark(panels, unit.Of(c.Own.Try.Setup.Reel.DragN), row, Now);
        if (c.Window.Advice.DragN is double best)
        {
            Mark(panels, unit.Of(best), row, Best);
        }
    }

    private static void Window(Panels panels, DragRange range, int row, ShownUnit unit, OxyColor fill)
    {
        if (range is { LowN: double low, HighN: double high } && low <= high)
        {
            Box(panels, 1, unit.Of(low), unit.Of(high), row - Half, row + Half, fill);
        }
    }

    private static void Mark(Panels panels, double x, int row, Look look) => panels.Line(1, [x, x], [row - Half, row + Half], look, 6);

    private static void Box(Panels panels, int panel, double from, double to, double bottom, double top, OxyColor fill) => panels.Model.Annotations.Add(new RectangleAnnotation
    {
        YAxisKey = Panels.Key(panel),
        MinimumX = from,
        MaximumX = to,
        MinimumY = bottom,
        MaximumY = top,
        Fill = fill,
        Layer = AnnotationLayer.BelowSeries,
    });
}
