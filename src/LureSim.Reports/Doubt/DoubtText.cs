using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>A study of doubt for the terminal.</summary>
public static class DoubtText
{
    private const int Named = 5;

    /// <summary>The headlines beside the median of their draws, bands of every figure, shares of the patterns, the band of the hands, and what moves the
    /// headlines.</summary>
    /// <param name="study">Study.</param>
    public static string Build(DoubtStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        DoubtReport report = study.Report;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Doubt: {report.Runs} runs, every guess {(study.Hands is null ? "" : "but those of the hands ")}drawn from its range\n\n");
        AppendFailed(text, report);
        HeadlineFigure[] headlines = report.Bands.Count == 0 ? [] : [.. study.Headlines.Where(h => report[h.Key].Count > 0)];
        foreach (HeadlineFigure figure in headlines)
        {
            text.AppendWrapped(Beside(report[figure.Key], figure));
        }

        text.Append(headlines.Length > 0 ? "\n" : "");
        AppendBands(text, report);
        if (report.Bands.Count > 0)
        {
            text.Append('\n');
            text.AppendWrapped("Of the runs: " + string.Join(", ", report.Shares.Select(s => $"{s.Key} {Trade.Fixed(100 * s.Value, 0)} %")) + ".");
        }

        if (study.Hands is DoubtReport hands)
        {
            AppendHands(text, hands, headlines);
        }

        AppendScreen(text, study, headlines);
        text.Append('\n');
        return text.ToString();
    }

    private static void AppendFailed(StringBuilder text, DoubtReport report)
    {
        if (report.Failed > 0)
        {
            text.AppendWrapped($"{report.Failed} of {report.Runs} draws could not finish and the bands are of the others; most often: {report.Reason.TrimEnd('.')}.");
        }
    }

    private static string Beside(Band band, HeadlineFigure figure)
    {
        string stands = double.IsNaN(band.Given) ? "none as it stands" : $"{Show(band.Given, figure)} as it stands";
        string care = band.IsGivenOutside
            ? " As it stands it lies outside the band of its own draws, so it is not the middle of what the guesses allow: go by the median."
            : "";
        return $"{Trade.Capital(figure.Words)}: {stands}; median of the draws {Show(band.P50, figure)}, 8 of 10 between {Between(band, figure)}.{care}";
    }

    private static void AppendHands(StringBuilder text, DoubtReport hands, HeadlineFigure[] headlines)
    {
        AppendFailed(text, hands);
        string[] bands = hands.Bands.Count == 0
            ? []
            : [.. headlines.Where(h => hands[h.Key].Count > 0).Select(h => $"{h.Words} median {Show(hands[h.Key].P50, h)}, 8 of 10 between {Between(hands[h.Key], h)}")];
        if (bands.Length > 0)
        {
            text.AppendWrapped($"If your hands are other than guessed, all else as it stands ({hands.Runs} runs, the same luck): {string.Join("; ", bands)}.");
        }
    }

    private static void AppendBands(StringBuilder text, DoubtReport report)
    {
        int name = report.Bands.Select(b => b.Figure.Length).DefaultIfEmpty(0).Max() + 2;
        text.Append("  ").Append("".PadRight(name)).Append(CultureInfo.InvariantCulture, $"{"as is",10}{"P10",10}{"P50",10}{"P90",10}\n");
        foreach (Band band in report.Bands.Where(b => b.Count > 0))
        {
            string given = double.IsNaN(band.Given) ? "-" : band.Given.ToString("G3", CultureInfo.InvariantCulture);
            text.Append("  ").Append(band.Figure.PadRight(name))
                .Append(CultureInfo.InvariantCulture, $"{given,10}{band.P10,10:G3}{band.P50,10:G3}{band.P90,10:G3}")
                .Append(band.Count < report.Runs - report.Failed ? $"   in {band.Count} runs\n" : "\n");
        }
    }

    private static void AppendScreen(StringBuilder text, DoubtStudy study, HeadlineFigure[] headlines)
    {
        if (study.Screen is not ScreenReport screen)
        {
            text.AppendWrapped(
                $"Which guess matters was not looked for: it takes {study.ScreenRuns} more such searches, made from --doubt {DoubtRuns.FewestDrawsOfStudies} on; retrieve --doubt tells it of one rhythm.");
            return;
        }

        if (screen.Failed > 0)
        {
            text.AppendWrapped($"Of {screen.Runs} runs made to see which guess matters {screen.Failed} could not finish.");
        }

        foreach (HeadlineFigure figure in headlines)
        {
            text.AppendWrapped(Ranked(study, screen, figure));
        }
    }

    private static string Ranked(DoubtStudy study, ScreenReport screen, HeadlineFigure figure)
    {
        RankedGuess[] all = [.. screen.Ranking(figure.Key)], told = [.. all.Where(r => !r.IsNoise)];
        string noise = $"no more than noise ({Show(all[0].Noise, figure)})";
        string[] named = [.. told.Take(Named).Select(r => $"{study.Guesses[r.Index].Label} {Shifts(r, figure)}")];
        return told.Length == 0
            ? $"No guess does more to the {figure.Words} than noise ({Show(all[0].Noise, figure)})."
            : $"What moves the {figure.Words} most, each guess from as it stands to its 10 % and its 90 % end: {string.Join("; ", named)}. "
                + (told.Length > named.Length
                    ? $"{told.Length - named.Length} more move it less, {all.Length - told.Length} {noise}."
                    : $"The other {all.Length - told.Length} do {noise}.");
    }

    private static string Shifts(RankedGuess guess, HeadlineFigure figure) => guess.OnlyTogether
        ? $"only together with others, {Show(guess.Effect.MeanEffect, figure)} on the mean"
        : $"{Signed(guess.Effect.LowShift, figure)} and {Signed(guess.Effect.HighShift, figure)} {figure.Unit}";

    private static string Signed(double value, HeadlineFigure figure) =>
        double.IsNaN(value) ? "none" : (value < 0 ? "" : "+") + Trade.Digits(figure.Scale * value);

    private static string Show(double value, HeadlineFigure figure) => $"{Trade.Digits(figure.Scale * value)} {figure.Unit}";

    private static string Between(Band band, HeadlineFigure figure) => $"{Trade.Digits(figure.Scale * band.P10)} and {Show(band.P90, figure)}";
}
