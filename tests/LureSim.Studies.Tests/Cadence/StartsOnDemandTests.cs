using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

/// <summary>One start of a scanned rhythm comes first; more are run, two at a time, wherever the answer could depend on the start, until it is decided.</summary>
public sealed class StartsOnDemandTests
{
    private static readonly WalkStart[] Six = WalkStart.Spread(6);

    private static CadenceResult Run(Func<RetrieveTask, WalkPattern> lab, CadencePlan? plan = null) =>
        CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(CadencePerS: 2.2), plan ?? new CadencePlan(), new(1.0, 0.5, 4.0), (_, t) => MadeUp.Outcome(lab(t), 0.1 / t.CadencePerS)).Demand();

    private static int Starts(CadenceResult result, double perS) => result.Points.Single(p => p.PerS == perS).Outcomes.Count;

    // The edges at 1 and 2.8 are bisected between 0.9 and 1.03, 2.66 and 3.05.
    [Fact]
    public void Rhythms_away_from_changes_have_one_start_and_those_that_walk_at_an_edge_six()
    {
        CadenceResult result = Run(t => t.CadencePerS is > 1.0 and < 2.8 ? WalkPattern.Alternating : WalkPattern.Tracking);
        double[] scan = new CadencePlan().Scan();
        Assert.All(result.Points.Where(p => scan.Contains(p.PerS) && p.PerS != result.Best!.PerS), p => Assert.Single(p.Outcomes));
        Assert.Equal((6, 6), (Starts(result, 2.2), Starts(result, result.Best!.PerS)));
        RhythmPoint[] walking = [.. result.Points.Where(p => p.Walks)], other = [.. result.Points.Where(p => p.PerS < 1.0)];
        Assert.Equal((6, 6), (walking[0].Outcomes.Count, walking[^1].Outcomes.Count));

        // That it does not walk is decided by two of six.
        Assert.Equal(2, other[^1].Outcomes.Count);
    }

    [Fact]
    public void A_change_between_patterns_that_do_not_walk_asks_for_two_more_starts()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.0 ? WalkPattern.OneSided : WalkPattern.Tracking);
        Assert.Equal((1, 3, 3, 1), (Starts(result, 0.79), Starts(result, 0.9), Starts(result, 1.03), Starts(result, 1.18)));
    }

    // Neighbours of the scan start with the nose to different sides.
    [Fact]
    public void A_rhythm_whose_answer_depends_on_the_side_of_the_nose_is_marked()
    {
        Assert.True(Six[0].HeadingRad < 0.0 && Six[2].HeadingRad > 0.0);
        CadenceResult result = Run(t => t.StartHeadingRad > 0.0 ? WalkPattern.Alternating : WalkPattern.Tracking);
        Assert.Empty(result.Windows);
        Assert.All(result.Points, p => Assert.True(p.DependsOnStart && p.Outcomes.Count >= 3));
    }

    // At the rhythm that walks next to the edge only the last start dissents: five of six are enough, and it is marked.
    [Fact]
    public void A_dissenting_start_at_an_edge_is_seen_though_the_first_four_agree()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.3 || (t.CadencePerS < 1.4 && t.StartHeadingRad == Six[5].HeadingRad) ? WalkPattern.Tracking : WalkPattern.Alternating);
        RhythmPoint first = result.Points.First(p => p.Walks);
        Assert.Equal(1.3, first.PerS, 0.03);
        Assert.True(first.DependsOnStart && first.Outcomes.Count == 6);
    }

    // When the rest turns the word of a rhythm over, the edge is sought anew from there.
    [Fact]
    public void A_word_that_turns_over_moves_the_edge()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.1
            || (t.CadencePerS < 1.3 && t.StartHeadingRad != Six[0].HeadingRad && t.StartHeadingRad != Six[2].HeadingRad) ? WalkPattern.Tracking : WalkPattern.Alternating);
        Assert.Equal(1.3, Assert.Single(result.Windows).FromPerS, 0.03);
    }

    [Fact]
    public void The_outcomes_stand_in_the_order_of_the_starts()
    {
        WalkStart[] starts = WalkStart.Spread(6);
        RhythmPoint point = CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(CadencePerS: 2.2), new CadencePlan(), new(1.0, 0.5, 4.0), (_, t) => MadeUp.Outcome(
            t.StartHeadingRad == starts[0].HeadingRad ? WalkPattern.Tracking : WalkPattern.Alternating, t.StartHeadingRad)).Demand().Points[0];
        Assert.Equal(starts.Select(s => s.HeadingRad), point.Outcomes.Select(o => o.Summary!.GlideWidthM));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Few_starts_are_run_at_once(int count) =>
        Assert.All(Run(_ => WalkPattern.Tracking, new CadencePlan(Starts: count)).Points, p => Assert.Equal(count, p.Outcomes.Count));
}
