using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Quantities;

namespace LureSim.Reports.Page;

/// <summary>The sections that tell how far to trust a page: limits, guesses, cautions, words, the command.</summary>
internal static class LastSections
{
    private static readonly (string Word, string Meaning)[] Words =
    [
        ("walk", "the lure turns its nose to the other side with each twitch and slides off that way"),
        ("twitch", "a short pull of the rod tip, given back at once"),
        ("stroke", "how far the tip of a stiff rod would travel in a twitch; a bending rod moves its tip less, or later more"),
        ("rhythm, cadence", "twitches per second"),
        ("slack", "line that is out beyond the straight distance: unstretched line less the way from tip to lure"),
        ("tight, taut", "the line pulls at the nose, if only a little; slack: it does not"),
        ("glide", "the way to the side from one pull to the next"),
        ("swing", "how far the heading turns from side to side in a twitch"),
        ("heading", "where the nose points, seen from above"),
        ("pitch, roll, dip", "nose up or down; turned about its long axis; pulled under"),
        ("line tie", "where the line is fastened to the lure"),
        ("leader", "the last piece of another line before the lure"),
        ("braid, nylon, fluorocarbon", "plaited polyethylene; a single soft strand; a single dense strand that sinks once it is wet through the skin of the water"),
        ("wetted line", "line in the water, counted by the share of it that is wet: line under the surface in full, line that floats about half"),
        ("water's skin", "the surface film: it can carry a line that is heavier than water as long as the line is dry and is not drawn through"),
        ("towed", "the line pulls the nose straight, and the lure follows without turning"),
        ("on the spot", "it turns from side to side but hardly travels"),
        ("settled", "each pair of twitches looks like the pair before"),
    ];

    private static readonly string[] Cautions =
    [
        "Hooks are sharp, trebles most of all: look behind you before every cast, and keep people and pets clear of the swing.",
        "Stay far away from power lines; a rod and a wet line conduct.",
        "Braid under load cuts: do not wrap it around a hand, and do not pull a snag toward your face. Wear eye protection.",
        "Follow local rules. A model is no permission, and it is no measurement: try it where a mistake costs nothing.",
    ];

    /// <summary>What the page cannot tell.</summary>
    public static Markup Limits(PageContext page) => StorySections.Section("limits", "What this cannot tell you", StorySections.Paragraphs(
    [
        "This is a computation, not a measurement. Its equations are checked against published cases, but no measured track of a walking lure exists to compare with.",
        $"Some {page.Result.Cases.Max(c => c.Guesses.Count)} numbers behind each run are guesses, such as how fast a hand pulls and how much the hull drags. They are listed below with their ranges; near the edge of a rhythm window any of them may change the answer.",
        "The retrieve knows no waves, no plants and no fish, and its hands keep time like a clock. Wind is in it only where the file says so. Names and numbers of tackle are classes, not products.",
        .. page.Result.Cases.SelectMany(c => c.Notes).Distinct(StringComparer.Ordinal).Select(n => $"Note: {n}."),
    ]));

    /// <summary>The guesses with their ranges.</summary>
    public static Markup Guesses(PageContext page)
    {
        GuessedKey[] all = [.. page.Result.Cases.SelectMany(c => c.Guesses).Distinct()];
        return all.Length == 0 ? default : StorySections.Section("guesses", "The guesses and their ranges", HtmlTable.Of(
            ["guess", "used", "could be", "key in the file"],
            [.. all.Select(g => (Markup[])[g.Key.Words, One(g, g.Value, page.Shown), Range(g, page.Shown), Markup.Tag("code", "", g.Key.Path)])]));
    }

    /// <summary>Cautions, once.</summary>
    public static Markup Care() => StorySections.Section("care", "Take care", Markup.Tag("ul", "", Cautions.Select(c => Markup.Tag("li", "", c))));

    /// <summary>Words of the trade.</summary>
    public static Markup Glossary() => StorySections.Section("words", "Words", Markup.Tag("dl", "facts glossary", Words.Select(w => Markup.Of(Markup.Tag("dt", "", w.Word), Markup.Tag("dd", "", $"{w.Meaning}.")))));

    /// <summary>The command.</summary>
    /// <param name="page">Page.</param>
    /// <param name="engine">The solver that the page carries, with free software to be named.</param>
    public static Markup Command(PageContext page, PageEngine engine) => StorySections.Section("command", "Make this page again",
        Markup.Tag("p", "", "The same files and the same program give the same page, to the last byte."),
        Markup.Tag("pre", "", Markup.Tag("code", "", page.Command)),
        engine.Parts.Count == 0 ? default : Markup.Tag("p", "key", "The solver inside this page carries free software under the MIT licence: the .NET runtime, copyright (c) .NET Foundation and Contributors, and MathNet.Numerics, copyright Math.NET Project. The licence and all notices: docs/third-party-notices.md of LureSim."));

    private static string One(GuessedKey guess, double si, Shown shown) => GuessWords.Quantity(guess) is ShownQuantity q && shown.Tells(q, si)
        ? shown.OneFamily.Text(q, si)
        : Quantity.Show(si, guess.Key.Kind, guess.Key.Unit);

    private static string Range(GuessedKey guess, Shown shown) => GuessWords.Quantity(guess) is ShownQuantity q && shown.Tells(q, guess.Low, guess.High)
        ? shown.OneFamily.Range(q, guess.Low, guess.High)
        : $"{Quantity.Show(guess.Low, guess.Key.Kind, guess.Key.Unit)} to {Quantity.Show(guess.High, guess.Key.Kind, guess.Key.Unit)}";
}
