using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Board;

namespace LureSim.Reports.Board;

/// <summary>A weighed board for the terminal and for programs.</summary>
public static class BoardText
{
    private const int MostNear = 4;

    /// <summary>Title, table, questions, each line ended by a line feed.</summary>
    /// <param name="report">Board.</param>
    /// <param name="shown">How quantities are told.</param>
    public static string Build(BoardReport report, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(shown);
        BoardPiece piece = report.Piece;
        var text = new StringBuilder();
        text.AppendWrapped($"Board of {Measures(shown, piece.Length.Si, piece.Width.Si, piece.Thickness.Si)}, {shown.Mass(piece.Mass.Si)}");
        double carries = BoardReport.FreshKgM3 - report.DensityKgM3, sea = BoardReport.SeaKgM3 - report.DensityKgM3;
        string floats = carries > 0.0 ? $"yes, with {Trade.Digits(100.0 * report.WetShare)} % of it under water" : sea > 0.0 ? "in the sea, not in fresh water" : "no, it sinks";
        text.Append('\n').Append(AlignedTable.Text(
        [
            new("density", $"{Grams(report.DensityKgM3)} g/cm3", $"{Trade.Digits(report.DensityKgM3)} kg/m3"),
            shown.Row("volume", ShownQuantity.Volume, piece.VolumeM3),
            new("floats", floats, ""),
            new("carries", $"{Trade.Digits(carries / 1000.0)} g", "more than itself, each cm3, in fresh water"),
            new("density like", string.Join(", ", report.Near.Take(MostNear).Select(Range)), ""),
            new("in a scenario", Key(report), ""),
            new("to check", shown.Mass(report.OffcutKg), $"is what a piece of {Measures(shown, [.. report.Offcut])} should weigh"),
        ]));
        foreach (string sentence in Doubts(report))
        {
            text.Append('\n');
            text.AppendWrapped(sentence);
        }

        foreach (BoardQuestion q in report.Questions)
        {
            text.AppendWrapped($"- {q.Slip.Question} It would be {Grams(q.DensityKgM3)} g/cm3.", "  ");
        }

        return text.ToString();
    }

    /// <summary>The report as JSON.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="report">Board.</param>
    public static void WriteJson(Stream stream, BoardReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        JsonText.Object(stream, json =>
        {
            json.WriteNumber("density_kg_m3", report.DensityKgM3);
            json.WriteNumber("volume_m3", report.Piece.VolumeM3);
            json.WriteNumber("mass_kg", report.Piece.Mass.Si);
            json.WriteBoolean("floats_in_fresh_water", report.DensityKgM3 < BoardReport.FreshKgM3);
            json.WriteBoolean("floats_in_the_sea", report.DensityKgM3 < BoardReport.SeaKgM3);
            json.WriteString("in_a_scenario", Key(report));
            json.WriteStartArray("materials");
            foreach (Choice m in report.Near)
            {
                json.WriteStartObject();
                json.WriteString("material", m.Name);
                json.WriteNumber("low_kg_m3", m.Low);
                json.WriteNumber("high_kg_m3", m.High);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("offcut_length_m", report.Offcut[0]);
            json.WriteNumber("offcut_width_m", report.Offcut[1]);
            json.WriteNumber("offcut_thickness_m", report.Offcut[2]);
            json.WriteNumber("offcut_mass_kg", report.OffcutKg);
            json.WriteBoolean("is_doubtful", report.IsDoubtful);
            json.WriteStartArray("questions");
            foreach (BoardQuestion q in report.Questions)
            {
                json.WriteStartObject();
                json.WriteNumber("factor", q.Slip.Factor);
                json.WriteNumber("density_kg_m3", q.DensityKgM3);
                json.WriteString("question", q.Slip.Question);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
    }

    private static IEnumerable<string> Doubts(BoardReport report)
    {
        if (!report.IsDoubtful)
        {
            yield break;
        }

        string what = report.Material is Choice named
            ? $"{named.Name} is {Grams(named.Low)} to {Grams(named.High)} g/cm3; this piece is {Trade.Digits(Math.Max(report.DensityKgM3 / named.Value, named.Value / report.DensityKgM3))} times as "
                + $"{(report.DensityKgM3 > named.Value ? "heavy" : "light")} as usual."
            : report.DensityKgM3 < 500.0 ? "No wood is so light, though foam may be." : "No wood is so heavy, though a filled plastic may be.";
        yield return report.Questions.Count > 0
            ? $"{what} One of these would explain it:"
            : $"{what} No usual slip explains it: measure and weigh again, or check the piece named above.";
    }

    private static string Key(BoardReport report) => $"lure.density = \"{report.DensityKgM3.ToString("F0", CultureInfo.InvariantCulture)} kg/m3\"";

    private static string Range(Choice m) => $"{m.Name} ({Grams(m.Low)} to {Grams(m.High)})";

    private static string Grams(double kgM3) => (kgM3 / 1000.0).ToString(kgM3 < 10_000.0 ? "0.000" : "0.0", CultureInfo.InvariantCulture);

    private static string Measures(Shown shown, params double[] m)
    {
        string[] trade = [.. shown.Units(ShownQuantity.Size, m.Max()).Select(u => $"{string.Join(" x ", m.Select(u.Digits))} {u.Name}")];
        return trade.Length == 1 ? trade[0] : $"{trade[0]} ({trade[1]})";
    }
}
