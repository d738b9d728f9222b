using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>The sections that tell what was computed: set-up, what the run did, why, rhythms, other tackle, the cast.</summary>
internal static class StorySections
{
    /// <summary>The set-up in plain words.</summary>
    public static Markup SetUp(PageContext page) => Section("setup", "The set-up", page.Each(c => Markup.Tag("dl", "facts", SetUpWords.Long(c.File, page.Shown).Select(f =>
        Markup.Of(Markup.Tag("dt", "", f.What), Markup.Tag("dd", "", Markup.Prose(f.Words)))))));

    /// <summary>What this run did.</summary>
    public static Markup Did(PageContext page) => Section("did", "What this run did", page.Each(c => c.Own.Result is RetrieveResult r
        ? Paragraphs([
            .. Stopped(c.Own),
            .. RetrieveStory.Sentences(r, page.Shown),
            .. c.SettlesOtherwise is string other ? [$"{Trade.Capital(other)}."] : Array.Empty<string>()])
        : Paragraphs([$"The model could not compute this retrieve: {c.Own.Failure}."])));

    /// <summary>Why it walks or not, with the numbers of the run.</summary>
    public static Markup Why(PageContext page) => Section("why", page.Result.Cases.All(c => WalkSteps.Walks(c)) ? "Why it walks" : "Why it walks, or not", page.Each(c => WalkSteps.Of(c, page.Shown)));

    /// <summary>Which rhythms walk.</summary>
    public static Markup Rhythms(PageContext page) => Section("rhythms", "Which rhythms walk", page.Each(c => c.Rhythms is null
        ? Paragraphs([page.Result.HasRhythms ? "A steady pull has no rhythm, or no run of the search reached its end." : "Rhythms were left out of this page (`--quick`); `luresim cadence` searches them."])
        : Markup.Of(
            Paragraphs(CadenceStory.Sentences(c.Rhythms, page.Shown)),
            RhythmDrawing.Both(c.Rhythms, page.Shown),
            Markup.Tag("p", "key", Markup.Prose($"Each rhythm was tried {page.Shown.Distance(c.Rhythms.Task.DistanceM)} away until its walk had settled, those near a change from several starts. Dots: glide to the side in a twitch, full where it walks. Bar, from slow to fast: {string.Join(", ", c.Rhythms.Bands().Select(b => PatternClasses.Name(b.Pattern)))}.")))));

    /// <summary>What line, leader and rod change.</summary>
    public static Markup Changes(PageContext page) => Section("changes", "What line, leader and rod change", page.Each(c => c.Changes.Count == 0
        ? Paragraphs(["A steady pull is not compared here; `luresim compare` does that."])
        : Markup.Of(
            Markup.Tag("p", "", Markup.Prose($"The same hand and rhythm, {Trade.Digits(c.Own.Result?.Task.CadencePerS ?? c.File.Here.Retrieve!.CadencePerS, 2)} twitches a second, one thing changed at a time, each run until its walk had settled. Another rhythm may suit another line better: `luresim cadence --across` shows that. Rods: mass goes with length, the same load rating.")),
            Markup.Of(c.Changes.GroupBy(x => x.Group).Select(g => Markup.Tag("div", "group",
                Markup.Tag("h4", "", ChangeWords.Name(g.Key)),
                Markup.Tag("p", "", Markup.Prose(ChangeWords.Sentence([.. g], page.Shown))),
                ChangeTable.Of([.. g], page.Shown)))))));

    /// <summary>The cast.</summary>
    public static Markup Cast(PageContext page) => Section("cast", "The cast", page.Each(c => c.Cast is null
        ? Paragraphs([$"No cast was computed: {c.CastFault ?? "the model gives none"}."])
        : Paragraphs(CastStory.Sentences(c.Cast, page.Shown))));

    /// <summary>A section with its heading.</summary>
    /// <param name="id">Id.</param>
    /// <param name="title">Heading.</param>
    /// <param name="inside">Content.</param>
    public static Markup Section(string id, string title, params IEnumerable<Markup> inside) => Markup.Tag(
        "section", [("id", id), ("class", "told-section"), ("aria-labelledby", $"{id}-title")], [Markup.Tag("h2", [("id", $"{id}-title")], title), Markup.Tag("div", "inside", inside)]);

    /// <summary>Sentences, a paragraph each.</summary>
    /// <param name="sentences">Sentences.</param>
    public static Markup Paragraphs(IEnumerable<string> sentences) => Markup.Of(sentences.Select(s => Markup.Tag("p", "", Markup.Prose(s))));

    private static string[] Stopped(PageRun run) => run.Failure is null ? [] : [$"The model stopped early: {run.Failure}. What follows is what it had until then."];
}
