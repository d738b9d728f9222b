using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Doubt;

/// <summary>A study of doubt for the terminal.</summary>
public static class DoubtText
{
    private const int Named = 5;

    /// <summary>Shares of the patterns, bands of every figure, and what moves the headlines.</summary>
    /// <param name="study">Study.</param>
    public static string Build(DoubtStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        DoubtReport report = study.Report;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Doubt: {report.Runs} runs, every guess drawn from its range\n\n");
        if (report.Failed > 0)
        {
            text.AppendWrapped($"{report.Failed} of them could not finish; the bands are of the others.");
        }

        AppendBands(text, report);
        if (report.Bands.Count > 0)
        {
            text.Append('\n');
            text.AppendWrapped("Of the runs: " + string.Join(", ", report.Shares.Select(s => $"{s.Key} {Trade.Fixed(100 * s.Value, 0)} %")) + ".");
            foreach (HeadlineFigure figure in study.Headlines.Where(h => report[h.Key].Count > 0))
            {
                text.AppendWrapped(Ranked(report, figure));
            }
        }

        text.Append('\n');
        return text.ToString();
    }

    private static void AppendBands(StringBuilder text, DoubtReport report)
    {
        int name = report.Bands.Select(b => b.Figure.Length).DefaultIfEmpty(0).Max() + 2;
        text.Append("  ").Append("".PadRight(name)).Append(CultureInfo.InvariantCulture, $"{"P10",10}{"P50",10}{"P90",10}\n");
        foreach (Band band in report.Bands.Where(b => b.Count > 0))
        {
            text.Append("  ").Append(band.Figure.PadRight(name))
                .Append(CultureInfo.InvariantCulture, $"{band.P10,10:G3}{band.P50,10:G3}{band.P90,10:G3}")
                .Append(band.Count < report.Runs - report.Failed ? $"   in {band.Count} runs\n" : "\n");
        }
    }

    private static string Ranked(DoubtReport report, HeadlineFigure figure)
    {
        string[] told =
        [
            .. report.Ranking(figure.Key).TakeWhile(r => r.Effect.Weight > report.ChanceRho).Take(Named)
                .Select(r => $"{r.Guess} ({Trade.Fixed(r.Effect.Rho, 2)})"),
        ];
        return told.Length == 0
            ? $"No guess moves the {figure.Words} more than chance would in so many runs (rank correlation {Trade.Fixed(report.ChanceRho, 2)})."
            : $"What moves the {figure.Words} most, by rank correlation: {string.Join(", ", told)}; chance takes one guess in twenty past {Trade.Fixed(report.ChanceRho, 2)}.";
    }
}
