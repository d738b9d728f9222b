using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Studies.Cast;
using LureSim.Studies.Sayings;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Sayings;

/// <summary>All sayings in one picture: a row each, a dot for every place at the chance that it is true there, and the verdict.</summary>
public static class SayingsChart
{
    private const double Half = 0.4, WordsWidth = 250;
    private static readonly OxyColor True = ChartStyle.Pale(ChartStyle.Green, 0.3), False = ChartStyle.Pale(ChartStyle.Vermilion, 0.3), Open = ChartStyle.Light;

    /// <summary>Builds it.</summary>
    /// <param name="report">What came out.</param>
    public static Chart Build(SayingsReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        int rows = report.Results.Count, height = SetUpRows.Height(rows);
        string[] counts =
        [
            .. Enum.GetValues<SayingVerdict>().Select(v => (Verdict: v, Count: report.Results.Count(r => r.Verdict == v))).Where(c => c.Count > 0)
                .Select(c => FormattableString.Invariant($"{c.Count} {SayingWords.Verdict(c.Verdict)}")),
        ];
        string stopped = report.IsWhole ? "" : FormattableString.Invariant($" (stopped after {rows} of {report.Asked})");
        PlotModel model = ChartStyle.NewModel($"Sayings put to the test: {string.Join(", ", counts)}{stopped}", "each dot a place or a test: in how many draws of the guesses the saying is true there");
        CategoryAxis names = SetUpRows.Axis([.. report.Results.Select(r => r.Saying.Name.Replace('-', ' '))]);
        var panels = new Panels(model, height, [names]);
        LinearAxis axis = ChartStyle.NewAxis(AxisPosition.Bottom, "Draws in which it is true, %", -3.0, 103.0);
        axis.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(axis);
        for (int i = 0; i < rows; i++)
        {
            Row(panels, rows - 1 - i, report.Results[i], axis.Maximum);
        }

        panels.Header(0, string.Empty, new HeaderEntry("false there", False, Swatch.Box), new HeaderEntry("cannot be told", Open, Swatch.Box), new HeaderEntry("true there", True, Swatch.Box), new HeaderEntry("word lost in a second look", ChartStyle.Ink, Swatch.Ring));
        return new("sayings", model, Height: height);
    }

    private static void Row(Panels panels, int row, SayingResult result, double end)
    {
        SetUpRows.Box(panels, 0.0, 100.0 * (1.0 - NoticeRule.Sure), row, Half, False);
        SetUpRows.Box(panels, 100.0 * (1.0 - NoticeRule.Sure), 100.0 * NoticeRule.Sure, row, Half, Open);
        SetUpRows.Box(panels, 100.0 * NoticeRule.Sure, 100.0, row, Half, True);
        TrialResult[] known = [.. result.Trials.Where(t => !double.IsNaN(t.Chance))];
        for (int i = 0; i < known.Length; i++)
        {
            // Dots of one row beside each other: several places often have the same chance.
            double at = row + (known.Length == 1 ? 0.0 : Half * 1.4 * (0.5 - (i / (known.Length - 1.0))));
            SetUpRows.Dot(panels, 100.0 * known[i].Chance, at, ChartStyle.Ink);
            if (known[i].Word != known[i].First)
            {
                panels.Dots(0, [100.0 * known[i].Chance], [at], new Look(OxyColors.White), 6);
            }
        }

        SetUpRows.Beside(panels, end, row, SayingWords.Verdict(result.Verdict));
    }
}
