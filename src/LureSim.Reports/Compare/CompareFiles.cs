using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Compare;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Compare;

/// <summary>The set of files of a comparison.</summary>
public static class CompareFiles
{
    /// <summary>Writes tables, the page of pictures and every effective scenario, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="result">Set-ups compared.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, CompareResult result, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("compare.json", stream => CompareJson.Write(stream, result, notes));
        folder.Add("compare.csv", Encoding.UTF8.GetBytes(Csv(result)));
        for (int i = 0; i < result.SetUps.Count; i++)
        {
            folder.Add(string.Create(CultureInfo.InvariantCulture, $"effective_{i + 1}.toml"), Encoding.UTF8.GetBytes(result.SetUps[i].SetUp.Here.Effective().ToToml()));
        }

        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [ComparePage.Build(result, notes.Shown)], plots);
        }

        folder.Commit();
    }

    /// <summary>One row for every two set-ups and measure, SI.</summary>
    /// <param name="result">Set-ups compared.</param>
    public static string Csv(CompareResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text))
        {
            foreach (Difference d in result.Differences)
            {
                using SepWriter.Row row = writer.NewRow();
                row["measure"].Set(d.Measure.Key);
                row["unit"].Set(d.Measure.Unit);
                row["a"].Set(CsvLine.Text(result.SetUps[d.A].Label));
                row["b"].Set(CsvLine.Text(result.SetUps[d.B].Label));
                Set(row, "a_value", d.AValue);
                Set(row, "b_value", d.BValue);
                Set(row, "difference", d.Value);
                Set(row, "low", d.Band.Low);
                Set(row, "high", d.Band.High);
                Set(row, "share", d.Share);
                row["verdict"].Set(CompareWords.Verdict(d.Verdict));
                row["reason"].Set(CsvLine.Text(CompareReasons.Of(result, d, new(result, CompareJson.Words))));
            }
        }

        return text.ToString();
    }

    private static void Set(SepWriter.Row row, string column, double value)
    {
        if (double.IsFinite(value))
        {
            row[column].Format(value);
        }
        else
        {
            row[column].Set("");
        }
    }
}
