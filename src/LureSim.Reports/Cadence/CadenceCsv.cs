using System.Globalization;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cadence;

/// <summary>One row per rhythm: pattern, share of starts, and figures as medians with their spread over the starts.</summary>
public static class CadenceCsv
{
    private static readonly (string Name, Func<StationaryOutcome, double> Value)[] Figures =
    [
        ("glide_width_m", o => o.GlideM), ("heading_swing_deg", o => o.SwingDeg), ("regularity", o => o.Regularity),
        ("advance_per_twitch_m", o => o.AdvanceM), ("pull_reach", o => o.PullReach), ("pull_impulse_Ns", o => o.ImpulseNs),
        ("wrist_torque_rms_Nm", o => o.WristRmsNm), ("mean_slack_m", o => o.SlackM), ("nose_down_load_N", o => o.NoseDownN),
        ("nose_dip_m", o => o.NoseDipM),
        ("slack_share", o => o.SlackShare), ("loaded_tip_travel_m", o => o.LoadedTipM),
    ];

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
                    row[keys[k]].Set(values[k]);
                }

                WritePoint(row, point);
            }
        }
    }

    internal static void WritePoint(SepWriter.Row row, RhythmPoint point)
    {
        row["rhythm_per_s"].Set(Digits(point.PerS));
        row["pattern"].Set(point.Pattern is null ? "failed" : SummaryKeys.Name(point.Pattern.Value));
        row["lock_share"].Set(Digits(point.LockShare));
        foreach ((string name, Func<StationaryOutcome, double> value) in Figures)
        {
            (double low, double high) = point.Spread(value);
            row[name].Set(Digits(point.Median(value)));
            row[name + "_low"].Set(Digits(low));
            row[name + "_high"].Set(Digits(high));
        }
    }

    // A figure that does not exist is an empty field.
    private static string Digits(double value) => double.IsFinite(value) ? value.ToString("G9", CultureInfo.InvariantCulture) : "";
}
