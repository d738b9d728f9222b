using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Fit;

/// <summary>Sheer and swing on the tow line over its speed: measured, and of the fitted lure.</summary>
public static class FitTowChart
{
    private const int Height = 1000;
    private const double Degree = Math.PI / 180.0;

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit with tows.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(FitReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        FitRowResult[] tows = [.. report.Rows.Where(r => r.Reading.Test == FitKind.Tow)];
        (FitQuantity Quantity, string Words)[] kinds = [(FitQuantity.Sheer, "Angle between axis and line"), (FitQuantity.Swing, "Nose from side to side")];
        kinds = [.. kinds.Where(k => tows.Any(r => r.Reading.Quantity == k.Quantity))];
        double fastest = tows.Max(r => r.Reading.At);
        ShownUnit unit = shown.OneFamily.Unit(ShownQuantity.Speed, fastest);
        double off = Math.Sqrt(tows.Average(r => r.Miss * r.Miss));
        PlotModel model = ChartStyle.NewModel($"Tows: {Trade.Fixed(off, 1)} of their errors off the fitted lure", report.File.Title);
        var panels = new Panels(model, Height, [.. kinds.Select(k => Axis(tows.Where(r => r.Reading.Quantity == k.Quantity)))]);
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, $"Speed of the tow, {unit.Name}", 0.0, 1.1 * unit.Of(fastest)));
        for (int k = 0; k < kinds.Length; k++)
        {
            FitRowResult[] mine = [.. tows.Where(r => r.Reading.Quantity == kinds[k].Quantity)];
            var entries = new List<HeaderEntry>();
            foreach (bool on in mine.Select(r => r.Reading.HooksOn).Distinct().OrderDescending())
            {
                Look look = on ? Looks.Lure : Looks.Rod;
                FitRowResult[] rows = [.. mine.Where(r => r.Reading.HooksOn == on)];
                (double Speed, double Computed)[] line = [.. rows.GroupBy(r => r.Reading.At).Select(g => (g.Key, g.Average(r => r.Computed))).OrderBy(p => p.Key)];
                panels.Line(k, [.. line.Select(p => unit.Of(p.Speed))], [.. line.Select(p => p.Computed / Degree)], look);
                FitRowResult[] numbers = [.. rows.Where(r => !r.Reading.IsAtMost)], straight = [.. rows.Where(r => r.Reading.IsAtMost)];
                panels.Dots(k, numbers.Select(r => unit.Of(r.Reading.At)), numbers.Select(r => r.Reading.Measured / Degree), look, 10);
                panels.Dots(k, straight.Select(r => unit.Of(r.Reading.At)), straight.Select(r => r.Reading.Measured / Degree), look with { Marker = MarkerType.Plus }, 12);
                entries.Add(new HeaderEntry(on ? "hooks on" : "hooks off", look, marked: true));
            }

            bool anyStraight = mine.Any(r => r.Reading.IsAtMost);
            panels.Header(k, $"{kinds[k].Words}{(anyStraight ? "; a cross: seen straight, at most this" : "")}", [.. entries]);
        }

        return new Chart("fit_tow", model, Height: Height);
    }

    private static LinearAxis Axis(IEnumerable<FitRowResult> rows)
    {
        double most = Math.Max(8.0, rows.Max(r => Math.Max(r.Reading.Measured, r.Computed)) / Degree);
        return ChartStyle.NewAxis(AxisPosition.Left, "deg", -0.06 * most, 1.15 * most);
    }
}
