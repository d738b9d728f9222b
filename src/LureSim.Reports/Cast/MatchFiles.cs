using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Studies.Cast;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cast;

/// <summary>The set of files of a fit to measured casts.</summary>
public static class MatchFiles
{
    /// <summary>Name of the part that holds the fitted effort.</summary>
    public const string PartName = "angler.toml";

    /// <summary>Writes fit, part, effective scenario and picture, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Fit.</param>
    /// <param name="effectiveToml">The scenario with every default spelled out.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="plots">Which pictures; one cast has none.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, MatchReport report, string effectiveToml, RunNotes notes, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(notes);
        folder.Add("match.json", stream => WriteJson(stream, report, notes));
        folder.Add("match.csv", Encoding.UTF8.GetBytes(Csv(report.Fit)));
        folder.Add(PartName, Encoding.UTF8.GetBytes(Part(report)));
        folder.Add("effective.toml", Encoding.UTF8.GetBytes(effectiveToml));
        if (plots != PlotFormat.None && report.Fit.Rows.Count > 1)
        {
            ChartFiles.Add(folder, [MatchChart.Build(report, notes.Shown)], plots);
        }

        folder.Commit();
    }

    /// <summary>The fit as JSON: flat snake-case keys with the unit at the end.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Fit.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static void WriteJson(Stream stream, MatchReport report, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.Title);
            json.WriteNumber("effort", report.Fit.Effort);
            JsonText.Number(json, "effort_scatter", report.Fit.EffortScatter);
            JsonText.Number(json, "effort_error", report.Fit.EffortError);
            JsonText.Number(json, "distance_scatter", report.Fit.ScatterShare);
            JsonText.Number(json, "tenth_more_effort_m", report.TenthM);
            json.WriteStartArray("casts");
            foreach (MatchRow row in report.Fit.Rows)
            {
                json.WriteStartObject();
                json.WriteString("label", row.Label);
                json.WriteNumber("measured_m", row.MeasuredM);
                JsonText.Number(json, "mean_of", row.MeanOf);
                json.WriteNumber("effort", row.Effort);
                json.WriteNumber("computed_m", row.ComputedM);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("guess_ends");
            foreach (MatchEnd end in report.Ends)
            {
                json.WriteStartObject();
                json.WriteString("guess", end.Label);
                JsonText.Number(json, "effort_at_low", end.AtLow);
                JsonText.Number(json, "effort_at_high", end.AtHigh);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            JsonText.Notes(json, notes);
        });
    }

    private static string Csv(MatchFit fit)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text))
        {
            foreach (MatchRow row in fit.Rows)
            {
                using SepWriter.Row line = writer.NewRow();
                line["label"].Set(CsvLine.Text(row.Label));
                line["measured_m"].Format(row.MeasuredM);
                line["casts"].Format(row.Casts);
                line["effort"].Format(row.Effort);
                line["computed_m"].Format(row.ComputedM);
                line["residual_m"].Format(row.ResidualM);
                line["residual_share"].Format(row.ResidualShare);
            }
        }

        return text.ToString();
    }

    private static string Part(MatchReport report)
    {
        string casts = report.Fit.Casts == 1 ? "one measured cast" : $"{report.Fit.Casts} measured casts";
        return FormattableString.Invariant(
            $"""
            # An angler, as a part for table [cast]: the effort that explains {casts} with "{report.Title.ReplaceLineEndings(" ")}".
            # It takes in the errors of every guess about hands, air and reel: use it for the same person, and for comparing.
            # Use: --set cast=PATH/{PartName}, or base = "PATH/{PartName}" in table [cast].
            effort = {report.Fit.Effort:R}

            """).ReplaceLineEndings("\n");
    }
}
