using LureSim.Scenarios;
using LureSim.Studies.Compare;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Compare;

public sealed class AdviceTests
{
    private static readonly CompareMeasure Far = new("far_m", "m", Better.More, null), Heavy = new("heavy_kg", "kg", Better.Less, null), Taste = new("taste", "", Better.Neither, null);

    [Fact]
    public void Nothing_noticed_leaves_the_choice_to_the_price()
    {
        Advice advice = Of([1.0, 1.0], [2.0, 2.0], [1.0, 9.0]);
        Assert.Equal(AdviceKind.Nothing, advice.Kind);
        Assert.Empty(advice.GivenUp);
        Assert.Equal(Taste, Assert.Single(advice.Taste).Measure);
        Assert.Equal([Far, Heavy], advice.Unnoticed);
    }

    [Fact]
    public void What_wins_somewhere_and_loses_nowhere_is_taken()
    {
        Advice advice = Of([1.0, 9.0], [2.0, 2.0], [1.0, 1.0]);
        Assert.Equal((AdviceKind.Clear, 1), (advice.Kind, advice.Leader));
        Assert.Equal(Far, Assert.Single(advice.Takes[0].For).Measure);
    }

    [Fact]
    public void Wins_on_both_sides_are_a_trade_and_the_first_row_leads()
    {
        Advice advice = Of([1.0, 9.0], [2.0, 9.0], [1.0, 1.0]);
        Assert.Equal((AdviceKind.Trade, 1), (advice.Kind, advice.Leader));
        Assert.Equal([1, 0], advice.Takes.Select(t => t.SetUp));
        Assert.Equal(Heavy, Assert.Single(advice.GivenUp).Measure);
    }

    [Fact]
    public void Of_three_the_one_that_is_worse_nowhere_is_taken()
    {
        Advice advice = Of([1.0, 9.0, 9.0], [2.0, 2.0, 9.0], [1.0, 1.0, 1.0]);
        Assert.Equal((AdviceKind.Clear, 1), (advice.Kind, advice.Leader));
        Assert.Equal(2, advice.Takes[0].For.Count);
    }

    // Each row with the same draws in every set-up, so that every difference is noticed or none.
    private static Advice Of(double[] far, double[] heavy, double[] taste)
    {
        IReadOnlyList<MeasureColumn> Columns(double[] values) => [.. values.Select(v => new MeasureColumn(MeasureSample.Of(v), [.. Enumerable.Repeat(MeasureSample.Of(v), 8)]))];
        var faults = new List<ScenarioFault>();
        CompareSetUp one = new SetUpReader([], faults).Read([Shipped.File("small-walker.toml")], ["reel.ratio=6.3"], "")[0];
        CompareSetUp[] setUps = [.. far.Select((_, i) => one with { Label = "rod " + i })];
        var measured = new Measured([Far, Heavy, Taste], [Columns(far), Columns(heavy), Columns(taste)], _ => new People(8, 1));
        Difference[] all = [.. from a in Enumerable.Range(0, far.Length) from b in Enumerable.Range(a + 1, far.Length - a - 1) from m in measured.Measures select measured.Between(m, a, b)];
        return Advice.Of(new(setUps, [measured], all, new ComparePlan()));
    }
}
