using LureSim.Reports.Kit.Text;
using LureSim.Reports.Sayings;
using LureSim.Studies.Sayings;

namespace LureSim.Reports.Page;

/// <summary>Trade sayings and what came of putting them to the test.</summary>
internal static class SayingsSection
{
    /// <summary>The section; nothing where no saying was asked for.</summary>
    /// <param name="page">Page.</param>
    public static Markup Of(PageContext page)
    {
        if (page.Result.Sayings is not SayingsReport report)
        {
            return default;
        }

        SayingNumbers[] numbers = [.. (page.Shown.Choice == UnitChoice.Both ? [UnitChoice.Trade, UnitChoice.Metric] : new[] { page.Shown.Choice }).Select(c => new SayingNumbers(new(c)))];
        return StorySections.Section(
            "sayings", "What people say, put to the test",
            StorySections.Paragraphs([$"Each saying was tried in several places, with {report.Plan.Draws} draws of everything that is guessed; the set-ups are the program's own, not the one above. The number is what the compared change does, with the band of 8 in 10 draws."]),
            HtmlTable.Of(["saying", "verdict", "number", "pages that say so"], [.. report.Results.Select(r => (Markup[])
            [
                r.Saying.Says, HtmlTable.Cell(SayingWords.Verdict(r.Verdict), Places(r)), Number(r, numbers), SayingWords.Told(r.Saying.Told),
            ])]),
            StorySections.Paragraphs([$"Rule: {SayingWords.Rule}. `luresim sayings` tells places, reasons and bands."]));
    }

    // In each family of units, then what it is.
    private static Markup Number(SayingResult result, SayingNumbers[] numbers)
    {
        string[] told = [.. numbers.Select(n => n.Overall(result)).Distinct()];
        return Markup.Of(Markup.Tag("b", "", Markup.Prose(told[0])), Markup.Of(told.Skip(1).Append(SayingWords.Figure(result.Trials[0].Trial)).Select(t => Markup.Tag("small", "", Markup.Prose(t)))));
    }

    // Where it holds, where its places differ.
    private static string Places(SayingResult result) => result.Verdict != SayingVerdict.HoldsOnlyWhen ? ""
        : string.Join("; ", result.Trials.Where(t => t.Word == PlaceWord.True).Select(SayingWords.Name));
}
