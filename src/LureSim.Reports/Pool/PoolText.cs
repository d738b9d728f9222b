using System.Text;
using LureSim.Model.Pool;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Doubt;

namespace LureSim.Reports.Pool;

/// <summary>A pool test for the terminal.</summary>
public static class PoolText
{
    private const double SlantedDeg = 12.0;

    /// <summary>Title, table, a sentence or two per measurement, bands, warnings and caution, each line ended by a line feed.</summary>
    /// <param name="title">Title of the scenario.</param>
    /// <param name="pool">Pool test.</param>
    /// <param name="notes">Warnings and guesses.</param>
    /// <param name="doubt">What the guesses may change, or null.</param>
    public static string Build(string title, PoolResult pool, RunNotes notes, DoubtStudy? doubt = null)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(title).Append("\n\n").Append(Table(pool.Tow, notes.Shown)).Append('\n');
        foreach (string sentence in Sentences(pool, notes.Shown))
        {
            text.AppendWrapped(sentence);
        }

        text.Append('\n');
        text.Append(doubt is null ? "" : DoubtText.Build(doubt, notes.Shown));
        text.AppendNotes(notes, "pool.json");
        return text.ToString();
    }

    private static string Table(IReadOnlyList<TowRow> rows, Shown shown)
    {
        double widest = rows.Max(t => Math.Abs(t.NoseHeightM));
        ShownUnit up = shown.Unit(ShownQuantity.Size, widest), pull = shown.Unit(ShownQuantity.Pull, rows.Max(t => t.PullN));
        string[] Cells(TowRow t) =>
        [
            shown.OneFamily.Speed(t.SpeedMS), Trade.Fixed(t.SheerDeg, 1), Trade.Fixed(t.TrimDeg, 1), Trade.Fixed(t.RollDeg, 0), Trade.Fixed(up.Of(t.NoseHeightM), up.Places(widest)),
            pull.Digits(t.PullN), PoolFigures.Name(t.Course) + (t.IsSettled ? "" : ", not settled"),
        ];
        return ColumnTable.Text(["tow", "sheer, deg", "trim, deg", "roll, deg", $"nose up by, {up.Name}", $"pull, {pull.Name}", "it"], [.. rows.Select(Cells)]);
    }

    private static IEnumerable<string> Sentences(PoolResult p, Shown shown) =>
    [
        Rest(p),
        $"Towed on {shown.Distance(p.Task.TowLineM)} of line it {PoolWords.Tow(p, shown)}. {TowTells(p)}",
        $"Pushed along its axis at {shown.Speed(p.Task.PushSpeedMS)} with {Trade.Fixed(p.Task.PushDriftRad * 180.0 / Math.PI, 1)} deg of drift it {PoolWords.Push(p, shown)}.{PushTells(p)}",
        Coast(p.Coast, shown),
        Roll(p),
        $"Pressed down by {shown.Size(Math.Abs(p.Heave.Release))} and let go it {PoolWords.Swing(p.Heave, "bobs")}; with the nose pressed down it {PoolWords.Swing(p.Pitch, "nods")}. "
            + "The periods tell how much water moves along, the losses how much goes into waves (lure.nose_damping).",
    ];

    // Beyond this trim it is the water under the slanted hull that keeps it straight, whatever is shed at the stern.
    private static string TowTells(PoolResult p) => Math.Abs(p.RestTrimDeg) <= SlantedDeg
        ? "A level hull that sheds too little side force at its stern sheers; this tow is what would settle lure.stern_shedding."
        : "A hull that floats as slanted as this mostly comes straight whatever it sheds at its stern; a level one would tell more.";

    private static string PushTells(PoolResult p) => Math.Abs(p.RestTrimDeg) > SlantedDeg ? ""
        : p.Push.TurnM is null ? " With less side force shed at its stern or less drag at its tail it would."
        : " The way hardly depends on the speed and tells the same guess without a line.";

    private static string Rest(PoolResult p) => Math.Abs(p.RestHeelDeg) > 0.5
        ? $"At rest it lies over at {Trade.Fixed(p.RestHeelDeg, 0)} deg of heel, {Trade.Fixed(p.RestTrimDeg, 1)} deg of trim: everything below starts from there."
        : $"At rest it floats at {Trade.Fixed(p.RestTrimDeg, 1)} deg of trim (nose up counts positive).";

    private static string Coast(CoastResult c, Shown shown) => c.HalfM is double half
        ? $"Kept straight it loses half of its speed in {shown.Size(half)}. That is its drag along the way, hooks with it."
        : "Kept straight it does not lose half of its speed in two minutes: nothing here brakes it along its axis.";

    private static string Roll(PoolResult p) => p.Roll.Trace.Count == 0
        ? "It stands too steep for a roll: turned about its long axis nothing turns it back."
        : $"Let go at {Trade.Fixed(Math.Abs(p.Roll.Release), 0)} deg of heel it {PoolWords.Swing(p.Roll, "rolls")}. The period tells how low its weight sits, the loss what damps a roll.";
}
