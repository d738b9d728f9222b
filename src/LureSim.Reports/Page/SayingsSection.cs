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

        var numbers = new SayingNumbers(page.Shown);
        return StorySections.Section(
            "sayings", "What people say, put to the test",
            StorySections.Paragraphs([$"Each saying was tried in several places, with {report.Plan.Draws} draws of everything that is guessed; the set-ups are the program's own, not the one above. The number is what the compared change does, with the band of 8 in 10 draws."]),
            HtmlTable.Of(["saying", "verdict", "number", "pages that say so"], [.. report.Results.Select(r => (Markup[])
            [
                r.Saying.Says, HtmlTable.Cell(SayingWords.Verdict(r.Verdict), Places(r)), Markup.Of(Markup.Tag("b", "", numbers.Overall(r)), Markup.Tag("small", "", SayingWords.Figure(r.Trials[0].Trial))), SayingWords.Told(r.Saying.Told),
            ])]),
            StorySections.Paragraphs([$"Rule: {SayingWords.Rule}. `luresim sayings` tells places, reasons and bands."]));
    }

    // Where it holds, where its places differ.
    private static string Places(SayingResult result) => result.Verdict != SayingVerdict.HoldsOnlyWhen ? ""
        : string.Join("; ", result.Trials.Where(t => t.Word == PlaceWord.True).Select(SayingWords.Name));
}
