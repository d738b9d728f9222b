using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

/// <summary>Two starts of a scanned rhythm come first; all six are run wherever the answer could depend on the start.</summary>
public sealed class StartsOnDemandTests
{
    private static readonly WalkStart[] Six = WalkStart.Spread(6);

    private static CadenceResult Run(Func<RetrieveTask, WalkPattern> lab, CadencePlan? plan = null) =>
        CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(CadencePerS: 2.2), plan ?? new CadencePlan(), new(1.0, 0.5, 4.0), (_, t) => MadeUp.Outcome(lab(t), 0.1 / t.CadencePerS)).Demand();

    private static int Starts(CadenceResult result, double perS) => result.Points.Single(p => p.PerS == perS).Outcomes.Count;

    // The scan has 0.9 and 1.03 on either side of the edge at 1, 2.66 and 3.05 of the one at 2.8.
    [Fact]
    public void Scanned_rhythms_away_from_changes_have_two_starts_and_all_others_six()
    {
        CadenceResult result = Run(t => t.CadencePerS is > 1.0 and < 2.8 ? WalkPattern.Alternating : WalkPattern.Tracking);
        double[] scan = new CadencePlan().Scan(), edges = [0.9, 1.03, 2.66, 3.05];
        Assert.All(result.Points, p => Assert.Equal(
            scan.Contains(p.PerS) && !edges.Contains(p.PerS) && p.PerS != result.Best!.PerS ? 2 : 6, p.Outcomes.Count));
        Assert.Contains(2.2, result.Points.Select(p => p.PerS));
    }

    [Fact]
    public void A_change_between_patterns_that_do_not_walk_asks_for_all_starts_too()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.0 ? WalkPattern.OneSided : WalkPattern.Tracking);
        Assert.Equal((2, 6, 6, 2), (Starts(result, 0.79), Starts(result, 0.9), Starts(result, 1.03), Starts(result, 1.18)));
    }

    // The two that come first have the nose to different sides.
    [Fact]
    public void A_rhythm_whose_answer_depends_on_the_side_of_the_nose_is_marked_and_has_all_starts()
    {
        Assert.True(Six[0].HeadingRad < 0.0 && Six[2].HeadingRad > 0.0);
        CadenceResult result = Run(t => t.StartHeadingRad > 0.0 ? WalkPattern.Alternating : WalkPattern.Tracking);
        Assert.All(result.Points, p => Assert.True(p.DependsOnStart && p.Outcomes.Count == 6));
    }

    // At 1.35 a second only the last start dissents; its neighbour at 1.18 tracks, so it is seen.
    [Fact]
    public void A_dissenting_start_next_to_a_change_is_seen_though_the_first_two_agree()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.3 || (t.CadencePerS == 1.35 && t.StartHeadingRad == Six[5].HeadingRad) ? WalkPattern.Tracking : WalkPattern.Alternating);
        Assert.True(result.Points.Single(p => p.PerS == 1.35).DependsOnStart);
    }

    // When the rest turns the word of a rhythm over, its neighbours differ from it and are asked anew.
    [Fact]
    public void A_word_that_turns_over_asks_for_the_starts_of_its_neighbours()
    {
        CadenceResult result = Run(t => t.CadencePerS < 1.1
            || (t.CadencePerS == 1.18 && t.StartHeadingRad != Six[0].HeadingRad && t.StartHeadingRad != Six[2].HeadingRad) ? WalkPattern.Tracking : WalkPattern.Alternating);
        Assert.Equal(WalkPattern.Tracking, result.Points.Single(p => p.PerS == 1.18).Pattern);
        Assert.Equal((6, 6, 2), (Starts(result, 1.18), Starts(result, 1.35), Starts(result, 1.77)));
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
