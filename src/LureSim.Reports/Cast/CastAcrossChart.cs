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
    private const double RowHeight = 96, Rest = 300, Wide = 0.34, Narrow = 0.13;
    private static readonly OxyColor Guessed = ChartStyle.Faint(ChartStyle.Sky, 0.35);

    /// <summary>Builds the picture.</summary>
    /// <param name="result">Casts of several set-ups, one of them at least with a cast.</param>
    public static Chart Build(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int rows = result.Cases.Count, height = (int)(Rest + (RowHeight * rows));
        PlotModel model = ChartStyle.NewModel("Distance by " + result.KeyTitle.Split(',')[0], result.Title);
        var panels = new Panels(model, height, [SetUpRows.Axis([.. result.Cases.Select(c => c.Label)])]);
        double[] ends = [.. result.Cases.Where(c => c.Cast is not null).SelectMany(Ends).Where(double.IsFinite)];
        double low = Math.Min(0.0, ends.DefaultIfEmpty(0.0).Min()), right = ends.DefaultIfEmpty(1.0).Max();
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Distance over the water, m", low, right + (1.02 * (right - low))));
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result, i, right + (0.015 * (right - low)));
        }

        panels.Header(
            0, string.Empty, new("mean of many casts", ChartStyle.Ink, Swatch.Dot), new("8 of 10 casts", ChartStyle.Blue, Swatch.Box), new("8 of 10 draws of the guesses", Guessed, Swatch.Box));
        return new Chart("cast_across", model, Height: height);
    }

    private static IEnumerable<double> Ends(CastCase c) => [c.P10M, c.P90M, c.GuessesM.Low, c.GuessesM.High];

    private static void AddRow(Panels panels, int row, CastAcross result, int index, double words)
    {
        CastCase c = result.Cases[index];
        if (c.Cast is null)
        {
            SetUpRows.Write(panels, words, row, "no cast", OxyColors.White);
            return;
        }

        SetUpRows.Box(panels, c.GuessesM.Low, c.GuessesM.High, row, Wide, Guessed);
        SetUpRows.Box(panels, c.P10M, c.P90M, row, Narrow, ChartStyle.Blue);
        double mean = result.MeanM(index);
        if (double.IsFinite(mean))
        {
            SetUpRows.Dot(panels, mean, row, ChartStyle.Ink);
        }

        SetUpRows.Write(panels, words, row, string.Join(", ", Told(result, index, mean)), OxyColors.White);
    }

    private static IEnumerable<string> Told(CastAcross result, int index, double mean)
    {
        if (double.IsFinite(mean))
        {
            yield return $"{Trade.Fixed(mean, 1)} m";
        }

        if (index == result.ReferenceIndex)
        {
            yield return "reference";
        }
        else if (result.Against(index) is CastPair pair)
        {
            yield return $"{CastAcrossWords.Gain(pair.GainM)}: {CastAcrossWords.Verdict(pair.Verdict)} (chance {CastAcrossWords.Chance(pair.Share)})";
        }
    }
}
