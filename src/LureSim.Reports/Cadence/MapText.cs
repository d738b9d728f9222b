using System.Text;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Across;
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
        text.Append(result.Title).Append("\nmap of ").Append(Name(result.XKey)).Append(" and ").Append(Name(result.YKey)).Append("\n\n");
        text.AppendWrapped(Headline(result, notes.Shown) + ".");
        text.Append('\n');
        foreach (int row in Rows(result))
        {
            text.AppendWrapped($"  {Name(result.YKey)} {KeyUnit.Text(notes.Shown, result.YKey.Unit, result.Y[row])}: {Spans(result, row, notes.Shown)}");
        }

        text.Append('\n');
        string? failed = result.Grid.Samples.Select(s => s.Point?.Failure).FirstOrDefault(f => f is not null);
        text.AppendNotes(notes.After(failed is null ? null : "a run failed: " + failed));
        return text.ToString();
    }

    /// <summary>How much walks, and where it glides widest.</summary>
    /// <param name="result">Map.</param>
    /// <param name="shown">Units.</param>
    public static string Headline(MapResult result, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(shown);
        double share = 100.0 * result.Share(WalkPattern.Alternating);
        return result.Widest is MapSample widest
            ? $"{Trade.Fixed(share, 0)} % of this map walks; it glides widest, {shown.Size(widest.Point!.Median(o => o.GlideWidthM))}, at "
                + $"{KeyUnit.Text(shown, result.XKey.Unit, result.X[widest.I])} and {KeyUnit.Text(shown, result.YKey.Unit, result.Y[widest.J])}"
            : "Nothing on this map walks";
    }

    private static IEnumerable<int> Rows(MapResult result)
    {
        int last = result.Y.Count - 1, step = Math.Max(1, last / Math.Max(1, result.Plan.CellsY / 2));
        return Enumerable.Range(0, (last / step) + 1).Select(k => k * step);
    }

    private static string Spans(MapResult result, int row, Shown shown)
    {
        var spans = result.Walking(row);
        return spans.Count == 0 ? "never walks" : "walks at " + string.Join(" and ", spans.Select(s => KeyUnit.Range(shown, result.XKey.Unit, s.From, s.To)));
    }

    private static string Name(AcrossKey key) => key.Title.Split(',')[0];
}
