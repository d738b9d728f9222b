using LureSim.Model.Bend;
using LureSim.Scenarios.Reading;

namespace LureSim.Scenarios.Measured;

/// <summary>A bend test as somebody wrote it down.</summary>
/// <param name="Name">Name of the rod, or of the file.</param>
/// <param name="Test">The test.</param>
/// <param name="RowPlaces">Where each of its rows stands.</param>
/// <param name="Units">Units that it is written in.</param>
/// <param name="IsClampGuessed">True where nobody said how much of the rod was held.</param>
public sealed record BendFile(string Name, BendTest Test, IReadOnlyList<string> RowPlaces, UnitFamily Units, bool IsClampGuessed)
{
    private const int MostRows = 100;

    /// <summary>
    /// Reads a CSV file of lines <c>what, value</c> (length, clamped, mass, balance, bounces, ...) and rows <c>weight, drop, angle</c>, in any
    /// order; a header may name the columns and their units, and hold any of the other words too.
    /// </summary>
    /// <param name="path">File.</param>
    /// <param name="faults">Gets every fault.</param>
    /// <returns>Null where there are faults.</returns>
    public static BendFile? Read(string path, List<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        if (FileText.TryRead(path, out string text) is string failure)
        {
            faults.Add(new(path, "", failure));
            return null;
        }

        int before = faults.Count;
        (string Line, int Number)[] lines = CsvCells.Lines(text);
        char mark = CsvCells.MarkOf(lines.Select(l => l.Line));
        var reader = new BendReader(path, faults);
        foreach ((string line, int number) in lines)
        {
            reader.Read(CsvCells.Split(line, mark), number);
            if (reader.Rows > MostRows)
            {
                faults.Add(new($"{path}({number})", "", FormattableString.Invariant($"more than {MostRows} rows of weights; a test needs three to ten")));
                return null;
            }
        }

        return faults.Count > before ? null : reader.Finish();
    }
}
