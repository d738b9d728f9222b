using System.Text.RegularExpressions;
using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Model.Retrieve;
using LureSim.Reports.Cadence;
using LureSim.Reports.Cast;
using LureSim.Reports.Cover;
using LureSim.Reports.Crawl;
using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Pool;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Strike;
using LureSim.Reports.Tests.Support;
using LureSim.Reports.Trim;
using LureSim.Studies.Cast;

namespace LureSim.Reports.Tests.Text;

/// <summary>Every text of the product in trade units, in metric ones and in both, stored beside this test to be read. LURESIM_ACCEPT=1 writes them anew.</summary>
public sealed partial class UnitsOfTextsTests
{
    private static readonly UnitChoice[] Choices = [UnitChoice.Trade, UnitChoice.Metric, UnitChoice.Both];

    private static readonly (string Name, Func<RunNotes, string> Build)[] Texts =
    [
        ("retrieve", n => RetrieveText.Build(MadeUpRetrieve.Result(), n)),
        ("retrieve_tow", n => RetrieveText.Build(Changed(WalkPattern.Tracking, s => s with { TowSpeedMS = 0.3, SheerDeg = 0.4, NoseDownLoadN = -0.02 }), n)),
        ("retrieve_dives", n => RetrieveText.Build(Changed(WalkPattern.Diving, s => s with { UnderShare = 0.3, DipM = 0.05, LineDragMeanN = 0.0004, NoseDownLoadN = -0.0001 }), n)),
        ("retrieve_nose", n => RetrieveText.Build(Changed(WalkPattern.Turning, s => s with { NoseDipM = 0.02 }), n)),
        ("trim", n => TrimText.Build("Made up", MadeUpTrim.Result(), n)),
        ("cover", n => CoverText.Build(MadeUpCover.Report(), n)),
        ("cover_hopeless", n => CoverText.Build(MadeUpCover.Hopeless(), n)),
        ("pool", n => PoolText.Build("Made up", MadeUpPool.Result(), n, MadeUpDoubt.Study())),
        ("pool_stiff", n => PoolText.Build("Made up", MadeUpPool.Stiff(), n)),
        ("strike", n => StrikeText.Build(MadeUpStrike.Report(), n, MadeUpDoubt.Study())),
        ("strike_empty", n => StrikeText.Build(MadeUpStrike.Empty(), n)),
        ("strike_unset", n => StrikeText.Build(MadeUpStrike.TooWeak(), n)),
        ("strike_shut", n => StrikeText.Build(MadeUpStrike.Strong(), n)),
        ("crawl", n => CrawlText.Build(MadeUpCrawl.Result(), n, MadeUpDoubt.Study())),
        ("crawl_late", n => CrawlText.Build(MadeUpCrawl.Late(), n)),
        ("crawl_stuck", n => CrawlText.Build(MadeUpCrawl.Stuck(), n)),
        ("cadence", n => CadenceText.Build(MadeUpCadence.Window(0.9, 3.0), n)),
        ("cadence_limit", n => CadenceText.Build(MadeUpCadence.Window(0.9, 3.0, new(0.5, 0.3, 0.8)), n)),
        ("cadence_across", n => AcrossText.Build(MadeUpCadence.Across(true, true), n)),
        ("cadence_map", n => MapText.Build(MadeUpCadence.Map(), n)),
        ("cast", n => CastText.Build(new(Remarked(MadeUpCast.Result(ReelKind.Revolving)), MadeUpCast.Brakes), n)),
        ("cast_fixed", n => CastText.Build(new(MadeUpCast.Result(ReelKind.Fixed), []), n, MadeUpDoubt.Study())),
        ("cast_across", n => CastAcrossText.Build(MadeUpCast.Across(), n, pairs: true)),
        ("cast_match", n => MatchText.Build(Match(), n, null)),
        ("cast_power", n => PowerTableText.Build(MadeUpCast.Powers(), n)),
        ("doubt", n => DoubtText.Build(MadeUpDoubt.Study(), n.Shown)),
    ];

