using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Sayings;
using LureSim.Studies.Compare;
using LureSim.Studies.Crawl;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Pool;
using LureSim.Studies.Runs;
using LureSim.Studies.Sayings;
using LureSim.Studies.Strike;
using LureSim.Studies.Tests.Support;
using LureSim.Studies.Trim;

namespace LureSim.Studies.Tests.Sayings;

public sealed class SayingStudyTests
{
    private static readonly IFigureSource[] Commands =
        [new RetrieveSource(), new CadenceSource(ComparePlan.Coarse), new CastSource(), new StrikeSource(), new TrimSource(), new PoolSource(), new CrawlSource()];

    private static ReadySaying? Ready(string test, List<ScenarioFault> faults, params IFigureSource[] commands)
    {
        string head = $"""
            says = "Made up."
            why = "Made up."
            told = "common practice, no source"
            base = "{Shipped.File("small-walker.toml").Replace('\\', '/')}"

            """;
        Saying? saying = SayingReader.Read(head + test, "made-up.toml", ".", faults);
        return saying is null ? null : ReadySaying.Of(saying, commands.Length > 0 ? commands : Commands, faults);
    }

    private static TrialResult[] Run(string test, SayingPlan plan, params IFigureSource[] commands)
    {
        var faults = new List<ScenarioFault>();
        ReadySaying? ready = Ready(test, faults, commands);
        Assert.Empty(faults);
        return [.. SayingStudy.Run([ready!], plan, null, null, CancellationToken.None).Results[0].Trials];
    }

    // Reach is the line's diameter: a side with twice the diameter has twice of it in every draw.
    private const string Doubled = """
        [[test]]
        command = "made up"
        figure = "y_m"
        less = { name = "thin", set = ["line.diameter=0.2 mm"] }
        more = { name = "thick", set = ["line.diameter=0.4 mm"] }
        claim = "CLAIM"
        """;

    [Theory]
    [InlineData("more is higher", PlaceWord.True, 0.0)]
    [InlineData("more is lower", PlaceWord.False, 1.0)]
    [InlineData("no difference", PlaceWord.False, double.NaN)]
    public void What_follows_from_a_closed_form_comes_out(string claim, PlaceWord word, double opposite)
    {
        TrialResult trial = Assert.Single(Run(Doubled.Replace("CLAIM", claim, StringComparison.Ordinal), new(3), new MadeUpFigures(s => s.Line.DiameterM, LineKeys.Set.Diameter)));
        Assert.Equal((word, word), (trial.First, trial.Word));
        Assert.Equal(opposite, trial.OppositeChance);
        Assert.Equal(2e-4, trial.Number, 12);
        Assert.Equal((0, 0), (trial.Looks[0].Draws, trial.Looks[1].Draws));
    }

    [Fact]
    public void A_draw_is_the_same_on_both_sides_so_what_does_not_differ_cancels()
    {
        TrialResult trial = Assert.Single(Run("""
            [[test]]
            command = "made up"
            figure = "y_m"
            less = { name = "thin", set = ["line.diameter=0.2 mm"] }
            more = { name = "thick", set = ["line.diameter=0.4 mm"] }
            claim = "more is higher"
            by = "0.1 mm"
            """, new(5), new MadeUpFigures(s => s.Lure.CrossFlowCd + s.Line.DiameterM, LineKeys.Set.Diameter, LureKeys.CrossFlowCd)));
        Assert.True(trial.Values.Select(v => v[0]).Distinct().Count() == 5, "the guess is drawn");
        Assert.All(trial.Numbers, n => Assert.Equal(2e-4, n, 9));
    }

    [Fact]
    public void Any_number_of_threads_gives_the_same_bits_and_every_look_is_made()
    {
        const string test = """
            [[test]]
            command = "retrieve"
            figure = "width_m"
            starts = 2
            less = { name = "slow", set = ["retrieve.cadence=1.5 /s"] }
            more = { name = "fast", set = ["retrieve.cadence=3 /s"] }
            claim = "more is lower"
            """;
        TrialResult one = Assert.Single(Run(test, new(2, 1))), four = Assert.Single(Run(test, new(2, 4)));
        Assert.Equal(one.Values.SelectMany(v => v), four.Values.SelectMany(v => v));
        Assert.Equal(one.Looks, four.Looks);
        Assert.All(one.Looks, l => Assert.Equal(2, l.Draws));
        Assert.Equal(one.Moved, four.Moved);
    }

