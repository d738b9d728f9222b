using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>A fit to measured casts for the terminal.</summary>
public static class MatchText
{
    // Ranges of the words of cast.effort (guesses), docs/cast.md.
    private const double Gentle = 0.2, Everyday = 0.375, Hard = 0.65, Full = 1.1;

    /// <summary>Title, table, sentences and caution.</summary>
    /// <param name="report">Fit.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="folder">Where the part was written, or null.</param>
    public static string Build(MatchReport report, RunNotes notes, string? folder)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(report.Title).Append("\n\n");
        text.Append(AlignedTable.Text(Rows(report.Fit, notes.Shown))).Append('\n');
        text.AppendWrapped($"Effort {Trade.Fixed(report.Fit.Effort, 2)} explains what was measured, {Word(report.Fit.Effort)}. A tenth more effort would add {notes.Shown.Distance(report.TenthM)}.");
        text.AppendWrapped(report.Fit.Rows switch
        {
            [{ MeanOf: null }] => "The cast is taken as let go as the scenario says; a mean of several falls short of the best release, so say so, for example \"31 m mean of 12\", and the effort comes out higher.",
            [_] => "It is set against the mean of many casts, early and late releases among them; the standard error is the model's scatter from cast to cast over the root of their number.",
            _ => "Each cast is set against the mean of many casts, early and late releases among them.",
        });
        text.AppendWrapped("Torque and effort act only as a product, so this number takes in every error of the guessed hands, and most of those of drag and reel. "
            + string.Join(" ", report.Ends.Select(End)));
        if (folder is not null)
        {
            text.AppendWrapped($"To use it: --set cast={Path.Combine(folder, MatchFiles.PartName)}, or name that file as base in table [cast] of a scenario.");
        }

        text.Append('\n');
        text.AppendNotes(notes, "match.json");
        return text.ToString();
    }

    private static IEnumerable<TableRow> Rows(MatchFit fit, Shown shown)
    {
        if (fit.Rows is [MatchRow only])
        {
            yield return shown.Row("measured", ShownQuantity.Distance, only.MeasuredM);
            if (only.MeanOf is int mean)
            {
                yield return new("mean of", mean == 1 ? "1 cast" : $"{mean} casts", double.IsFinite(fit.EffortError) ? $"standard error of the effort {Trade.Fixed(fit.EffortError, 2)}" : "");
            }

            yield return new("effort that explains it", Trade.Fixed(fit.Effort, 2), "1 is full effort in this style");
            yield break;
        }

        yield return new("cast", "measured", "with the common effort");
        foreach (MatchRow row in fit.Rows)
        {
            yield return new(
                row.MeanOf is int of ? $"{row.Label}, mean of {of}" : row.Label, shown.Distance(row.MeasuredM),
                $"{shown.Distance(row.ComputedM)}, off by {shown.Distance(row.ResidualM)}; alone it needs {Trade.Fixed(row.Effort, 2)}");
        }

        yield return new("common effort", Trade.Fixed(fit.Effort, 2), $"standard error {Trade.Fixed(fit.EffortError, 2)}, scatter {Trade.Fixed(fit.EffortScatter, 2)}");
        yield return new("scatter of distance", $"{Trade.Fixed(100.0 * fit.ScatterShare, 1)} %", "3 to 6 % is usual (common practice, no source)");
    }

    private static string Word(double effort) =>
        effort < Gentle ? "less than a gentle cast: check tape, units, line, lure and casting style"
        : effort < Everyday ? "a gentle cast by the guessed scale (0.2 to 0.4)"
        : effort <= Hard ? "an everyday cast by the guessed scale (0.35 to 0.65)"
        : effort <= Full ? "a hard cast; 1 is all that a practised person has in this style"
        : "more than a practised person has in this style (1 by the guessed scale): check casting style, tape, wind, line and lure, or the model's drag is too high";

    private static string End(MatchEnd end) => $"With {end.Label} at its ends it would be {Side(end.AtLow)} and {Side(end.AtHigh)}.";

    private static string Side(double effort) => double.IsFinite(effort) ? Trade.Fixed(effort, 2) : "out of reach";
}
