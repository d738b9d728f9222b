using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Cadence;
using LureSim.Studies.Crawl;
using LureSim.Studies.Design;
using LureSim.Studies.Figures;
using LureSim.Studies.Pool;
using LureSim.Studies.Runs;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Tests.Figures;

/// <summary>
/// Which keys a command says it reads, against what it does: every key is changed a little, and the numbers change or do not. The set-up
/// has a soaked leader with a fixed knot and wind from the side, a drag that slips, a swing that
/// stops before the release, and a strong fish among plants, so that hardly any key lies idle.
/// </summary>
public sealed class KeysThatEnterTests
{
    private const string Text = """
        [air]
        wind = "3 m/s"
        wind_from = "40 deg"
        [rod]
        length = "7 ft"
        power = "medium-heavy"
        [reel]
        drag = "0.2 N"
        [line]
        material = "nylon"
        diameter = "0.30 mm"
        film = "wetted"
        [leader]
        material = "fluorocarbon"
        length = "0.5 m"
        diameter = "0.40 mm"
        knot = "fixed"
        film = "wetted"
        [lure]
        shape = "cigar"
        length = "115 mm"
        diameter = "21 mm"
        tail_bluntness = 3
        mass = "18 g"
        hooks = [{ size = "no. 2", x = "20 mm" }, { size = "no. 6", x = "-50 mm", z = "6 mm" }]
        [retrieve]
        duration = "4 s"
        warm_up = "0.48 s"
        slack = "4 cm"
        [solver]
        nodes = 10
        step = "1 ms"
        [cast]
        release = "0.25 s"
        effort = "full"
        [hands]
        stop_angle = "-20 deg"
        travel = "0.15 m"
        [pool]
        press = "2 mm"
        [cover]
        kind = "mat"
        opening = "1 m"
        [crawl]
        duration = "3 s"
        stroke = "25 cm"
        [strike]
        nodes = 10
        step = "1 ms"
        points = 1
        set_force = "3 N"
        [fish]
        pull = "25 N"
        """;

    // A word for people, the seed of draws, the name of a drawing, limits that only a remark compares with or that are not reached here, and packing that braid alone is sized by.
    private static readonly string[] Apart =
        ["title", "seed", "lure.outline", "angler.sustained_torque", "line.strength", "line.packing", "leader.packing", "retrieve.gather_fastest"];

    // What a strike of the wrists among single plants makes slip.
    private static readonly string[] Yielding = ["reel.drag=4 N", "cover.kind=sparse"];

    private static readonly ScenarioSource Source = ScenarioSource.FromText(Text);