    // A weight moved back lowers the tail and all that hangs on it; what nobody asks for first (centres, shares) moves too and is not told.
    [Fact]
    public void What_moved_with_it_are_figures_that_people_ask_for_first()
    {
        TrialResult trial = Assert.Single(Run(
            """
            [[test]]
            command = "trim"
            figure = "tie_height_m"
            less = { name = "ahead", set = ["lure.ballast[1].x=0 mm"] }
            more = { name = "back", set = ["lure.ballast[1].x=-20 mm"] }
            claim = "more is higher"
            """,
            new(9, 1)));
        Assert.Contains("trim_deg", trial.Moved.Select(m => m.Figure));
        Assert.All(trial.Moved, m => Assert.Contains(m.Figure, trial.Trial.Figures.Headlines.Select(h => h.Key)));
    }

    [Fact]
    public void With_starts_a_walk_runs_until_it_has_settled_as_a_search_over_rhythm_counts_it()
    {
        const string test = """
            [[test]]
            command = "retrieve"
            figure = "width_m"
            starts = 1
            claim = "at least 1 cm"
            """;
        TrialResult trial = Assert.Single(Run(test, new(2)));
        var faults = new List<ScenarioFault>();
        ScenarioResult drawn = Ready(test, faults)!.Trials[0].Sides[0].DrawWhole(new GuessDesign(2, trial.Trial.Sides[0].Here.Setup!.Seed), new RetrieveSource(), 0)!;
        WalkStart start = WalkStart.Spread(1)[0];
        StationaryOutcome settled = StationaryOutcome.Of(drawn.Setup!, StationaryRun.Make(drawn.Retrieve!, drawn.Retrieve!.CadencePerS, start, new()), CancellationToken.None);
        Assert.Equal(settled.Summary!.WidthM, trial.Values[0][0], 9);
    }

    [Fact]
    public void A_stop_keeps_what_is_finished()
    {
        var faults = new List<ScenarioFault>();
        var figures = new MadeUpFigures(s => s.Line.DiameterM, LineKeys.Set.Diameter);
        ReadySaying ready = Ready(Doubled.Replace("CLAIM", "more is higher", StringComparison.Ordinal), faults, figures)!;
        using var stop = new CancellationTokenSource();
        SayingsReport report = SayingStudy.Run([ready, ready, ready], new(2), null, _ => stop.Cancel(), stop.Token);
        Assert.Equal((1, 3, false), (report.Results.Count, report.Asked, report.IsWhole));
    }

    [Theory]
    [InlineData("command = \"retriev\"\nfigure = \"width_m\"", "made-up.toml(6,11): test.command: \"retriev\" has no summary; did you mean retrieve?")]
    [InlineData("command = \"retrieve\"\nfigure = \"widht_m\"", "made-up.toml(7,10): test.figure: \"widht_m\" is no figure of retrieve; did you mean width_m?")]
    [InlineData("command = \"retrieve\"\nwords = [\"tracking\"]\ncolumn = \"patern\"", "test.column: \"patern\" is no column of words of retrieve")]
    [InlineData("command = \"retrieve\"\nfigure = \"width_m\"\nset = [\"retrieve.cadense=2 /s\"]", "made-up.toml(8,8): retrieve.cadense: unknown key")]
    [InlineData("command = \"retrieve\"\nfigure = \"width_m\"\nset = [\"retrieve.cadence=2\"]", "made-up.toml(8,8): retrieve.cadence: \"2\": it has no unit")]
    [InlineData("command = \"retrieve\"\nfigure = \"width_m\"\nset = [\"cast.effort=full\"]", "made-up.toml(8,8): cast.effort: does not enter retrieve")]
    [InlineData("command = \"retrieve\"\nfigure = \"width_m\"\nset = [\"retrieve.warm_up=1 s\"]\nstarts = 2", "made-up.toml(8,8): retrieve.warm_up: does not enter settled retrieve, so it can make no difference there")]
    public void Commands_figures_and_keys_must_exist_and_enter(string test, string told)
    {
        var faults = new List<ScenarioFault>();
        Assert.Null(Ready($"[[test]]\n{test}\nclaim = \"at most 10{(test.Contains("words", StringComparison.Ordinal) ? "" : " m")}\"", faults));
        Assert.Contains(told, Assert.Single(faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_shipped_saying_names_existing_commands_figures_words_and_keys()
    {
        string[] patterns = [.. Enum.GetValues<WalkPattern>().Select(RetrieveFigures.Name)];
        foreach (string name in SayingLibrary.Names)
        {
            var faults = new List<ScenarioFault>();
            Saying saying = SayingLibrary.Read(name, faults)!;
            Assert.NotNull(ReadySaying.Of(saying, Commands, faults));
            Assert.Empty(faults);
            Assert.All(saying.Tests.Where(t => t.IsOfWords && t.Command.Text == "retrieve").SelectMany(t => t.Words), w => Assert.Contains(w, patterns));
        }
    }
}
