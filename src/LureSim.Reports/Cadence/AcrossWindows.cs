using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cadence;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cadence;

/// <summary>One row per set-up: which rhythm gives which pattern, and where the best lies.</summary>
public static class AcrossWindows
{
    private const double RowHeight = 78, Rest = 300, HalfRow = 0.38;

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    public static Chart Build(AcrossResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        int rows = result.Cases.Count, height = (int)(Rest + (RowHeight * rows));
        PlotModel model = ChartStyle.NewModel(result.Title, "Rhythms that walk, by " + string.Join(" and ", result.Keys.Select(k => k.Title)));
        var panels = new Panels(model, height, [SetUpRows.Axis([.. result.Cases.Select(c => c.Label)])]);
        model.Axes.Add(Rhythms(known));
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result.Cases[i], known[0].Points[0].PerS);
        }

        panels.Header(0, string.Empty,
        [
            .. PatternClasses.Of(known.SelectMany(r => r.Points).Select(p => p.Pattern)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
            new HeaderEntry("best, with its glide", ChartStyle.Ink, Swatch.Dot),
        ]);
        return new Chart("across_windows", model, Height: height);
    }

    private static LinearAxis Rhythms(CadenceResult[] known)
    {
        double from = known.Min(r => r.Points[0].PerS), to = known.Max(r => r.Points[^1].PerS), margin = 0.02 * (to - from);
        return ChartStyle.NewAxis(AxisPosition.Bottom, CadenceChart.RhythmTitle, from - margin, to + margin);
    }

    private static void AddRow(Panels panels, int row, AcrossCase setUp, double left)
    {
        if (setUp.Result is not CadenceResult result)
        {
            SetUpRows.Write(panels, left, row, "no run finished", OxyColors.Undefined);
            return;
        }

        foreach ((Model.Retrieve.WalkPattern? pattern, double from, double to) in result.Bands())
        {
            SetUpRows.Box(panels, from, to, row, HalfRow, PatternClasses.Of([pattern])[0].Color);
        }

        if (result.BestPoint is RhythmPoint best)
        {
            SetUpRows.Dot(panels, best.PerS, row, ChartStyle.Ink);
            SetUpRows.Write(panels, best.PerS, row, $"  {Trade.Digits(100.0 * best.Median(o => o.GlideWidthM))} cm", OxyColors.Undefined);
        }
    }
}
