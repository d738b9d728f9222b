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
    /// <param name="shown">Units.</param>
    public static string Build(DoubtStudy study, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(shown);
        DoubtReport report = study.Report;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Doubt: {report.Runs} runs, every guess {(study.Hands is null ? "" : "but those of the hands ")}drawn from its range\n\n");
        AppendFailed(text, report);
        FigureWords[] headlines = report.Bands.Count == 0 ? [] : [.. study.Headlines.Where(h => report[h.Key].Count > 0).Select(h => new FigureWords(shown, h))];
        foreach (FigureWords figure in headlines)
        {
            text.AppendWrapped(Beside(report[figure.Key], figure));
        }

        text.Append(headlines.Length > 0 ? "\n" : "");
        AppendBands(text, report, shown);
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

    private static string Beside(Band band, FigureWords figure)
    {
        string stands = double.IsNaN(band.Given) ? "none as it stands" : $"{figure.Show(band.Given)} as it stands";
        string care = band.IsGivenOutside
            ? " As it stands it lies outside the band of its own draws, so it is not the middle of what the guesses allow: go by the median."
            : "";
        return $"{Trade.Capital(figure.Words)}: {stands}; median of the draws {figure.Show(band.P50)}, 8 of 10 between {figure.Between(band)}.{care}";
    }

    private static void AppendHands(StringBuilder text, DoubtReport hands, FigureWords[] headlines)
    {
        AppendFailed(text, hands);
        string[] bands = hands.Bands.Count == 0
            ? []
            : [.. headlines.Where(h => hands[h.Key].Count > 0).Select(h => $"{h.Words} median {h.Show(hands[h.Key].P50)}, 8 of 10 between {h.Between(hands[h.Key])}")];
        if (bands.Length > 0)
        {
            text.AppendWrapped($"If your hands are other than guessed, all else as it stands ({hands.Runs} runs, the same luck): {string.Join("; ", bands)}.");
        }
    }

    private static void AppendBands(StringBuilder text, DoubtReport report, Shown shown)
    {
        string[] Row(Band band)
        {
            double[] values = [band.Given, band.P10, band.P50, band.P90];
            ShownUnit unit = FigureUnit.Of(shown.OneFamily, band.Figure, values.Where(double.IsFinite).Select(Math.Abs).Max())[0];
            string name = FigureUnit.Words(band.Figure) + (unit.Name.Length > 0 ? ", " + unit.Name : "");
            string few = band.Count < report.Runs - report.Failed ? $"in {band.Count} runs" : "";
            return [name, .. values.Select(v => double.IsNaN(v) ? "-" : unit.Digits(v)), few];
        }

        Band[] bands = [.. report.Bands.Where(b => b.Count > 0)];
        if (bands.Length > 0)
        {
            text.Append(ColumnTable.Text(["", "as it stands", "10 % below", "median", "10 % above", ""], [.. bands.Select(Row)]));
        }
    }

    private static void AppendScreen(StringBuilder text, DoubtStudy study, FigureWords[] headlines)
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

        foreach (FigureWords figure in headlines)
        {
            text.AppendWrapped(Ranked(study, screen, figure));
        }
    }

    private static string Ranked(DoubtStudy study, ScreenReport screen, FigureWords figure)
    {
        RankedGuess[] all = [.. screen.Ranking(figure.Key)], told = [.. all.Where(r => !r.IsNoise)];
        string noise = $"no more than noise, {figure.Show(all[0].Noise)}";
        string[] named = [.. told.Take(Named).Select(r => $"{GuessWords.Of(study.Guesses[r.Index], figure.Shown)} {Shifts(r, figure)}")];
        return told.Length == 0
            ? $"No guess does more to the {figure.Words} than noise, {figure.Show(all[0].Noise)}."
            : $"What moves the {figure.Words} most, each guess from as it stands to its 10 % and its 90 % end: {string.Join("; ", named)}. "
                + (told.Length > named.Length
                    ? $"{told.Length - named.Length} more move it less, {all.Length - told.Length} {noise}."
                    : $"The other {all.Length - told.Length} do {noise}.");
    }

    private static string Shifts(RankedGuess guess, FigureWords figure) => guess.OnlyTogether
        ? $"only together with others, {figure.Show(guess.Effect.MeanEffect)} on the mean"
        : figure.Shifts(guess.Effect.LowShift, guess.Effect.HighShift);
}
