using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Model.Crawl;
using LureSim.Model.Landing;
using LureSim.Model.Pool;
using LureSim.Model.Retrieve;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;
using LureSim.Studies.Crawl;
using LureSim.Studies.Design;
using LureSim.Studies.Figures;
using LureSim.Studies.Pool;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Tests.Figures;

/// <summary>docs/figures.md is written from the lists of figures and from what the commands say they read. LURESIM_WRITE_DOCS=1 rewrites it.</summary>
public sealed class FigureDocumentTests
{
    [Fact]
    public void The_page_holds_every_figure_and_every_key_that_does_not_enter()
    {
        string page = Page();
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(Path_(), page);
        }

        Assert.Equal(page, File.ReadAllText(Path_()));
    }

    [Fact]
    public void Every_figure_has_a_name_of_its_own_with_words_and_a_unit()
    {
        Check(RetrieveFigures.All);
        Check(CastFigures.All);
        Check(CadenceFigures.All);
        Check(PoolFigures.All);
        Check(DesignFigures.All);
        Check(CrawlFigures.All);
        Check(StrikeFigures.All);
        Check(LandingFigures.All);

        static void Check<T>(IReadOnlyList<Figure<T>> figures)
        {
            Assert.Equal(figures.Count, figures.Select(f => f.Key).Distinct().Count());
            Assert.All(figures, f => Assert.Matches("^[a-z][a-z0-9_]*[a-zA-Z]*$", f.Key));
            Assert.All(figures, f => Assert.True(f.Label.Length is > 2 and < 30 && f.Meaning.Length > 3, f.Key));
        }
    }

    private static string Page()
    {
        var text = new StringBuilder("""
            # Figures and keys of the commands

            Written from the program's own lists (`LURESIM_WRITE_DOCS=1 dotnet test tests/LureSim.Studies.Tests -c Release`); a test compares. Names end in their unit and are the same in JSON, CSV, sweeps and bands.

            """).Append('\n');
        List(text, "retrieve", RetrieveFigures.All);
        List(text, "cadence", CadenceFigures.All);
        List(text, "cast", CastFigures.All);
        List(text, "strike", StrikeFigures.All);
        List(text, "strike", LandingFigures.All, ": holding and landing");
        List(text, "pool", PoolFigures.All);
        List(text, "design", DesignFigures.All);
        List(text, "crawl", CrawlFigures.All);
        text.Append("## Keys that do not enter\n\nSet by `--set` they are named in a note; in `--across` they are refused; in `--vary` a note says that rows will be equal. A test changes every key and compares.\n\n");
        foreach ((string title, IFigureSource figures, string[] set) in Sources())
        {
            ScenarioResult scenario = ScenarioSource.FromText(Least).Resolve(set);
            IEnumerable<string> keys = ScenarioSchema.Keys.Where(k => !figures.Reads(k, scenario)).Select(k => $"`{k.Path}`");
            text.Append(CultureInfo.InvariantCulture, $"- **{title}**: {string.Join(", ", keys)}\n");
        }

        return text.ToString().ReplaceLineEndings("\n");
    }

    private static (string Title, IFigureSource Figures, string[] Set)[] Sources() =>
    [
        ("retrieve", new RetrieveSource(), []), ("cadence", new CadenceSource(new CadencePlan()), []),
        ("cast, revolving spool", new CastSource(), []), ("cast, fixed spool", new CastSource(), ["reel.kind=fixed"]),
        ("strike", new StrikeSource(), []),
        ("pool", new PoolSource(), []), ("design", new DesignSource(), []), ("crawl", new CrawlSource(), ["cover.kind=mat"]),
    ];

    private static void List<T>(StringBuilder text, string command, IReadOnlyList<Figure<T>> figures, string part = "")
    {
        text.Append(CultureInfo.InvariantCulture, $"## `{command}`{part}\n\n| figure | in words | meaning |\n|---|---|---|\n");
        foreach (Figure<T> figure in figures)
        {
            text.Append(CultureInfo.InvariantCulture, $"| `{figure.Key}` | {figure.Label} | {figure.Meaning} |\n");
        }

        text.Append('\n');
    }

    private const string Least = """
        [rod]
        length = "7 ft"
        power = "medium-heavy"
        [line]
        material = "braid"
        label = "50 lb"
        [lure]
        shape = "cigar"
        length = "115 mm"
        diameter = "21 mm"
        mass = "18 g"
        """;

    private static string Path_([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", "figures.md"));
}
