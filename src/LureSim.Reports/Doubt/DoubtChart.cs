using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using OxyPlot;

namespace LureSim.Reports.Doubt;

/// <summary>Which guess moves a figure most: for each that is told from chance, how far the figure moves with the guess at either end.</summary>
public static class DoubtChart
{
    /// <summary>Builds the chart of one set-up; null where no guess moves the figure at all.</summary>
    /// <param name="report">Bands.</param>
    /// <param name="screen">Which guess matters.</param>
    /// <param name="figure">Figure to show.</param>
    /// <param name="guesses">The guesses, in the screen's order.</param>
    /// <param name="shown">Units; none = either family.</param>
    public static Chart? Build(DoubtReport report, ScreenReport screen, HeadlineFigure figure, IReadOnlyList<GuessName> guesses, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(guesses);
        RankedGuess[] moving = [.. screen.Ranking(figure.Key).Where(r => r.Effect.Size > 0.0)];
        if (moving.Length == 0)
        {
            return null;
        }

        Band band = report[figure.Key];
        HeadlineFigure told = GuessBars.In(figure, shown ?? Shown.Both, [band.Given, band.P10, band.P90]);
        GuessBar[] bars = [.. moving.Where(r => !r.IsNoise).Select(r => Row(r, GuessWords.Of(guesses[r.Index], shown ?? Shown.Both)))];
        (PlotModel model, int height) = GuessBars.Build(
            told, Subtitle(report, told), $"Shift of the {told.Words}, all else as it stands", bars, moving.Length - bars.Length,
            $"under {Trade.Digits(told.Scale * moving[0].Noise)} {told.Unit}",
            new HeaderEntry("guess at its low end", Looks.LowEnd, Swatch.Box), new HeaderEntry("at its high end", Looks.HighEnd, Swatch.Box));
        return new(GuessBars.Name(figure), model, Height: height);
    }

    private static GuessBar Row(RankedGuess r, string label) =>
        new(label, r.Effect.LowShift, r.Effect.HighShift, r.OnlyTogether ? r.Effect.MeanEffect : double.NaN);

    private static string Subtitle(DoubtReport report, HeadlineFigure figure)
    {
        Band band = report[figure.Key];
        string Show(double value) => Trade.Digits(figure.Scale * value);
        string stands = double.IsNaN(band.Given) ? "" : $"{Show(band.Given)} {figure.Unit} as it stands, ";
        string failed = report.Failed == 0 ? "" : $"; {report.Failed} of {report.Runs} draws failed";
        return $"{Trade.Capital(figure.Words)}: {stands}8 of 10 draws of the guesses between {Show(band.P10)} and {Show(band.P90)} {figure.Unit}{failed}";
    }
}
