using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Cast;
using LureSim.Studies.Compare;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Compare;

public sealed class CompareStudyTests
{
    // Coarse and short: what is asked is whether one pair sees another, not what is true of lures.
    private static readonly ComparePlan Plan = new(
        1, CastDraws: 4, WalkDraws: 3, WindowDraws: 1, Rhythms: new CadencePlan(1.2, 2.4, 3, 1, 0.5, Run: new StationaryPlan(3.0, 6, 20)));

    private static readonly string Small = Shipped.File("small-walker.toml");

    [Fact]
    public void A_set_up_against_itself_differs_in_nothing_and_nothing_is_noticed()
    {
        CompareResult result = Run("7 ft,7 ft");
        Assert.Equal(MeasureSets.Measures.Count, result.Differences.Count);
        Assert.All(result.Differences.Where(d => d.Verdict != CompareVerdict.Unknown), d => Assert.Equal((0.0, CompareVerdict.WillNot), (d.Value, d.Verdict)));

        // Only rows that exist in neither cannot be told.
        Assert.All(result.Differences.Where(d => d.Verdict == CompareVerdict.Unknown), d => Assert.Equal((double.NaN, double.NaN), (d.AValue, d.BValue)));
        Assert.DoesNotContain(result.Differences, d => d.Verdict == CompareVerdict.Unknown && d.Measure == CastMeasures.Distance);
    }

    [Fact]
    public void A_pair_is_the_same_to_the_last_bit_alone_and_in_a_list_of_ten()
    {
        CompareResult alone = Run("6 ft 6 in,7 ft 4 in"), among = Run("6 ft,6 ft 3 in,6 ft 6 in,6 ft 9 in,7 ft,7 ft 2 in,7 ft 4 in,7 ft 8 in,8 ft,8 ft 6 in");
        Difference[] one = [.. alone.Differences], other = [.. among.Between(2, 6)];
        Assert.Equal(one.Length, other.Length);
        Assert.All(one.Zip(other), p => Assert.Equal(p.First with { A = 2, B = 6 }, p.Second));
        Assert.Contains(one, d => d.Verdict == CompareVerdict.Will);
    }

    [Fact]
    public void The_order_of_the_list_changes_signs_only()
    {
        CompareResult there = Run("6 ft 6 in,7 ft 4 in"), back = Run("7 ft 4 in,6 ft 6 in");
        Assert.All(there.Differences.Zip(back.Differences), p =>
        {
            Assert.Equal((p.First.Value, p.First.Share, p.First.Verdict), (-p.Second.Value, p.Second.Share, p.Second.Verdict));
            Assert.Equal((p.First.AValue, p.First.BValue), (p.Second.BValue, p.Second.AValue));
        });
        Assert.Equal(Labels(there), Labels(back));
        static string[] Labels(CompareResult r) => [.. Advice.Of(r).Takes.Select(t => r.SetUps[t.SetUp].Label)];
    }

    [Fact]
    public void Distance_is_that_of_cast_across_bit_for_bit()
    {
        CompareResult result = Run("6 ft 6 in,7 ft 4 in", [new CastMeasures()]);
        CastVariantList casts = Ladder(Plan.CastDraws);
        IReadOnlyList<CastCase> cases = CastAcrossStudy.Run(casts.All, Plan.CastDraws, 0, null, CancellationToken.None);
        CastPair pair = CastPair.Between(cases.Single(c => c.Label == "6 ft 6 in"), cases.Single(c => c.Label == "7 ft 4 in"))!;
        Difference d = Assert.Single(result.Differences);
        Assert.Equal((pair.GainM, pair.GainsM, pair.Share), (d.Value, d.Band, d.Share));
        Assert.Equal(pair.Verdict.ToString(), d.Verdict.ToString());
        Assert.InRange(result.BendTestShare(d), 0.0, 2.0);
    }

    [Fact]
    public void Ratios_of_the_reel_change_the_handle_and_nothing_else()
    {
        // Six draws of one mind are the fewest that a sign test believes.
        CompareResult result = CompareStudy.Run(Read(["reel.ratio=6.3", "reel.ratio=8.1"], ""), Plan with { WalkDraws = 6 }, null, CancellationToken.None);
        Difference[] changed = [.. result.Between(1, 2).Where(d => d.Value != 0.0 && double.IsFinite(d.Value))];
        Assert.Equal(
            [RetrieveMeasures.TakeUp, RetrieveMeasures.Turns, RetrieveMeasures.SlackBudget],
            changed.Select(d => d.Measure));
        Difference takeUp = changed.Single(d => d.Measure == RetrieveMeasures.TakeUp);
        Assert.Equal(8.1 / 6.3, takeUp.BValue / takeUp.AValue, 1e-9);
        Assert.Equal(CompareVerdict.Will, takeUp.Verdict);
        Assert.Equal(AdviceKind.Nothing, Advice.Of(result).Kind);
    }

    [Fact]
    public void A_stop_ends_it()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CompareStudy.Run(Read([], "6 ft 6 in,7 ft"), Plan, null, stop.Token));
    }

    private static CompareResult Run(string rods, IReadOnlyList<IMeasureSet>? sets = null) => CompareStudy.Run(Read([], rods), Plan, null, CancellationToken.None, sets);

    private static IReadOnlyList<CompareSetUp> Read(string[] with, string rods)
    {
        var faults = new List<ScenarioFault>();
        IReadOnlyList<CompareSetUp> setUps = new SetUpReader([], faults).Read([Small], with, rods);
        Assert.Empty(faults);
        return setUps;
    }

    private static CastVariantList Ladder(int draws)
    {
        var faults = new List<ScenarioFault>();
        ScenarioSource source = ScenarioSource.Load(Small, Activities.Cast);
        ScenarioResult scenario = source.Resolve();
        var axes = new LureSim.Studies.Across.AcrossReader(new LureSim.Studies.Figures.CastSource(), scenario, faults).Read(["rod-length"]);
        CastVariantList list = new CastVariants(source, [], scenario, draws).Make(axes, null, faults);
        Assert.Empty(faults);
        return list;
    }
}
