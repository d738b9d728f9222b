using System.Globalization;
using LureSim.Model;
using nietras.SeparatedValues;

namespace LureSim.Reports.Retrieve;

/// <summary>Channels as a table: one column per channel under its unit-suffixed name, nine significant digits.</summary>
public static class SeriesCsv
{
    /// <summary>Writes the table; always a comma, a point and a line feed, whatever the machine's culture.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="series">Channels.</param>
    public static void Write(Stream stream, Series series)
    {
        using var text = new StreamWriter(stream, leaveOpen: true) { NewLine = "\n" };
        using SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture }).To(text);
        writer.Header.Add([.. series.Channels.Select(c => c.Name)]);
        ValueList<double>[] columns = [.. series.Channels.Select(c => c.Values)];
        Span<char> digits = stackalloc char[32];
        for (int i = 0; i < series.Count; i++)
        {
            using SepWriter.Row row = writer.NewRow();
            for (int c = 0; c < columns.Length; c++)
            {
                columns[c][i].TryFormat(digits, out int length, "G9", CultureInfo.InvariantCulture);
                row[c].Set(digits[..length]);
            }
        }
    }
}
