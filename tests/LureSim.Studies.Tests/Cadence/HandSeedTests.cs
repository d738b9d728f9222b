using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

/// <summary>With what take-up speed the hand of a run begins.</summary>
public sealed class HandSeedTests
{
    private const double Fastest = 2.0;

    // Take-up is what the lure advances: speed over rhythm a twitch.
    private static RhythmPoint Point(double perS, WalkPattern? pattern, double speedMS) => new(
        perS,
        [pattern is WalkPattern p ? new(MadeUp.Outcome(p).Summary! with { AdvancePerTwitchM = speedMS / perS }) : StationaryOutcome.Failed("stiff")],
        0.8);

    private static double? Seed(double perS, int start, params RhythmPoint[] known) => HandSeed.At(known, perS, start, Fastest);

    [Fact]
    public void Nothing_known_gives_the_hand_of_a_retrieve()
    {
        Assert.Null(Seed(1.0, 0));
        Assert.Null(Seed(1.0, 0, Point(0.9, null, 0.3)));
    }

    [Fact]
    public void One_neighbour_lends_its_hand_and_a_rhythm_that_was_run_ahead_its_own()
    {
        Assert.Equal(0.3, Seed(1.0, 0, Point(0.9, WalkPattern.Tracking, 0.3))!.Value, 1e-12);
        Assert.Equal(0.9, Seed(1.0, 0, Point(1.0, WalkPattern.Tracking, 0.9), Point(1.2, WalkPattern.Tracking, 0.4))!.Value, 1e-12);
    }

    [Fact]
    public void Between_equal_answers_the_hand_lies_between_theirs() =>
        Assert.Equal(0.35, Seed(1.1, 0, Point(1.0, WalkPattern.Alternating, 0.3), Point(1.2, WalkPattern.Alternating, 0.4))!.Value, 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void At_the_edge_of_a_window_every_start_has_the_hand_of_the_walk(int start)
    {
        Assert.Equal(0.2, Seed(1.1, start, Point(1.0, WalkPattern.OneSided, 0.5), Point(1.2, WalkPattern.Alternating, 0.2))!.Value, 1e-12);
        Assert.Equal(0.5, Seed(1.1, start, Point(1.0, WalkPattern.Alternating, 0.5), Point(1.2, WalkPattern.Tracking, 0.2))!.Value, 1e-12);
    }

    [Fact]
    public void Between_other_changes_half_of_the_starts_have_the_hand_of_either()
    {
        double?[] seeds = [.. Enumerable.Range(0, 6).Select(s => Seed(1.1, s, Point(1.0, WalkPattern.OneSided, 0.5), Point(1.2, WalkPattern.Tracking, 0.2)))];
        Assert.Equal([0.5, 0.2, 0.2, 0.5, 0.5, 0.2], seeds.Select(s => Math.Round(s!.Value, 12)));
    }

    [Fact]
    public void No_hand_is_faster_than_the_fastest_or_gives_line()
    {
        Assert.Equal(Fastest, Seed(1.0, 0, Point(0.9, WalkPattern.Tracking, 7.0)));
        Assert.Equal(0.0, Seed(1.0, 0, Point(0.9, WalkPattern.Tracking, -0.1)));
    }

    // The lab answers with the advance of 0.2 m a twitch; the first runs know nothing.
    [Fact]
    public void A_search_runs_a_third_of_the_scan_ahead_and_lends_its_hands_to_all_others()
    {
        var seen = new List<RetrieveTask>();
        var plan = new CadencePlan(Threads: 1);
        CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(), plan, new(1, 1, 1), (_, t) =>
        {
            seen.Add(t);
            return MadeUp.Outcome(WalkPattern.Tracking);
        });
        double[] scan = plan.Scan();
        Assert.Equal([scan[1], scan[4], scan[7], scan[10], scan[13]], seen.TakeWhile(t => t.StartTakeUpMS is null).Select(t => t.CadencePerS));
        Assert.All(seen.Skip(5), t => Assert.Equal(0.2 * Math.Clamp(t.CadencePerS, scan[1], scan[13]), t.StartTakeUpMS!.Value, 1e-9));
        Assert.Equal(scan.Order(), seen.Skip(5).Select(t => t.CadencePerS).Distinct().Order().Where(scan.Contains));
    }
}
