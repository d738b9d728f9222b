using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Doubt;

/// <summary>The files of a study of doubt of one set-up.</summary>
public static class DoubtFiles
{
    /// <summary>Stages <c>doubt_bands.csv</c>, <c>doubt_guesses.csv</c> and a chart per headline.</summary>
    /// <param name="folder">Receives the files.</param>
    /// <param name="study">Study.</param>
    /// <param name="plots">Which pictures.</param>
    public static void Add(OutputFolder folder, DoubtStudy study, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(study);
        folder.Add("doubt_bands.csv", stream => Lines(stream, BandLines(study.Report)));
        folder.Add("doubt_guesses.csv", stream => Lines(stream, GuessLines(study.Report.Guesses, [.. study.Report.Bands.Select(b => b.Figure)], study.Report.Effects)));
        if (study.Report.Bands.Count > 0)
        {
            ChartFiles.Add(folder, [.. study.Headlines.Where(h => study.Report[h.Key].Count > 0).Select(h => DoubtChart.Build(study.Report, h, study.Labels))], plots);
        }
    }

    /// <summary>Every guess against every figure, one pair per line.</summary>
    /// <param name="guesses">Names of the guesses.</param>
    /// <param name="figures">Names of the figures.</param>
    /// <param name="effects">[guess][figure].</param>
    public static IEnumerable<string> GuessLines(IReadOnlyList<string> guesses, IReadOnlyList<string> figures, IReadOnlyList<IReadOnlyList<GuessEffect>> effects)
    {
        ArgumentNullException.ThrowIfNull(guesses);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(effects);
        yield return "guess,figure,rank_correlation,weight,low_shift,high_shift";
        for (int g = 0; g < guesses.Count; g++)
        {
            for (int f = 0; f < figures.Count; f++)
            {
                GuessEffect e = effects[g][f];
                yield return CsvLine.Join([guesses[g], figures[f], .. new[] { e.Rho, e.Weight, e.LowShift, e.HighShift }.Select(CsvLine.Number)]);
            }
        }
    }

    /// <summary>Writes lines with a line feed each, UTF-8.</summary>
    /// <param name="stream">Receives them.</param>
    /// <param name="lines">Lines.</param>
    public static void Lines(Stream stream, IEnumerable<string> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        using var text = new StreamWriter(stream, leaveOpen: true) { NewLine = "\n" };
        foreach (string line in lines)
        {
            text.WriteLine(line);
        }
    }

    private static IEnumerable<string> BandLines(DoubtReport report) =>
    [
        "figure,p10,p50,p90,runs", .. report.Bands.Select(b => CsvLine.Join([b.Figure, CsvLine.Number(b.P10), CsvLine.Number(b.P50), CsvLine.Number(b.P90), CsvLine.Number(b.Count)])),
    ];
}
