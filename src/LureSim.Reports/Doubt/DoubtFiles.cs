using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Doubt;

/// <summary>The files of a study of doubt of one set-up.</summary>
public static class DoubtFiles
{
    /// <summary>Stages <c>doubt_bands.csv</c>, <c>doubt_hands.csv</c> where hands enter, <c>doubt_guesses.csv</c> and a chart per headline where it was
    /// looked for which guess matters.</summary>
    /// <param name="folder">Receives the files.</param>
    /// <param name="study">Study.</param>
    /// <param name="plots">Which pictures.</param>
    /// <param name="shown">Units of the pictures; none = either family.</param>
    public static void Add(OutputFolder folder, DoubtStudy study, PlotFormat plots, Shown? shown = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(study);
        folder.Add("doubt_bands.csv", stream => Lines(stream, BandLines(study.Report)));
        if (study.Hands is DoubtReport hands)
        {
            folder.Add("doubt_hands.csv", stream => Lines(stream, BandLines(hands)));
        }

        if (study.Screen is ScreenReport screen)
        {
            folder.Add("doubt_guesses.csv", stream => Lines(stream, GuessLines(study.Guesses, screen)));
            Chart?[] charts = study.Report.Bands.Count == 0
                ? []
                : [.. study.Headlines.Where(h => study.Report[h.Key].Count > 0).Select(h => DoubtChart.Build(study.Report, screen, h, study.Guesses, shown))];
            ChartFiles.Add(folder, [.. charts.OfType<Chart>()], plots);
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
        "figure,given,p10,p50,p90,runs",
        .. report.Bands.Select(b => CsvLine.Join([b.Figure, .. new[] { b.Given, b.P10, b.P50, b.P90, b.Count }.Select(CsvLine.Number)])),
    ];

    // Every guess against every figure, one pair per line.
    private static IEnumerable<string> GuessLines(IReadOnlyList<GuessName> guesses, ScreenReport screen)
    {
        yield return "guess,figure,low_shift,high_shift,mean_effect,effect_spread,noise";
        for (int g = 0; g < guesses.Count; g++)
        {
            for (int f = 0; f < screen.Figures.Count; f++)
            {
                GuessEffect e = screen.Effects[g][f];
                double[] numbers = [e.LowShift, e.HighShift, e.MeanEffect, e.EffectSpread, screen.Noise[f]];
                yield return CsvLine.Join([guesses[g].Key, screen.Figures[f], .. numbers.Select(CsvLine.Number)]);
            }
        }
    }
}
