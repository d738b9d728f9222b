using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Measured;

namespace LureSim.Scenarios.Reading;

/// <summary>A list of tables from a small CSV file: the header names column and unit, for example <c>x_mm,breadth_mm,height_mm</c>. Semicolons, tabs and decimal commas of spreadsheets are read as well.</summary>
internal static class CsvList
{
    /// <summary>Reads the file into a list node, every cell as a text with its unit; null where it cannot be opened.</summary>
    public static Node? Read(KeySpec key, Node file, string directory, FaultList faults)
    {
        var list = new Node(NodeKind.List, file.Place);
        string path = Path.Combine(directory, file.Text);
        if (FileText.TryRead(path, out string text) is string failure)
        {
            faults.Add(file.Place, key.Path, $"\"{file.Text}\": {failure}");
            return null;
        }

        var source = new Source(file.Text, file.Place.Source.Order);
        string[] lines = [.. text.Split('\n').Select(l => l.TrimEnd('\r'))];
        char mark = CsvCells.MarkOf(lines);
        List<(string Name, string Unit)>? header = Header(key, CsvCells.Split(lines[0], mark), new(source, 1, 1), faults);
        for (int i = 1; i < lines.Length && header is not null; i++)
        {
            string[] cells = CsvCells.Split(lines[i], mark);
            if (Array.Exists(cells, c => c.Length > 0))
            {
                list.Items.Add(Row(cells, header, new(source, i + 1, 1), key, faults));
            }
        }

        return list;
    }

    private static List<(string Name, string Unit)>? Header(KeySpec key, string[] cells, Place place, FaultList faults)
    {
        var columns = new List<(string, string)>();
        foreach (string cell in cells)
        {
            // x_mm, x (mm), x [mm] and "x mm" are the same column.
            int bar = cell.LastIndexOfAny(['_', '(', '[', ' ']);
            string name = bar < 0 ? cell : cell[..bar].Trim();
            if (bar < 0 || EntryReader.Column(key, name) is null)
            {
                faults.Add(place, key.Path, $"column \"{cell}\" is not known; a header names column and unit, for example {Example(key)}");
                return null;
            }

            columns.Add((name, cell[(bar + 1)..].Trim(' ', ')', ']')));
        }

        return columns;
    }

    private static string Example(KeySpec key) => string.Join(',', key.Items.Where(i => i.Required).Select(i => $"{i.Name}_{i.Unit}"));

    private static Node Row(string[] cells, List<(string Name, string Unit)> header, Place place, KeySpec key, FaultList faults)
    {
        var row = new Node(NodeKind.Table, place);
        if (cells.Length != header.Count)
        {
            faults.Add(place, key.Path, $"{cells.Length} cells in a row; the header has {header.Count} (cells apart by commas have a point as decimal mark)");
        }

        for (int i = 0; i < Math.Min(cells.Length, header.Count); i++)
        {
            row.Add(header[i].Name, place, new Node(NodeKind.Text, place, $"{cells[i]} {header[i].Unit}"));
        }

        return row;
    }
}
