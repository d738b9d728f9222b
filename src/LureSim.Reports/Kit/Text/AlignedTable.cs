using System.Text;

namespace LureSim.Reports.Kit.Text;

/// <summary>One figure for people: its words, its value, then the value in the other units or a remark.</summary>
internal readonly record struct TableRow(string Name, string First, string Second);

/// <summary>Rows under each other as aligned plain text.</summary>
internal static class AlignedTable
{
    /// <summary>The rows, a line each.</summary>
    /// <param name="rows">Rows.</param>
    public static string Text(IEnumerable<TableRow> rows)
    {
        TableRow[] all = [.. rows];
        int name = all.Max(r => r.Name.Length) + 2, first = all.Max(r => r.First.Length) + 2;
        var text = new StringBuilder();
        foreach (TableRow row in all)
        {
            text.Append("  ").Append(row.Name.PadRight(name)).Append(row.First.PadRight(first)).Append(row.Second);
            while (text[^1] == ' ')
            {
                text.Length--;
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
