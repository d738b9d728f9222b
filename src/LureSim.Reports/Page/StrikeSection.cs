using LureSim.Reports.Kit.Text;
using LureSim.Reports.Strike;
using LureSim.Studies.Page;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Page;

/// <summary>Strike and drag: what the pull on the hook does, which drag sets it and spares everything, in words, two drawings and a table.</summary>
internal static class StrikeSection
{
    /// <summary>The section; nothing where strikes were left out.</summary>
    /// <param name="page">Page.</param>
    public static Markup Of(PageContext page) => page.Result.Cases.All(c => c.Strike is null && c.StrikeFault is null)
        ? default
        : StorySections.Section("strike", "Strike and drag", page.Each(c => Told(c, page.Shown)));

    private static Markup Told(PageCase c, Shown shown) => c.Strike is not StrikeReport report
        ? StorySections.Paragraphs([$"No strike was computed: {c.StrikeFault ?? "the model gives none"}."])
        : Markup.Of(
            StorySections.Paragraphs(StrikeStory.Sentences(report.Strike, shown)),
            Drawn(PullDrawing.Both(report, shown), $"Dashed: the pull that sets {StrikeNames.Points(report.Strike.Setup.Hook.Points)}, {shown.Pull(report.Window.SettingN)}.{Grounds(report)}"),
            StorySections.Paragraphs(DragStory.Found(report, shown)),
            Drawn(DragDrawing.Both(report, shown), DragDrawing.Key(report, shown)),
            HtmlTable.Of(["", "in the strike"], [.. StrikeTable.Rows(report.Strike, shown).Select(r => (Markup[])[r.Name, HtmlTable.Cell(r.First, r.Second)])]),
            Key(GuessStory.Sentence(report, shown)));

    private static Markup Drawn(Markup figure, string words) => Markup.Tag("div", "drawn", figure, Key(words));

    private static string Grounds(StrikeReport report)
    {
        string guess = report.Guesses.SettingN is null ? "" : " The ground around it: the range of that guess, for nobody has measured it.";
        return guess + (StrikeForce.SlipSpans(report.Strike).Any() ? " Warm ground: the drag slips." : "");
    }

    private static Markup Key(string words) => Markup.Tag("p", "key", Markup.Prose(words));
}
