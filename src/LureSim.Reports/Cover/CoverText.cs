using System.Text;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Cover;

namespace LureSim.Reports.Cover;

/// <summary>Three covers for the terminal.</summary>
public static class CoverText
{
    private const string Unknown = "Nobody has published what sets or tears a point, what a rod bears, how plants hold, or how fast such fish swim: those are guesses with bands. "
        + "A verdict that hangs on a band says \"when\" and names the number.";

    private const string Care = "Care under load: braid cuts, so no turn of it about a hand; a hook or lure that lets go flies back at the face; wear glasses; a rod past its limit splinters.";

    /// <summary>Title, table, sentences cover by cover, warnings and cautions, each line ended by a line feed.</summary>
    /// <param name="report">Three covers.</param>
    /// <param name="notes">Warnings and guesses.</param>
    public static string Build(CoverReport report, RunNotes notes)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(notes);
        var text = new StringBuilder();
        text.Append(report.Title).Append("\n\n").Append(ColumnTable.Text(["", .. report.Cases.Select(c => CoverNames.Of(c.Kind)), ""], [.. Rows(report, notes.Shown)]));
        foreach (CoverCase cover in report.Cases)
        {
            var words = new CoverWords(cover, notes.Shown);
            text.Append('\n');
            text.AppendWrapped($"{CoverNames.Of(cover.Kind).ToUpperInvariant()}: {words.Verdict()}.");
            foreach (string sentence in words.Story().Concat(words.Changes()))
            {
                text.AppendWrapped(sentence, "  ");
            }
        }

        text.Append('\n');
        text.AppendWrapped(Unknown);
        text.AppendNotes(notes, "cover.json");
        text.AppendWrapped(Care);
        return text.ToString();
    }

    private static IEnumerable<string[]> Rows(CoverReport report, Shown shown)
    {
        CoverCase[] all = [.. report.Cases];
        string[] Row(string name, Func<CoverCase, string> cell) => [name, .. all.Select(cell)];
        string[] Pull(string name, Func<CoverCase, double> value)
        {
            ShownUnit unit = shown.Unit(ShownQuantity.Pull, all.Max(value));
            return Row($"{name}, {unit.Name}", c => unit.Digits(value(c)));
        }

        yield return Row("verdict", c => CoverNames.Of(c.Verdict));
        yield return Pull("pull on the hook", c => c.Own[CoverCriterion.Sets].Have.Value);
        yield return Pull("sets all points", c => c.Own[CoverCriterion.Sets].Need.Value);
        yield return Pull("least drag that sets", c => c.Window.InStrike.LowN ?? double.NaN);
        yield return Row("first to give", c => StrikeNames.Of(c.Own.Strike.Summary.FirstToGive.Place)[4..]);
        yield return Row("its reserve, times", c => Trade.Digits(c.Own.Strike.Summary.FirstToGive.Ratio, 1));
        yield return Pull("out of the plants, at the tip", c => c.Own[CoverCriterion.Drawn].Need.Value);
        yield return Pull("can be held there", c => c.Own[CoverCriterion.Drawn].Have.Value);
    }
}
