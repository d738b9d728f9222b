using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using OxyPlot;

namespace LureSim.Reports.Doubt;

/// <summary>Which guess moves a figure most: for each, how far the figure moves with the guess at either end, alone and beside the others.</summary>
public static class DoubtChart
{
    /// <summary>Builds the chart of one set-up; null where no guess moves the figure at all.</summary>
    /// <param name="report">Bands.</param>
    /// <param name="screen">Which guess matters.</param>
    /// <param name="figure">Figure to show.</param>
    /// <param name="guesses">The guesses, in the screen's order.</param>
    public static Chart? Build(DoubtReport report, ScreenReport screen, HeadlineFigure figure, IReadOnlyList<GuessName> guesses)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(guesses);
        RankedGuess[] ranked = [.. screen.Ranking(figure.Key).Where(r => r.Effect.Size > 0.0).Take(GuessBars.MostRows)];
        if (ranked.Length == 0)
        {
            return null;
        }

        PlotModel model = GuessBars.Build(
            figure,
            $"Which guess moves the {figure.Words} most",
            Subtitle(report, figure),
            $"Shift of the {figure.Words}, all else as it stands",
            [.. ranked.Select(r => Row(r, guesses[r.Index].Label))],
            $"Grey: noise ({Trade.Digits(figure.Scale * ranked[0].Noise)} {figure.Unit})",
            new HeaderEntry("at its 10 % end", ChartStyle.Blue, Swatch.Box),
            new HeaderEntry("at its 90 % end", ChartStyle.Orange, Swatch.Box),
            new HeaderEntry("others drawn too", ChartStyle.Ink, Swatch.Line));
        return new(GuessBars.Name(figure), model, Height: GuessBars.Height(ranked.Length));
    }

    private static GuessBar Row(RankedGuess r, string label) => new(
        label, r.Effect.LowShift, r.Effect.HighShift, r.IsNoise ? double.NaN : r.Effect.MeanEffect,
        r.IsNoise ? ChartStyle.Grid : ChartStyle.Blue, r.IsNoise ? ChartStyle.Grid : ChartStyle.Orange);

    private static string Subtitle(DoubtReport report, HeadlineFigure figure)
    {
        Band band = report[figure.Key];
        string Show(double value) => Trade.Digits(figure.Scale * value);
        string stands = double.IsNaN(band.Given) ? "" : $"{Show(band.Given)} {figure.Unit} as it stands; ";
        string failed = report.Failed == 0 ? "" : $"; {report.Failed} of {report.Runs} draws failed";
        return $"{stands}{band.Count} draws of the guesses: median {Show(band.P50)} {figure.Unit}, 8 of 10 between {Show(band.P10)} and {Show(band.P90)} {figure.Unit}{failed}";
    }
}
