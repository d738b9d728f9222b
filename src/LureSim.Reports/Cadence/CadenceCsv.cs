using System.Globalization;
using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cadence;

/// <summary>One row per rhythm: pattern, share of starts, and figures as medians with their spread over the starts.</summary>
public static class CadenceCsv
{
    private static readonly string[] Shown =
    [
        "glide_width_m", "heading_swing_deg", "regularity", "advance_per_twitch_m", "pull_reach", "pull_impulse_Ns", "wrist_torque_rms_Nm", "mean_slack_m",
        "nose_down_load_N", "nose_dip_m", "slack_share", "loaded_tip_travel_m", "width_m", "nose_width_m",
    ];

    private static readonly Figure<RetrieveSummary>[] Figures = [.. Shown.Select(key => RetrieveFigures.All.First(f => f.Key == key))];

    /// <summary>Writes the table.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="keys">Keys that distinguish the set-ups; none for one set-up.</param>
    /// <param name="cases">Values of these keys, and rhythms, per set-up.</param>
    public static void Write(Stream stream, IReadOnlyList<string> keys, IEnumerable<(IReadOnlyList<string> Values, CadenceResult Result)> cases)
    {
        ArgumentNullException.ThrowIfNull(keys);
        ArgumentNullException.ThrowIfNull(cases);
        using var text = new StreamWriter(stream, leaveOpen: true) { NewLine = "\n" };
        using SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text);
        foreach ((IReadOnlyList<string> values, CadenceResult result) in cases)
        {
            foreach (RhythmPoint point in result.Points)
            {
                using SepWriter.Row row = writer.NewRow();
                for (int k = 0; k < keys.Count; k++)
                {
                    row[keys[k]].Set(CsvLine.Text(values[k]));
                }

                WritePoint(row, point);
            }
        }
    }

    internal static void WritePoint(SepWriter.Row row, RhythmPoint point)
    {
        row["rhythm_per_s"].Set(Digits(point.PerS));
        row["pattern"].Set(point.Pattern is null ? "failed" : RetrieveFigures.Name(point.Pattern.Value));
        row["lock_share"].Set(Digits(point.LockShare));
        row["starts"].Set(Digits(point.Outcomes.Count));
        foreach (Figure<RetrieveSummary> figure in Figures)
        {
            (double low, double high) = point.Spread(figure.Of);
            row[figure.Key].Set(Digits(point.Median(figure.Of)));
            row[figure.Key + "_low"].Set(Digits(low));
            row[figure.Key + "_high"].Set(Digits(high));
        }
    }

    // A figure that does not exist is an empty field.
    private static string Digits(double value) => double.IsFinite(value) ? value.ToString("G9", CultureInfo.InvariantCulture) : "";
}
