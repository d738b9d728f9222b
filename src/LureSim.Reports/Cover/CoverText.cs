using System.Text;
using LureSim.Model.Cover;
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

    private const string NothingHelps = "To change: nothing that was tried helps by itself: drag, style, half the distance, heavier line, braid, rod, hook.";

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
            text.Append('\n');
            Cover(text, cover, notes.Shown);
        }

        text.Append("\nANYWHERE:\n");
        foreach (string sentence in new CoverWords(report.Cases[0], notes.Shown).Anywhere())
        {
            text.AppendWrapped(sentence, "  ");
        }

        text.Append('\n');
        text.AppendWrapped(Unknown);
        text.Append('\n');
        text.AppendWrapped(StrikeText.Caution);
        text.AppendNotes(notes, "cover.json");
        return text.ToString();
    }

    private static void Cover(StringBuilder text, CoverCase cover, Shown shown)
    {
        var words = new CoverWords(cover, shown);
        (IReadOnlyList<string> here, IReadOnlyList<string> anywhere) = words.Conditions();
        string[] when = [.. here, .. anywhere];
        text.AppendWrapped($"{CoverNames.Of(cover.Kind).ToUpperInvariant()}: {words.Verdict()}{(when.Length == 0 ? "." : "")}");
        for (int i = 0; i < when.Length; i++)
        {
            text.AppendWrapped($"- {when[i]}{(i == when.Length - 1 ? "." : ";")}", "  ");
        }

        foreach (string sentence in words.Story())
        {
            text.AppendWrapped(sentence, "  ");
        }

        if (cover.Verdict != CoverVerdict.Works)
        {
            string[] changes = [.. words.Changes()];
            text.AppendWrapped(changes.Length == 0 ? NothingHelps : "To change, best first, one at a time:", "  ");
            Array.ForEach(changes, c => text.AppendWrapped("- " + c, "  "));
        }
    }

    private static IEnumerable<string[]> Rows(CoverReport report, Shown shown)
    {
        CoverCase[] all = [.. report.Cases];
        string[] Row(string name, Func<CoverCase, string> cell) => [name, .. all.Select(cell)];
        string[] Some(string name, Func<CoverCase, double?> value)
        {
            ShownUnit unit = shown.Unit(ShownQuantity.Pull, all.Max(c => value(c) ?? 0.0));
            return Row($"{name}, {unit.Name}", c => value(c) is double n ? unit.Digits(n) : "none");
        }

        string[] Pull(string name, Func<CoverCase, double> value) => Some(name, c => value(c));

        yield return Row("verdict", c => c.Verdict == CoverVerdict.WorksWhen ? "with conditions" : CoverNames.Of(c.Verdict));
        yield return Pull("pull on the hook", c => c.Own[CoverCriterion.Sets].Have.Value);
        yield return Pull("sets all points", c => c.Own[CoverCriterion.Sets].Need.Value);
        yield return Some("least drag that sets", c => c.Window.InStrike.LowN);
        yield return Row("first to give", c => StrikeNames.Of(c.Own.Strike.Summary.FirstToGive.Place)[4..]);
        yield return Row("its reserve, times", c => Trade.Digits(c.Own.Strike.Summary.FirstToGive.Ratio, 1));
        yield return Some("out of the plants, at the tip", c => c.Kind == CoverKind.Open ? null : c.Own[CoverCriterion.Drawn].Need.Value);
        yield return Pull("can be held there", c => c.Own[CoverCriterion.Drawn].Have.Value);
    }
}
