using System.Text;

namespace LureSim.Reports.Kit.Text;

/// <summary>One figure for people: the trade's unit, then SI or a remark.</summary>
internal readonly record struct TableRow(string Name, string Trade, string Si);

/// <summary>Rows under each other as aligned plain text.</summary>
internal static class AlignedTable
{
    /// <summary>The rows, a line each.</summary>
    /// <param name="rows">Rows.</param>
    public static string Text(IEnumerable<TableRow> rows)
    {
        TableRow[] all = [.. rows];
        int name = all.Max(r => r.Name.Length) + 2, trade = all.Max(r => r.Trade.Length) + 2;
        var text = new StringBuilder();
        foreach (TableRow row in all)
        {
            text.Append("  ").Append(row.Name.PadRight(name)).Append(row.Trade.PadRight(trade)).Append(row.Si);
            while (text[^1] == ' ')
            {
                text.Length--;
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
