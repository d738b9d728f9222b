using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>One row per set-up: how far, how wide casts scatter, what the guesses may change, and whether it is told from the reference.</summary>
public static class CastAcrossChart
{
    private const double Wide = 0.36, Narrow = 0.14, WordsWidth = 500;

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Casts of several set-ups, one of them at least with a cast.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart Build(CastAcross result, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        shown ??= Shown.Both;
        int rows = result.Cases.Count, height = SetUpRows.Height(rows);
        PlotModel model = ChartStyle.NewModel(CastAcrossWords.Headline(result, shown), $"{result.Title}, by {result.KeyTitle.Split(',')[0]}");
        CategoryAxis names = SetUpRows.Axis([.. result.Cases.Select(c => c.Label)]);
        var panels = new Panels(model, height, [names]);
        double[] ends = [.. result.Cases.Where(c => c.Cast is not null).SelectMany(Ends).Where(double.IsFinite)];
        double low = Math.Min(0.0, ends.DefaultIfEmpty(0.0).Min()), right = ends.DefaultIfEmpty(1.0).Max();
        ShownUnit unit = shown.Unit(ShownQuantity.Distance, right);
        double end = unit.Of(low + (1.04 * (right - low)));
        LinearAxis distance = ChartStyle.NewAxis(AxisPosition.Bottom, $"Distance over the water, {unit.Name}", unit.Of(low), end);
        distance.EndPosition = SetUpRows.PlotShare(names, WordsWidth);
        model.Axes.Add(distance);
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result, i, unit);
            AddWords(panels, rows - 1 - i, result, i, end, shown);
        }

        panels.Header(
            0, string.Empty, new("mean of many casts", Looks.Mean, Swatch.Dot), new("8 of 10 casts", Looks.Casts, Swatch.Box),
            new("8 of 10 draws of the guesses", Looks.Guesses, Swatch.Box));
        return new Chart("cast_across", model, Height: height);
    }

    private static IEnumerable<double> Ends(CastCase c) => [c.P10M, c.P90M, c.GuessesM.Low, c.GuessesM.High];

    private static void AddRow(Panels panels, int row, CastAcross result, int index, ShownUnit unit)
    {
        CastCase c = result.Cases[index];
        if (c.Cast is null)
        {
            return;
        }

        SetUpRows.Box(panels, unit.Of(c.GuessesM.Low), unit.Of(c.GuessesM.High), row, Wide, Looks.Guesses);
        SetUpRows.Box(panels, unit.Of(c.P10M), unit.Of(c.P90M), row, Narrow, Looks.Casts);
        double mean = result.MeanM(index);
        if (double.IsFinite(mean))
        {
            SetUpRows.Dot(panels, unit.Of(mean), row, Looks.Mean);
        }
    }

    // Two lines beside the plot: numbers, and what they mean.
    private static void AddWords(Panels panels, int row, CastAcross result, int index, double end, Shown shown)
    {
        if (result.Cases[index].Cast is null)
        {
            SetUpRows.Beside(panels, end, row, "no cast");
            return;
        }

        double mean = result.MeanM(index);
        CastPair? pair = result.Against(index);
        string[] numbers =
        [
            .. double.IsFinite(mean) ? [shown.Distance(mean)] : Array.Empty<string>(),
            .. pair is null ? [] : new[] { CastAcrossWords.Change(pair.GainM, shown) },
        ];
        SetUpRows.Beside(panels, end, row, string.Join(": ", numbers), -1);
        SetUpRows.Beside(
            panels, end, row, pair is null ? index == result.ReferenceIndex ? "reference" : "" : CastAcrossWords.Verdict(pair.Verdict), 1,
            bold: pair?.Verdict == NoticeVerdict.Will);
    }
}
