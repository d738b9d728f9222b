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
    private const double HalfRow = 0.4, WordsWidth = 300;

    /// <summary>Builds the chart.</summary>
    /// <param name="result">Rhythms of many set-ups.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(AcrossResult result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        CadenceResult[] known = [.. result.Cases.Select(c => c.Result).OfType<CadenceResult>()];
        int rows = result.Cases.Count, height = SetUpRows.Height(rows);
        PlotModel model = ChartStyle.NewModel(AcrossWords.Windows(result), $"{result.Title}, by {AcrossWords.Keys(result)}");
        CategoryAxis names = SetUpRows.Axis([.. result.Cases.Select(c => c.Label)]);
        var panels = new Panels(model, height, [names]);
        LinearAxis rhythms = Rhythms(known);
        rhythms.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(rhythms);
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result.Cases[i], rhythms, shown);
        }

        panels.Header(0, string.Empty,
        [
            .. PatternClasses.Of(known.SelectMany(r => r.Points).Select(p => p.Pattern)).Select(c => new HeaderEntry(c.Label, c.Color, Swatch.Box)),
            new HeaderEntry("best rhythm", ChartStyle.Ink, Swatch.Dot),
        ]);
        return new Chart("across_windows", model, Height: height);
    }

    private static LinearAxis Rhythms(CadenceResult[] known)
    {
        double from = known.Min(r => r.Points[0].PerS), to = known.Max(r => r.Points[^1].PerS), margin = 0.02 * (to - from);
        return ChartStyle.NewAxis(AxisPosition.Bottom, CadenceChart.RhythmTitle, from - margin, to + margin);
    }

    private static void AddRow(Panels panels, int row, AcrossCase setUp, LinearAxis rhythms, Shown shown)
    {
        if (setUp.Result is not CadenceResult result)
        {
            SetUpRows.Beside(panels, rhythms.Maximum, row, "no run finished");
            return;
        }

        double best = result.BestPoint?.PerS ?? double.NaN;
        foreach ((Model.Retrieve.WalkPattern? pattern, double from, double to) in result.Bands())
        {
            SetUpRows.Box(panels, from, to, row, HalfRow, PatternClasses.Color(pattern), PatternClasses.Name(pattern), best);
        }

        if (result.BestPoint is RhythmPoint point)
        {
            SetUpRows.Dot(panels, point.PerS, row, ChartStyle.Ink);
            SetUpRows.Beside(panels, rhythms.Maximum, row, $"best {CadenceStory.Rate(point.PerS)} a second,", -1);
            SetUpRows.Beside(panels, rhythms.Maximum, row, $"glides {shown.Size(point.Median(o => o.GlideWidthM))}", 1);
        }
        else
        {
            SetUpRows.Beside(panels, rhythms.Maximum, row, "walks at no rhythm");
        }
    }
}
