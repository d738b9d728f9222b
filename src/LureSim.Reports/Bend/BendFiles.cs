using System.Globalization;
using System.Text;
using System.Text.Json;
using LureSim.Model.Bend;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Files;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Bend;
using nietras.SeparatedValues;

namespace LureSim.Reports.Bend;

/// <summary>The set of files of a bend test.</summary>
public static class BendFiles
{
    private static readonly (BendValue Value, string Key, string Unit)[] Keys =
    [
        (BendValue.BendLoad, "bend_load", "_N"), (BendValue.TipRadiusRatio, "tip_radius_ratio", ""), (BendValue.StiffnessExponent, "stiffness_exponent", ""),
        (BendValue.Mass, "mass", "_kg"), (BendValue.FreeMassShare, "free_mass_share", ""), (BendValue.MassExponent, "mass_exponent", ""),
    ];

    /// <summary>Writes fit, readings, part and pictures, all or none.</summary>
    /// <param name="folder">Opened folder.</param>
    /// <param name="report">Fitted test.</param>
    /// <param name="part">Name of the part.</param>
    /// <param name="shown">How quantities are told.</param>
    /// <param name="plots">Which pictures.</param>
    /// <exception cref="OutputException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the set was whole.</exception>
    public static void Write(OutputFolder folder, BendReport report, string part, Shown shown, PlotFormat plots)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(report);
        folder.Add("bend.json", stream => WriteJson(stream, report));
        folder.Add("bend.csv", Encoding.UTF8.GetBytes(Csv(report.Fit)));
        folder.Add(part, Encoding.UTF8.GetBytes(BendPart.Text(report)));
        if (plots != PlotFormat.None)
        {
            ChartFiles.Add(folder, [BendCurve.Build(report, shown), BendShapes.Build(report, shown)], plots);
        }

        folder.Commit();
    }

    /// <summary>Name of the part that a test is written to.</summary>
    /// <param name="file">File of the test.</param>
    public static string PartName(string file) => BendPart.FileName(file);

    /// <summary>The fit as JSON: flat snake-case keys with the unit at the end; <c>_low</c> and <c>_high</c> are the 10-90 % band.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Fitted test.</param>
    public static void WriteJson(Stream stream, BendReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        BendFit fit = report.Fit;
        JsonText.Object(stream, json =>
        {
            json.WriteString("title", report.File.Name);
            json.WriteNumber("length_m", fit.Test.LengthM);
            json.WriteNumber("clamped_m", fit.Test.ClampedM);
            foreach ((BendValue value, string key, string unit) in Keys)
            {
                Estimate(json, key, unit, fit[value], 1.0);
            }

            Estimate(json, "tip_angle", "_deg", fit.ActionRad, 180.0 / Math.PI);
            Estimate(json, "frequency", "_Hz", fit.FrequencyHz, 1.0);
            json.WriteNumber("own_sag_m", fit.SagM);
            JsonText.Number(json, "damping_ratio", fit.DampingRatio);
            json.WriteNumber("largest_miss_m", fit.LargestMissM);
            json.WriteNumber("rms_miss_m", fit.RmsMissM);
            json.WriteNumber("error_scale", fit.ErrorScale);
            JsonText.List(json, "powers", report.Powers);
            JsonText.List(json, "actions", report.Actions);
            JsonText.List(json, "open", [.. fit.Open.Select(o => Keys.First(k => k.Value == o.Value).Key)]);
            Readings(json, fit);
            JsonText.List(json, "warnings", [.. BendText.Notes(report, Shown.Both)]);
        });
    }

    private static void Estimate(Utf8JsonWriter json, string key, string unit, BendEstimate e, double scale)
    {
        json.WriteNumber(key + unit, scale * e.Value);
        json.WriteNumber($"{key}_low{unit}", scale * e.Low);
        json.WriteNumber($"{key}_high{unit}", scale * e.High);
    }

    private static void Readings(Utf8JsonWriter json, BendFit fit)
    {
        json.WriteStartArray("readings");
        foreach (BendRow row in fit.Rows)
        {
            json.WriteStartObject();
            json.WriteString("reading", Word(row.Kind));
            json.WriteNumber("load_N", row.LoadN);
            json.WriteNumber("measured", row.Measured);
            json.WriteNumber("computed", row.Computed);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    // Readings in SI; the unit is part of the name of the reading.
    private static string Csv(BendFit fit)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture }).To(text))
        {
            foreach (BendRow row in fit.Rows)
            {
                using SepWriter.Row line = writer.NewRow();
                line["reading"].Set(Word(row.Kind));
                line["load_N"].Format(row.LoadN);
                line["measured"].Format(row.Measured);
                line["computed"].Format(row.Computed);
                line["expected_from_others"].Format(row.Expected);
                line["surprise_sigmas"].Format(row.Surprise);
            }
        }

        return text.ToString();
    }

    private static string Word(ReadingKind kind) => kind switch
    {
        ReadingKind.Drop => "drop_m",
        ReadingKind.Angle => "tip_angle_rad",
        ReadingKind.MiddleDrop => "middle_drop_m",
        ReadingKind.Bounce => "bounce_Hz",
        ReadingKind.Balance => "balance_m",
        _ => "mass_kg",
    };
}