    public static TheoryData<string, string> Commands() => new()
    {
        { "retrieve", "revolving" }, { "cast", "fixed" }, { "cast", "revolving" }, { "cadence", "revolving" },
        { "pool", "revolving" }, { "design", "revolving" }, { "crawl", "revolving" }, { "strike", "revolving" }, { "strike", "fixed" },
    };

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_key_enters_where_the_command_says_so_and_nowhere_else(string command, string reel)
    {
        IFigureSource figures = command switch
        {
            "retrieve" => new RetrieveSource(),
            "cast" => new CastSource(),
            "pool" => new PoolSource(),
            "design" => new DesignSource(),
            "strike" => new StrikeSource(),
            "crawl" => new CrawlSource(),
            _ => new CadenceSource(new CadencePlan(1.5, 1.6, ScanPoints: 3, Starts: 1, Run: new StationaryPlan(0.5, 4, 4))),
        };
        string[] set = command == "strike" ? ["reel.kind=" + reel, .. Yielding] : ["reel.kind=" + reel];
        ScenarioResult own = Source.Resolve(set);
        string before = Row(figures, own);
        var wrong = new List<string>();
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.Kind != QuantityKind.List && k.Path is not ("lure.tie" or "reel.kind") && !Apart.Contains(k.Path)))
        {
            bool says = figures.Reads(key, own);
            if (command == "crawl" && (key == LureBuildKeys.Build || LureFormKeys.OfShape.Contains(key)))
            {
                // Its mass is given and its belly lies where it lay, but the sum over the hull rounds the last bit of the mass another way.
                continue;
            }

            if ((command == "cadence" && says) || (reel == "revolving" && command == "cast" && key.Table is not ("reel" or "cast")))
            {
                // What a cadence reads, a retrieve reads, and the other reel has shown the rest: too dear to show again.
                continue;
            }

            ScenarioResult changed = Source.Resolve([.. set, $"{key.Path}={Other(key, own)}"]);
            if (changed.IsValid && (Row(figures, changed) != before) != says)
            {
                wrong.Add($"{key.Path} {(says ? "is said to enter but does not" : "enters unsaid")}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    // The lure weighed above is of wood here, then moulded: what it is made of enters wherever its mass does.
    [Theory]
    [InlineData("retrieve", true)]
    [InlineData("pool", true)]
    [InlineData("crawl", false)]
    [InlineData("cast", false)]
    [InlineData("strike", false)]
    public void What_a_body_is_made_of_enters_where_its_mass_does(string command, bool byPlace)
    {
        IFigureSource figures = command switch
        {
            "retrieve" => new RetrieveSource(),
            "cast" => new CastSource(),
            "pool" => new PoolSource(),
            "crawl" => new CrawlSource(),
            _ => new StrikeSource(),
        };
        string[] yields = command == "strike" ? Yielding : [];
        foreach ((string[] made, KeySpec[] keys) in ((string[], KeySpec[])[])[
            (["lure.material=pine"], [LureBuildKeys.Material, LureBuildKeys.Density, LureBuildKeys.CoatThickness, LureBuildKeys.CoatDensity, LureKeys.Length, LureFormKeys.NoseBluntness]),
            (["lure.material=abs", "lure.wall=1.5 mm"], [LureBuildKeys.Wall, LureBuildKeys.Density]),
            (["lure.mass=18 g"], command == "crawl" ? [] : [LureBuildKeys.Build])])
        {
            ScenarioResult own = Source.Resolve([.. yields, .. made]);
            Assert.Empty(own.Errors);
            string before = Row(figures, own);
            foreach (KeySpec key in keys)
            {
                ScenarioResult changed = Source.Resolve([.. yields, .. made.Where(m => key != LureBuildKeys.Material), $"{key.Path}={Other(key, own)}"]);
                Assert.Empty(changed.Errors);
                Assert.Equal(figures.Reads(key, own), Row(figures, changed) != before);
                Assert.Equal(key != LureBuildKeys.Build || byPlace, figures.Reads(key, own));
            }
        }
    }

    // A fish that does nothing has no thrust, a hook that does not yield no mass, plants that are not there no hold.
    [Theory]
    [InlineData("fish.way=comes")]
    [InlineData("fish.way=stays")]
    [InlineData("fish.way=fast")]
    [InlineData("cover.kind=open")]
    [InlineData("cover.line_turn=0 rad/m")]
    public void Of_fish_and_plants_that_enters_a_strike_which_is_there(string set)
    {
        var strike = new StrikeSource();
        ScenarioResult own = Source.Resolve([.. Yielding, set]);
        string before = Row(strike, own);
        foreach (KeySpec key in ScenarioSchema.Keys.Where(k => k.Table is "fish" or "cover" || k.Path is "lure.mass"))
        {
            ScenarioResult changed = Source.Resolve([.. Yielding, set, $"{key.Path}={Other(key, own)}"]);
            Assert.True(changed.IsValid && (Row(strike, changed) != before) == strike.Reads(key, own), $"{set}, {key.Path}");
        }
    }

    [Fact]
    public void Plants_enter_a_retrieve_where_they_lie_under_its_line()
    {
        var retrieve = new RetrieveSource();
        Assert.True(retrieve.Reads(CoverKeys.LineDrag, Source.Resolve([])));
        Assert.False(retrieve.Reads(CoverKeys.LineDrag, Source.Resolve(["cover.kind=open"])));
        Assert.True(retrieve.Reads(CoverKeys.LineOver, Source.Resolve(["cover.kind=open"])));
    }

    [Fact]
    public void A_drag_of_the_usual_strength_enters_but_no_guess_of_it_is_drawn_and_its_spool_does_not_turn()
    {
        foreach (IFigureSource figures in (IFigureSource[])[new RetrieveSource(), new CadenceSource(new CadencePlan())])
        {
            ScenarioResult slips = Source.Resolve([]), holds = Source.Resolve(["reel.drag=25 N"]);
            Assert.True(figures.Reads(ReelKeys.Drag, slips) && figures.Draws(ReelKeys.Drag, slips) && figures.Reads(SpoolKeys.SpoolInertia, slips));
            Assert.True(figures.Reads(ReelKeys.Drag, holds) && !figures.Draws(ReelKeys.Drag, holds) && !figures.Reads(SpoolKeys.SpoolInertia, holds));
            Assert.True(figures.Reads(ReelKeys.Kind, slips) && !figures.Reads(ReelKeys.Kind, holds) && !figures.Reads(SpoolKeys.Brake, slips));
        }
    }

    [Fact]
    public void A_steady_take_up_reads_its_speed_and_no_length_per_twitch()
    {
        var retrieve = new RetrieveSource();
        bool Reads(KeySpec key, string mode) => retrieve.Reads(key, Source.Resolve(["retrieve.take_up=" + mode]));
        Assert.True(Reads(RetrieveKeys.TakeUpSpeed, "steady"));
        Assert.False(Reads(RetrieveKeys.TakeUpSpeed, "gather"));
        Assert.True(Reads(RetrieveKeys.TakeUpPerTwitch, "per_twitch"));
        Assert.True(retrieve.Reads(RetrieveKeys.TakeUpSpeed, Source.Resolve(["retrieve.stroke=0 cm"])));
    }

    private static string Row(IFigureSource figures, ScenarioResult scenario)
    {
        FigureRow row = figures.Run(scenario, CancellationToken.None);
        return row.Failure ?? string.Join(' ', [.. row.Words, .. row.Numbers.Select(n => n.ToString("R", CultureInfo.InvariantCulture))]);
    }

    /// <summary>Another allowed value: a tenth more, or a tenth less where that is too much; another word.</summary>
    private static string Other(KeySpec key, ScenarioResult scenario)
    {
        double own = scenario.Effective().Values.FirstOrDefault(v => v.Key == key)?.Si ?? double.NaN;
        if (key.Kind == QuantityKind.Choice)
        {
            return key.Choices.First(c => c.Value != own).Name;
        }

        if (key.Kind == QuantityKind.Flag)
        {
            return "true";
        }

        if (key == PoolKeys.Speeds)
        {
            return "0.2, 0.6 m/s";
        }

        double start = double.IsNaN(own) || own == 0.0 ? (0.7 * key.Low) + (0.3 * Math.Min(key.High, 10.0)) : 1.1 * own;
        double value = start <= key.High && start >= key.Low ? start : 0.9 * own;
        return key.Kind == QuantityKind.WholeNumber ? ((int)own + 1).ToString(CultureInfo.InvariantCulture) : Quantity.Format(value, key.Kind);
    }
}
