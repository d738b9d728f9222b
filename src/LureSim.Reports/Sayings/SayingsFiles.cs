using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Sayings;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Sayings;

/// <summary>The set of files of sayings.</summary>
public static class SayingsFiles
{
    /// <summary>Writes table, JSON and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">What came out.</param>
    /// <param name="shown">Units of the pictures.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    public static void Write(OutputFolder folder, SayingsReport report, Shown shown, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        folder.Add("sayings.json", stream => SayingsJson.Write(stream, report));
        folder.Add("sayings.csv", Encoding.UTF8.GetBytes(Csv(report)));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [SayingsChart.Build(report), .. report.Results.SelectMany(r => SayingChart.Build(r, shown))], plots);
        }

        folder.Commit();
    }

    /// <summary>One row for every test in every place, in the unit of the figure's key.</summary>
    /// <param name="report">What came out.</param>
    public static string Csv(SayingsReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text))
        {
            foreach ((SayingResult result, TrialResult trial) in report.Results.SelectMany(r => r.Trials.Select(t => (r, t))))
            {
                using SepWriter.Row row = writer.NewRow();
                (string Column, string Text)[] words =
                [
                    ("saying", result.Saying.Name), ("verdict", SayingWords.Verdict(result.Verdict)), ("test", trial.Trial.Test.Name), ("place", trial.Trial.Place.Name),
                    ("command", trial.Trial.Figures.Name), ("figure", trial.Trial.Figure), ("claim", trial.Trial.Test.Claim.Text.Text),
                    ("first", trial.Trial.Test.Sides[0].Name), ("last", trial.Trial.Test.Sides[^1].Name), ("word", SayingWords.Word(trial.Word)),
                ];
                foreach ((string column, string cell) in words)
                {
                    row[column].Set(CsvLine.Text(cell));
                }

                (string Column, double Value)[] numbers =
                [
                    ("first_median", trial.Side(0)), ("last_median", trial.Side(trial.Trial.Test.Sides.Count - 1)), ("number", trial.Number), ("low", trial.Band.Low), ("high", trial.Band.High),
                    ("chance", trial.Chance), ("opposite", trial.OppositeChance), ("no_difference", trial.SameChance),
                    .. trial.Looks.Select(l => ("chance_" + SayingWords.Look(l.What).Replace(' ', '_'), l.Chance)),
                ];
                foreach ((string column, double value) in numbers)
                {
                    row[column].Set(CsvLine.Number(value));
                }

                row["reason"].Set(CsvLine.Text(trial.Word == PlaceWord.Unknown ? SayingWords.WhyUnknown(trial) : SayingWords.Instead(trial)));
            }
        }

        return text.ToString();
    }
}
