using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Fit;

/// <summary>Coast-downs: way over time, measured and computed. Films: how far each place lies off the computed one, over time.</summary>
public static class FitWayChart
{
    private const int Height = 1000;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit with coast-downs or films.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(FitReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        FitRowResult[] coasts = [.. report.Rows.Where(r => r.Reading.Test == FitKind.Coast)], places = [.. report.Rows.Where(r => r.Reading.Quantity == FitQuantity.Place)];
        FitRowResult[] all = [.. report.Rows.Where(r => r.Reading.Test is FitKind.Coast or FitKind.Track)];
        PlotModel model = ChartStyle.NewModel($"Films and coast-downs: {Trade.Fixed(Math.Sqrt(all.Average(r => r.Miss * r.Miss)), 1)} of their errors off the fitted lure", report.File.Title);
        ShownUnit way = shown.OneFamily.Unit(ShownQuantity.Size, 0.1), off = shown.OneFamily.Unit(ShownQuantity.Size, 0.005);
        double farthest = coasts.Length == 0 ? 0.0 : Ways(coasts).Max(w => w.Max(p => p.Measured)), widest = places.Length == 0 ? 0.0 : places.Max(r => Math.Abs(r.Reading.Measured - r.Computed));
        LinearAxis[] axes =
        [
            .. coasts.Length > 0 ? (LinearAxis[])[ChartStyle.NewAxis(AxisPosition.Left, $"Way, {way.Name}", -0.05 * way.Of(farthest), 1.12 * way.Of(farthest))] : [],
            .. places.Length > 0 ? (LinearAxis[])[ChartStyle.NewAxis(AxisPosition.Left, $"Off, {off.Name}", -1.2 * off.Of(widest), 1.4 * off.Of(widest))] : [],
        ];
        if (axes.Length == 0)
        {
            // Headings alone.
            axes = [ChartStyle.NewAxis(AxisPosition.Left, "Off, errors", -5.0, 5.0)];
            var bare = new Panels(model, Height, axes);
            model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time, s", 0.0, 1.05 * all.Max(r => r.Reading.At)));
            bare.Dots(0, all.Select(r => r.Reading.At), all.Select(r => r.Miss), Looks.Lure, 6);
            bare.Header(0, "Headings on films, measured less computed");
            return new Chart("fit_way", model, Height: Height);
        }

        var panels = new Panels(model, Height, axes);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Time since the first picture, s", 0.0, 1.05 * all.Max(r => r.Reading.At)));
        if (coasts.Length > 0)
        {
            Coasts(panels, coasts, way);
        }

        if (places.Length > 0)
        {
            int panel = axes.Length - 1;
            panels.Level(panel, 0.0, ChartStyle.Grey);
            panels.Header(panel, "Places on films, measured less computed", [.. Hooks(places, (on, look, rows) =>
                panels.Dots(panel, rows.Select(r => r.Reading.At), rows.Select(r => off.Of(r.Reading.Measured - r.Computed)), look, 5))]);
        }

        return new Chart("fit_way", model, Height: Height);
    }

    private static void Coasts(Panels panels, FitRowResult[] coasts, ShownUnit unit) => panels.Header(0, "Coast-downs; dots measured", [.. Hooks(coasts, (on, look, rows) =>
    {
        foreach ((double Time, double Measured, double Computed)[] run in Ways(rows))
        {
            panels.Line(0, [.. run.Select(p => p.Time)], [.. run.Select(p => unit.Of(p.Computed))], look, 3);
            panels.Dots(0, run.Select(p => p.Time), run.Select(p => unit.Of(p.Measured)), look, 6);
        }
    })]);

    // Each run from its own first place.
    private static IEnumerable<(double Time, double Measured, double Computed)[]> Ways(IEnumerable<FitRowResult> rows) => rows.GroupBy(r => r.Test)
        .Select(g => (First: g.First().Computed, Rows: g)).Select(g => g.Rows.Select(r => (r.Reading.At, r.Reading.Measured - g.First, r.Computed - g.First)).ToArray());

    private static IEnumerable<HeaderEntry> Hooks(FitRowResult[] rows, Action<bool, Look, FitRowResult[]> draw)
    {
        foreach (bool on in rows.Select(r => r.Reading.HooksOn).Distinct().OrderDescending())
        {
            Look look = on ? Looks.Lure : Looks.Rod;
            draw(on, look, [.. rows.Where(r => r.Reading.HooksOn == on)]);
            yield return new HeaderEntry(on ? "hooks on" : "hooks off", look, marked: true);
        }
    }
}
