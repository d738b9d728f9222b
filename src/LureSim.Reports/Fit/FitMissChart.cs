using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Fit;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Fit;

/// <summary>Pushes, swings, the bowl and walks: one row per kind of reading, how far it lies off the computed one in its own errors.</summary>
public static class FitMissChart
{
    private const double WordsWidth = 540, Least = 4.5;

    /// <summary>Kinds of test that it shows, as its title names them.</summary>
    internal static IReadOnlyList<FitKind> Kinds { get; } = [FitKind.Push, FitKind.Swing, FitKind.Bowl, FitKind.Walk];

    /// <summary>Builds the picture.</summary>
    /// <param name="report">Fit with such tests.</param>
    /// <param name="shown">How quantities are told.</param>
    public static Chart Build(FitReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        IGrouping<(FitQuantity Quantity, bool HooksOn), FitRowResult>[] groups =
            [.. report.Rows.Where(r => Kinds.Contains(r.Reading.Test)).GroupBy(r => (r.Reading.Quantity, r.Reading.HooksOn)).OrderBy(g => g.Key.Quantity)];
        FitRowResult[] all = [.. groups.SelectMany(g => g)];
        int height = SetUpRows.Height(groups.Length);
        string tests = string.Join(", ", Kinds.Where(k => all.Any(r => r.Reading.Test == k)).Select(FitWording.Tests));
        PlotModel model = ChartStyle.NewModel($"{char.ToUpperInvariant(tests[0])}{tests[1..]}: {Trade.Fixed(Math.Sqrt(all.Average(r => r.Miss * r.Miss)), 1)} of their errors off the fitted lure", report.File.Title);
        CategoryAxis names = SetUpRows.Axis([.. groups.Select(g => $"{FitWording.Name(g.Key.Quantity)}{(g.First().Reading.Test == FitKind.Bowl ? "" : g.Key.HooksOn ? ", hooks on" : ", hooks off")}")]);
        var panels = new Panels(model, height, [names]);
        double reach = Math.Max(Least, 1.1 * all.Max(r => Math.Abs(r.Miss)));
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Measured less computed, in errors of the reading", -reach, reach);
        axis.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(axis);
        for (int i = 0; i < groups.Length; i++)
        {
            int row = groups.Length - 1 - i;
            FitRowResult[] rows = [.. groups[i]];
            SetUpRows.Box(panels, -FitUnknown.Band, FitUnknown.Band, row, 0.3, ChartStyle.Light);
            foreach (FitRowResult one in rows)
            {
                SetUpRows.Dot(panels, one.Miss, row, ChartStyle.Vermilion);
            }

            string Mean(Func<FitRowResult, double> of) => FitWording.Show(rows[0].Reading, rows.Average(of), shown);
            SetUpRows.Beside(panels, reach, row, $"measured {Mean(r => r.Reading.Measured)}, computed {Mean(r => r.Computed)}");
        }

        panels.Header(0, string.Empty, new HeaderEntry("a reading", ChartStyle.Vermilion, Swatch.Dot), new HeaderEntry("80 of 100 by chance", ChartStyle.Light, Swatch.Box));
        return new Chart("fit_rest", model, Height: height);
    }
}
