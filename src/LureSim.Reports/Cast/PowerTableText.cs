using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Cast;

/// <summary>Lures by rod power for the terminal.</summary>
public static class PowerTableText
{
    /// <summary>Title, table, sentences and caution.</summary>
    /// <param name="table">Lures by rod power.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(PowerTable table, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        double farthest = table.Cells.SelectMany(row => row).Where(c => c.Failure is null).Select(c => Math.Abs(c.DistanceMeanM)).DefaultIfEmpty(0.0).Max();
        ShownUnit unit = notes.Shown.Unit(ShownQuantity.Distance, farthest);
        text.Append(table.Title).Append($"\nmean distance by rod power and mass of the lure with hooks, {unit.Name}\n\n");
        text.Append(ColumnTable.Text(["lure", .. RodClass.All.Select(c => c.Name), ""], [.. table.LureKg.Select((kg, i) => Row(table, i, notes.Shown.Mass(kg), unit))])).Append('\n');
        foreach (string sentence in Sentences(table, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.AppendNotes(notes, "cast_power.json");
        return text.ToString();
    }

    private static string[] Row(PowerTable table, int row, string lure, ShownUnit unit)
    {
        int? best = table.Best(row);
        return
        [
            lure,
            .. table.Cells[row].Select((c, i) => c.Failure is not null ? "none" : $"{Trade.Fixed(unit.Of(c.DistanceMeanM), 1)}{(c.BendsTooFar ? "!" : i == best ? "*" : " ")}"),
        ];
    }

    private static IEnumerable<string> Sentences(PowerTable table, Shown shown)
    {
        yield return $"* casts farthest; ! bends by more than 65 % of its length (a guess), more than a rod of its power is made for, and is not recommended whatever it casts.";
        for (int i = 0; i < table.LureKg.Count; i++)
        {
            yield return Told(table, i, shown);
        }

        yield return "Mass of the rod goes with load^0.35, its thickness with load^0.2 (guesses). Ratings are common practice, without a source, and the loads of the classes are guesses. They are about the load that a rod bears, hook-setting and control; "
            + "distance hardly tells neighbouring powers apart, since the rod finishes half a period as the stroke ends over a wide range of stiffness.";
    }

    private static string Told(PowerTable table, int row, Shown shown)
    {
        string lure = shown.Mass(table.LureKg[row]);
        string rated = string.Join(", ", RodClass.All.Where(c => c.IsRatedFor(table.LureKg[row])).Select(c => c.Name));
        return (table.Best(row) is int best
            ? $"{lure}: {RodClass.All[best].Name} casts it farthest; within {Trade.Fixed(100.0 * PowerTable.AsGood, 0)} % {string.Join(", ", table.Good(row).Select(i => RodClass.All[i].Name))}."
            : $"{lure}: no rod here casts it without bending too far.") + (rated.Length > 0 ? $" Rated for it: {rated}." : " None is rated for it.");
    }
}
