using System.Text;

namespace LureSim.Reports.Kit.Text;

/// <summary>A table with a header: the first and the last column to the left, the others to the right.</summary>
internal static class ColumnTable
{
    /// <summary>The table, a line each; short rows leave their last cells empty.</summary>
    /// <param name="header">Names of the columns.</param>
    /// <param name="rows">Cells.</param>
    public static string Text(string[] header, IReadOnlyList<string[]> rows)
    {
        ArgumentNullException.ThrowIfNull(header);
        ArgumentNullException.ThrowIfNull(rows);
        int[] widths = [.. header.Select((h, k) => Math.Max(h.Length, rows.Max(r => k < r.Length ? r[k].Length : 0)))];
        var text = new StringBuilder();
        foreach (string[] row in rows.Prepend(header))
        {
            for (int k = 0; k < row.Length; k++)
            {
                bool left = k == 0 || k == header.Length - 1;
                text.Append("  ").Append(left ? row[k].PadRight(widths[k]) : row[k].PadLeft(widths[k]));
            }

            while (text[^1] == ' ')
            {
                text.Length--;
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
