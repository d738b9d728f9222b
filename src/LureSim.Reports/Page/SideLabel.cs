using OxyPlot;

namespace LureSim.Reports.Page;

/// <summary>A name in a row beside a drawing, with the places that it names.</summary>
/// <param name="Name">Name.</param>
/// <param name="Short">The same where there is little room.</param>
/// <param name="At">Places, px, at least one.</param>
internal sealed record SideLabel(string Name, string Short, IReadOnlyList<ScreenPoint> At)
{
    // Of a letter, and between names, px: wider than any of the style sheet's fonts at its size.
    private const double Letter = 8.2, Gap = 10;

    /// <summary>Names of a row, in the order of their places and none on another: neighbours of one name share it; names are short where long ones have no room.</summary>
    /// <param name="labels">Labels.</param>
    /// <param name="left">Left end of the row, px.</param>
    /// <param name="right">Right end of the row, px.</param>
    /// <returns>Each with its text and the middle of it, px.</returns>
    public static IReadOnlyList<(SideLabel Label, string Text, double X)> Place(IReadOnlyList<SideLabel> labels, double left, double right)
    {
        SideLabel[] row = Joined([.. labels.OrderBy(l => l.MiddleX)]);
        Func<SideLabel, string> text = Room(row, l => l.Name) <= right - left ? l => l.Name : l => l.Short;
        if (Room(row, text) > right - left)
        {
            row = [.. row.GroupBy(l => l.Name).Select(g => new SideLabel(g.Key, g.First().Short, [.. g.SelectMany(l => l.At)])).OrderBy(l => l.MiddleX)];
        }

        double[] half = [.. row.Select(l => 0.5 * Letter * text(l).Length)], x = [.. row.Select(l => l.MiddleX)];
        for (int i = 0; i < x.Length; i++)
        {
            x[i] = Math.Max(x[i], half[i] + (i == 0 ? left : x[i - 1] + half[i - 1] + Gap));
        }

        for (int i = x.Length - 1; i >= 0; i--)
        {
            x[i] = Math.Min(x[i], (i == x.Length - 1 ? right : x[i + 1] - half[i + 1] - Gap) - half[i]);
        }

        return [.. row.Select((l, i) => (l, text(l), x[i]))];
    }

    private double MiddleX => At.Average(p => p.X);

    private static double Room(SideLabel[] row, Func<SideLabel, string> text) => row.Sum(l => (Letter * text(l).Length) + Gap) - Gap;

    private static SideLabel[] Joined(SideLabel[] sorted)
    {
        var row = new List<SideLabel>();
        foreach (SideLabel label in sorted)
        {
            if (row.Count > 0 && row[^1].Name == label.Name)
            {
                row[^1] = row[^1] with { At = [.. row[^1].At, .. label.At] };
            }
            else
            {
                row.Add(label);
            }
        }

        return [.. row];
    }
}
