using System.Text;
using System.Text.Json;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Fit;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Fit;

/// <summary>The set of files of a fit.</summary>
public static class FitFiles
{
    /// <summary>Writes fit, readings, part and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Fit.</param>
    /// <param name="file">File of the measurements, after which parts are named.</param>
    /// <param name="shown">How quantities are told.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, FitReport report, string file, Shown shown, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        folder.Add("fit.json", stream => WriteJson(stream, report));
        folder.Add("fit_measured.csv", stream => DoubtFiles.Lines(stream, Lines(report)));
        folder.Add(FitPart.FileName(file), Encoding.UTF8.GetBytes(FitPart.Text(report)));
        if (FitPart.Hand(report) is string hand)
        {
            folder.Add(FitPart.FileName(file, hand: true), Encoding.UTF8.GetBytes(hand));
        }

        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, FitCharts.All(report, shown), plots);
        }

        folder.Commit();
    }

    /// <summary>Overrides that use what was told, in the order of their tables: parts of the lure and, where it was told, of the hand.</summary>
    /// <param name="folder">Folder of the parts.</param>
    /// <param name="file">File of the measurements.</param>
    /// <param name="report">Fit.</param>
    public static IReadOnlyList<string> Overrides(string folder, string file, FitReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        bool hand = report.Values.Any(v => v.Unknown.IsOfHand && v.IsTold), lure = report.File.MassKg is not null || report.Values.Any(v => !v.Unknown.IsOfHand && v.IsTold);
        return
        [
            .. lure ? (string[])[$"lure={Path.Combine(folder, FitPart.FileName(file))}"] : [],
            .. hand ? (string[])[$"retrieve={Path.Combine(folder, FitPart.FileName(file, hand: true))}"] : [],
        ];
    }

    /// <summary>The fit as JSON; numbers SI, <c>low</c> and <c>high</c> the 10-90 % band.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Fit.</param>
    public static void WriteJson(Stream stream, FitReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.File.Title);
            json.WriteString("lure", report.Scenario.Setup!.Title);
            json.WriteNumber("readings", report.Rows.Count);
            json.WriteNumber("readings_that_count", report.Counted);
            json.WriteNumber("chi_square", report.Square);
            json.WriteNumber("degrees_of_freedom", report.Free);
            json.WriteNumber("error_scale", report.ErrorScale);
            json.WriteStartArray("values");
            foreach (FitEstimate value in report.Values)
            {
                Value(json, value);
            }

            json.WriteEndArray();
            JsonText.List(json, "held", [.. report.Held.Select(h => h.Name)]);
            json.WriteStartArray("correlations");
            foreach (FitPair pair in report.Pairs)
            {
                json.WriteStartObject();
                json.WriteString("one", pair.One.Name);
                json.WriteString("other", pair.Other.Name);
                json.WriteNumber("correlation", pair.Correlation);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("next");
            foreach (FitNext next in report.Next)
            {
                json.WriteStartObject();
                json.WriteString("key", next.Unknown.Name);
                json.WriteString("test", next.Test is FitAdvice advice ? FitWording.Order(advice) : null);
                json.WriteNumber("left_share", next.LeftShare);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            if (report.Walks is FitWalks walks)
            {
                Walks(json, walks);
            }

            JsonText.List(json, "warnings", [.. FitText.Notes(report, Shown.Both)]);
        });
    }

    private static void Walks(Utf8JsonWriter json, FitWalks walks)
    {
        json.WriteStartArray("walks");
        foreach (FitWalkFilm film in walks.Films)
        {
            json.WriteStartObject();
            json.WriteString("place", film.Place);
            json.WriteNumber("rhythm_per_s", film.RhythmPerS);
            json.WriteNumber("pairs", film.Pairs);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        JsonText.List(json, "rests_on", [.. walks.RestsOn]);
    }

    private static void Value(Utf8JsonWriter json, FitEstimate value)
    {
        json.WriteStartObject();
        json.WriteString("key", value.Unknown.Name);
        json.WriteString("unit", FitWording.SiUnit(value.Unknown.Kind));
        json.WriteNumber("before_low", value.BeforeLow);
        json.WriteNumber("before_high", value.BeforeHigh);
        JsonText.Number(json, "best", value.IsTold ? value.Value : null);
        JsonText.Number(json, "low", value.IsTold ? value.Low : null);
        JsonText.Number(json, "high", value.IsTold ? value.High : null);
        json.WriteNumber("left_share", value.LeftShare);
        json.WriteString("verdict", Word(value.Verdict));
        json.WriteEndObject();
    }

    private static string Word(FitVerdict verdict) => verdict switch
    {
        FitVerdict.Told => "told",
        FitVerdict.Hardly => "hardly",
        FitVerdict.OneReading => "one-reading",
        _ => "not-told",
    };

    private static IEnumerable<string> Lines(FitReport report)
    {
        yield return "place,test,hooks,reading,at,measured,at_most,error,computed_before,computed,off_in_errors,surprise,unit";
        foreach (FitRowResult row in report.Rows)
        {
            FitReading r = row.Reading;
            yield return CsvLine.Join(
            [
                r.Place, FitWording.Tests(r.Test), r.HooksOn ? "on" : "off", FitWording.Name(r.Quantity), CsvLine.Number(r.At), CsvLine.Number(r.Measured), r.IsAtMost ? "true" : "false",
                CsvLine.Number(r.Sigma), CsvLine.Number(row.Before), CsvLine.Number(row.Computed), CsvLine.Number(row.Miss), CsvLine.Number(row.Surprise), FitWording.SiUnit(r.Kind),
            ]);
        }
    }
}
