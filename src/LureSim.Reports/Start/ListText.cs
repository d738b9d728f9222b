using System.Globalization;
using System.Text;
using System.Text.Json;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Parts;

namespace LureSim.Reports.Start;

/// <summary>Names that can be typed, for the terminal and for programs.</summary>
public static class ListText
{
    /// <summary>One list.</summary>
    /// <param name="list">List.</param>
    public static string Build(NameList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var text = new StringBuilder();
        foreach (ListTable table in list.Tables())
        {
            text.AppendWrapped(table.Heading);
            text.Append(ColumnTable.Text([.. table.Columns.Select(c => c.Header)], [.. table.Cells.Select(r => r.Select(c => c.Text).ToArray())]));
            text.Append('\n');
        }

        text.Append(CultureInfo.InvariantCulture, $"Typed as: {list.Typed}\n");
        if (PartLibrary.In(list.Name).FirstOrDefault() is Part part)
        {
            text.Append(CultureInfo.InvariantCulture, $"In a scenario: {part.Folder.Table} = \"{part.Name}\"\n");
            text.Append(CultureInfo.InvariantCulture, $"The file of a part, to copy and change: luresim list {part.Folder.Name}/{part.Name} > my-{part.Folder.Table}.toml\n");
            text.Append(CultureInfo.InvariantCulture, $"All lie in {PartLibrary.Place}/{part.Folder.Name}\n");
        }

        return text.ToString();
    }

    /// <summary>What lists there are.</summary>
    public static string Overview()
    {
        var text = new StringBuilder("What can be named; luresim list NAME shows one:\n");
        text.Append(AlignedTable.Text(NameLists.All.Select(l => new TableRow(l.Name, l.Meaning, ""))));
        text.AppendWrapped($"Parts are plain text files in {PartLibrary.Place}: copy one, change it, and name your copy (luresim list rods/medium-heavy-fast > my-rod.toml).");
        return text.ToString();
    }

    /// <summary>Lists as JSON, one array per table.</summary>
    /// <param name="stream">Receives UTF-8.</param>
    /// <param name="lists">Lists.</param>
    public static void WriteJson(Stream stream, IReadOnlyList<NameList> lists)
    {
        ArgumentNullException.ThrowIfNull(lists);
        JsonText.Object(stream, json =>
        {
            foreach (ListTable table in lists.SelectMany(l => l.Tables()))
            {
                json.WriteStartArray(table.Key);
                foreach (IReadOnlyList<ListCell> row in table.Cells)
                {
                    Write(json, table.Columns, row);
                }

                json.WriteEndArray();
            }
        });
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyList<ListColumn> columns, IReadOnlyList<ListCell> row)
    {
        json.WriteStartObject();
        for (int i = 0; i < row.Count; i++)
        {
            if (row[i].Si is double si)
            {
                json.WriteNumber(columns[i].Key, si);
            }
            else if (row[i].Text == "-")
            {
                json.WriteNull(columns[i].Key);
            }
            else
            {
                json.WriteString(columns[i].Key, row[i].Text);
            }
        }

        json.WriteEndObject();
    }
}
