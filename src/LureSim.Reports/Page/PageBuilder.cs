using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Page;

namespace LureSim.Reports.Page;

/// <summary>
/// Builds one HTML document that needs nothing but itself. Everything in words, tables and drawings of rhythms is there without a script; the players
/// and sliders come with it. The same runs give the same bytes.
/// </summary>
public static class PageBuilder
{
    /// <summary>Where a served page finds its script and its style.</summary>
    public const string ScriptPath = "/page.js", StylePath = "/page.css";

    /// <summary>Builds it.</summary>
    /// <param name="result">Runs.</param>
    /// <param name="shown">Units.</param>
    /// <param name="command">The command that makes the page, as typed.</param>
    /// <param name="engine">The solver that the page carries.</param>
    /// <returns>UTF-8.</returns>
    public static byte[] Build(PageResult result, Shown shown, string command, PageEngine engine)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(engine);
        var page = new PageContext(result, shown, command);
        Markup html = Markup.Tag("html", [("lang", "en")], Head(page, engine), Markup.Tag("body", "", Markup.Tag("main", "", Body(page, engine)), Scripts(page, engine)));
        return Encoding.UTF8.GetBytes("<!doctype html>\n" + html.Html + "\n");
    }

    /// <summary>Builds the same for a server that computes.</summary>
    /// <param name="result">Runs.</param>
    /// <param name="shown">Units.</param>
    /// <param name="command">The command that serves the page, as typed.</param>
    public static ServedPage Serve(PageResult result, Shown shown, string command) =>
        new(Build(result, shown, command, PageEngine.Served), Encoding.UTF8.GetBytes(PageAssets.ServedScript), Encoding.UTF8.GetBytes(PageAssets.ServedStyle));

    private static Markup Head(PageContext page, PageEngine engine) => Markup.Tag(
        "head",
        "",
        Markup.Tag("meta", [("charset", "utf-8")]),
        engine.IsServed ? default : Markup.Tag("meta", [("http-equiv", "Content-Security-Policy"), ("content", PagePolicy.Of(PageAssets.Script, PageAssets.Style))]),
        Markup.Tag("meta", [("name", "viewport"), ("content", "width=device-width, initial-scale=1")]),
        Markup.Tag("title", "", string.Join(" | ", page.Result.Cases.Select(PageContext.Title))),
        Markup.Tag("link", [("rel", "icon"), ("href", "data:,")]),
        engine.IsServed ? Markup.Tag("link", [("rel", "stylesheet"), ("href", StylePath)]) : Markup.Raw("style", [], PageAssets.Style));

    private static Markup[] Body(PageContext page, PageEngine engine) =>
    [
        Markup.Tag("header", "", Markup.Tag("h1", "", Headline(page)), Lede(page)),
        Players(page, engine),
        Sliders(page, engine),
        Studies(engine),
        StorySections.SetUp(page),
        StorySections.Did(page),
        StorySections.Why(page),
        StorySections.Rhythms(page),
        StorySections.Changes(page),
        FloatSection.Of(page),
        StorySections.Cast(page),
        StrikeSection.Of(page),
        SayingsSection.Of(page),
        NumberTable.Section(page),
        LastSections.Limits(page),
        LastSections.Care(),
        LastSections.Guesses(page),
        LastSections.Glossary(),
        LastSections.Command(page, engine),
    ];

    private static Markup Headline(PageContext page) => Markup.Of(page.Result.Cases.SelectMany((c, i) => (Markup[])[i > 0 ? Markup.Text(" and ") : default, Markup.Name(PageContext.Title(c))]));

    private static Markup Lede(PageContext page) => Markup.Of(page.Result.Cases.Select(c => Markup.Tag(
        "p", "lede", page.IsMany ? Markup.Of(Markup.Tag("b", "", Markup.Name(PageContext.Title(c))), Markup.Tag("br", "")) : default, Markup.Prose(WalkSteps.InShort(c)))));

    private static Markup Players(PageContext page, PageEngine engine) => Markup.Of(
        Wide("walk", "The retrieve, played",
            Markup.Tag("div", [("id", "player"), ("class", "player")], Markup.Tag("p", "needs-script", "The moving picture is drawn by a script. Everything else on this page can be read without it.")),
            Markup.Tag("div", [("id", "stills"), ("class", "stills")])),
        page.Result.Runs.Count < 2 && !engine.Computes ? default : Markup.Tag("section", [("id", "two"), ("aria-labelledby", "two-title"), ("hidden", "")],
            Markup.Tag("h2", [("id", "two-title")], "Two runs in step"),
            Markup.Tag("div", [("id", "pair"), ("class", "pair")])));

    private static Markup Sliders(PageContext page, PageEngine engine) => page.Result.Cases[0].File.Here.Retrieve!.IsTow ? default : Wide("try", "Try it: change something",
        Markup.Tag("div", [("id", "sliders"), ("class", "sliders")], Markup.Tag("p", "needs-script", Markup.Prose(engine.Computes
            ? "The sliders need a script; without it, `luresim retrieve` computes the same."
            : "This page was made without the solver inside: it plays what was computed. To try other values, run `luresim retrieve` with `--set`."))));

    // Over the whole width of the page.
    private static Markup Wide(string id, string title, params IEnumerable<Markup> inside) =>
        Markup.Tag("section", [("id", id), ("aria-labelledby", $"{id}-title")], [Markup.Tag("h2", [("id", $"{id}-title")], title), .. inside]);

    private static Markup Studies(PageEngine engine) => !engine.IsServed ? default : Wide("whole", "Whole studies",
        Markup.Tag("p", "", "The program itself, with the values at which the sliders stand. A study uses every core and takes seconds to minutes; a newer one ends the one before."),
        Markup.Tag("div", [("id", "studies"), ("class", "studies")]));

    private static Markup Scripts(PageContext page, PageEngine engine) => Markup.Of(
        Markup.Json("data", PageData.Of(page, engine.Computes)),
        Markup.Of(engine.Parts.Select(p => Markup.Raw("script", [("type", "text/plain"), ("id", EngineParts.IdStart + p.Name)], p.Base64))),
        engine.IsServed ? Markup.Tag("script", [("type", "module"), ("src", ScriptPath)]) : Markup.Raw("script", [("type", "module")], PageAssets.Script));
}