    public static TheoryData<string> Names => [.. Texts.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_text_reads_as_reviewed_in_every_choice(string name) =>
        Assert.All(Choices, choice => Expected.Matches($"Units/{name}-{choice.ToString().ToLowerInvariant()}.txt", Text(name, choice)));

    [Theory]
    [MemberData(nameof(Names))]
    public void No_foreign_unit_stands_in_a_text(string name)
    {
        Assert.Empty(Found(MetricUnit(), Text(name, UnitChoice.Trade)));
        Assert.Empty(Found(TradeUnit(), Text(name, UnitChoice.Metric)));
        string both = Text(name, UnitChoice.Both);
        Assert.NotEmpty(Found(MetricUnit(), both));
        Assert.NotEmpty(Found(TradeUnit(), both));
    }

    // The test above must be able to fail.
    [Theory]
    [InlineData("it is 24 cm wide", 1, 0)]
    [InlineData("glide, cm  dip, mm", 2, 0)]
    [InlineData("pulls 1.1 oz (31 g)", 1, 1)]
    [InlineData("9.4 in wide", 0, 1)]
    [InlineData("2 in 97 runs of one in ten, 4 a second, 2.3 /s", 0, 0)]
    [InlineData("0.6 newton metres, 3 N m, 14 mN", 3, 0)]
    [InlineData("launch 45 mph, glide, in", 0, 2)]
    public void A_foreign_unit_is_found(string text, int metric, int trade) =>
        Assert.Equal((metric, trade), (Found(MetricUnit(), text).Length, Found(TradeUnit(), text).Length));

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_is_told_finer_than_it_is_known(string name) => Assert.All(Choices, choice =>
    {
        string text = Text(name, choice);
        Assert.DoesNotMatch(@"\d\.\d{3}", text);
        Assert.DoesNotMatch(@"(^|[ (])-0(\.0+)? ", text);
        Assert.DoesNotMatch(@"(^|[ (])0 (oz|lb|g|kg|N)\b", text);
        Assert.DoesNotContain("oz-force", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= Closing.Width && !line.EndsWith(' '), line));
    });

    private static string Text(string name, UnitChoice choice) =>
        Texts.Single(t => t.Name == name).Build(RunNotes.None with { Shown = new(choice) });

    // What differs between set-ups is called as it was typed.
    private static string[] Found(Regex unit, string text) => [.. unit.Matches(Typed().Replace(text, "typed")).Select(m => m.Value)];

    [GeneratedRegex(@"0\.\d\smm,\s(nylon|none)")]
    private static partial Regex Typed();

    private static RetrieveResult Changed(WalkPattern pattern, Func<RetrieveSummary, RetrieveSummary> change)
    {
        RetrieveResult result = MadeUpRetrieve.Result(pattern: pattern);
        return result with { Summary = change(result.Summary) };
    }

    private static CastResult Remarked(CastResult cast) => cast with
    {
        Remarks = CastRemarks.HitsWaterInSwing | CastRemarks.AboveBreakingLoad | CastRemarks.Backlash | CastRemarks.BendBeyondRod | CastRemarks.LineRunsOut | CastRemarks.StartRaised,
    };

    private static MatchReport Match() => new(
        "Made up", new(0.8, 0.1, 0.04, [new("a", 30.0, 0.78, 31.0), new("b", 34.0, 0.82, 33.0)]), 0.7, [new("lure.tumbling (0.2 to 1)", 0.6, double.NaN)]);

    [GeneratedRegex(@"(?<=(\d|[a-z],|glide)\s)(mm|cm|m|km|g|kg|N|mN|J|m/s|cm/s|km/h|cm3|newton\w*)(?![\w/])")]
    private static partial Regex MetricUnit();

    [GeneratedRegex(@"(?<=(\d|[a-z],|glide)\s)(ft|oz|lb|mph|ft/s|in/s|ft-lb|in3|in(?! \d| a | ten))(?![\w/-])")]
    private static partial Regex TradeUnit();
}
