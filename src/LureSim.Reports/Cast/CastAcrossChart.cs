using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using OxyPlot;
using OxyPlot.Axes;

namespace LureSim.Reports.Cast;

/// <summary>One row per set-up: how far, how wide casts scatter, what the guesses may change, and whether the step is noticed.</summary>
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
        double low = Math.Min(0.0, ends.Min()), right = ends.Max();
        model.Axes.Add(ChartStyle.NewAxis(AxisPosition.Bottom, "Distance over the water, m", low, right + (1.02 * (right - low))));
        for (int i = 0; i < rows; i++)
        {
            // The first set-up stands on top.
            AddRow(panels, rows - 1 - i, result, i, right + (0.015 * (right - low)));
        }

        panels.Header(
            0, string.Empty, new("mean of many casts", ChartStyle.Ink, Swatch.Dot), new("chosen release", ChartStyle.Ink, Swatch.Ring), new("8 of 10 casts", ChartStyle.Blue, Swatch.Box), new("8 of 10 draws of the guesses", Guessed, Swatch.Box));
        return new Chart("cast_across", model, Height: height);
    }

    private static IEnumerable<double> Ends(CastCase c) =>
        [c.Cast!.DistanceM, c.Cast.DistanceMeanM, c.Cast.DistanceP10M, c.Cast.DistanceP90M, c.GuessesM.Low, c.GuessesM.High];

    private static void AddRow(Panels panels, int row, CastAcross result, int index, double words)
    {
        CastCase c = result.Cases[index];
        if (c.Cast is null)
        {
            SetUpRows.Write(panels, words, row, "no cast", OxyColors.White);
            return;
        }

        SetUpRows.Box(panels, c.GuessesM.Low, c.GuessesM.High, row, Wide, Guessed);
        SetUpRows.Box(panels, c.Cast.DistanceP10M, c.Cast.DistanceP90M, row, Narrow, ChartStyle.Blue);
        SetUpRows.Dot(panels, c.Cast.DistanceM, row, OxyColors.White);
        SetUpRows.Dot(panels, c.Cast.DistanceMeanM, row, ChartStyle.Ink);
        SetUpRows.Write(panels, words, row, $"{Trade.Fixed(c.Cast.DistanceMeanM, 1)} m" + (result.Step(index) is CastStep step ? $", {Gain(step)}" : ""), OxyColors.White);
    }

    private static string Gain(CastStep step) => $"{(step.GainM > 0.0 ? "+" : "")}{Trade.Fixed(step.GainM, 1)}: {(step.Notices ? "you will notice" : "you will not notice")}{(double.IsFinite(step.SameShare) ? $" (in {CastAcrossCsv.Sure(step)} of draws)" : "")}";
}
