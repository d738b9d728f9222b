using System.Globalization;
using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Maps;

namespace LureSim.Reports.Cadence;

/// <summary>What a person reads at the terminal about a map.</summary>
public static class MapText
{
    /// <summary>Title, sentences, spans of some rows, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="result">Map.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(MapResult result, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(result.Title).Append("\nmap of ").Append(result.XKey.Title).Append(" and ").Append(result.YKey.Title).Append("\n\n");
        text.AppendWrapped(Headline(result) + ".");
        text.Append('\n');
        foreach (int row in Rows(result))
        {
            text.AppendWrapped($"  {result.YKey.Title.Split(',')[0]} {Number(result.Y[row])} {result.YKey.Unit}: {Spans(result, row)}");
        }

        text.Append('\n');
        string? failed = result.Grid.Samples.Select(s => s.Point?.Failure).FirstOrDefault(f => f is not null);
        text.AppendNotes(notes.After(failed is null ? null : "a run failed: " + failed));
        return text.ToString();
    }

    /// <summary>How much walks, and where it glides widest.</summary>
    /// <param name="result">Map.</param>
    public static string Headline(MapResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        double share = 100.0 * result.Share(WalkPattern.Alternating);
        return result.Widest is MapSample widest
            ? $"{Trade.Fixed(share, 0)} % of this map walks; it glides widest, {Trade.Digits(100.0 * widest.Point!.Median(o => o.GlideWidthM))} cm, at "
                + $"{Number(result.X[widest.I])} {result.XKey.Unit} and {Number(result.Y[widest.J])} {result.YKey.Unit}"
            : "Nothing on this map walks";
    }

    private static IEnumerable<int> Rows(MapResult result)
    {
        int last = result.Y.Count - 1, step = Math.Max(1, last / Math.Max(1, result.Plan.CellsY / 2));
        return Enumerable.Range(0, (last / step) + 1).Select(k => k * step);
    }

    private static string Spans(MapResult result, int row)
    {
        var spans = result.Walking(row);
        return spans.Count == 0
            ? "never walks"
            : "walks at " + string.Join(" and ", spans.Select(s => $"{Number(s.From)} to {Number(s.To)}")) + " " + result.XKey.Unit;
    }

    private static string Number(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
