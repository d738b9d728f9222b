using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Reading;

/// <summary>A list of tables from a small CSV file: the header names column and unit, for example <c>x_mm,breadth_mm,height_mm</c>.</summary>
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
        string[] lines = text.Split('\n');
        List<(string Name, string Unit)>? header = Header(key, lines[0], new(source, 1, 1), faults);
        for (int i = 1; i < lines.Length && header is not null; i++)
        {
            if (lines[i].Trim().Length > 0)
            {
                list.Items.Add(Row(lines[i], header, new(source, i + 1, 1), key, faults));
            }
        }

        return list;
    }

    private static List<(string Name, string Unit)>? Header(KeySpec key, string line, Place place, FaultList faults)
    {
        var columns = new List<(string, string)>();
        foreach (string cell in line.Trim().Split(','))
        {
            int bar = cell.LastIndexOf('_');
            string name = bar < 0 ? cell.Trim() : cell[..bar].Trim();
            if (bar < 0 || EntryReader.Column(key, name) is null)
            {
                faults.Add(place, key.Path, $"column \"{cell.Trim()}\" is not known; a header names column and unit, for example x_mm,breadth_mm,height_mm");
                return null;
            }

            columns.Add((name, cell[(bar + 1)..].Trim()));
        }

        return columns;
    }

    private static Node Row(string line, List<(string Name, string Unit)> header, Place place, KeySpec key, FaultList faults)
    {
        var row = new Node(NodeKind.Table, place);
        string[] cells = line.Trim().Split(',');
        if (cells.Length != header.Count)
        {
            faults.Add(place, key.Path, $"{cells.Length} cells in a row; the header has {header.Count} (the decimal mark is a point)");
        }

        for (int i = 0; i < Math.Min(cells.Length, header.Count); i++)
        {
            string text = $"{cells[i].Trim()} {header[i].Unit}";
            row.Add(header[i].Name, place, new Node(NodeKind.Text, place, text));
        }

        return row;
    }
}
