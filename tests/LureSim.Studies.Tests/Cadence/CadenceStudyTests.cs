using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Cadence;

public sealed class CadenceStudyTests
{
    private static readonly SustainedTorque Torque = new(1.0, 0.5, 4.0);

    private static CadenceResult Run(Func<Setup, RetrieveTask, StationaryOutcome> lab, CadencePlan? plan = null) =>
        CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(), plan ?? new CadencePlan(), Torque, lab).Demand();

    [Fact]
    public void Edges_of_several_windows_are_found_to_half_the_bracket()
    {
        CadenceResult result = Run(MadeUp.Walking((0.71, 1.234), (2.9, 3.7)));
        Assert.Equal(2, result.Windows.Count);
        Assert.Equal(0.71, result.Windows[0].FromPerS, 0.0101);
        Assert.Equal(1.234, result.Windows[0].ToPerS, 0.0101);
        Assert.Equal(2.9, result.Windows[1].FromPerS, 0.0101);
        Assert.Equal(3.7, result.Windows[1].ToPerS, 0.0101);
        Assert.All(result.Windows, w => Assert.False(w.FromIsRangeEnd || w.ToIsRangeEnd));
        Assert.All(result.Windows, w => Assert.Equal(WalkPattern.Tracking, w.Below));
        Assert.Equal(1.0, result.LockShare);
    }

    [Fact]
    public void No_window_gives_no_best_rhythm()
    {
        CadenceResult result = Run(MadeUp.Walking());
        Assert.Empty(result.Windows);
        Assert.Null(result.Best);
        Assert.Null(result.Widest);
        Assert.Equal(0.0, result.LockShare);
        Assert.Equal([(WalkPattern.Tracking, 0.6, 4.0)], result.Bands());
    }

    [Fact]
    public void A_window_over_the_whole_range_says_that_its_ends_are_no_edges()
    {
        CadenceWindow window = Assert.Single(Run(MadeUp.Walking((0.0, 9.0))).Windows);
        Assert.Equal((0.6, 4.0), (window.FromPerS, window.ToPerS));
        Assert.True(window.FromIsRangeEnd && window.ToIsRangeEnd);
    }

    [Fact]
    public void A_finer_bracket_narrows_the_edge()
    {
        double Error(double bracket) => Math.Abs(Run(MadeUp.Walking((0.8123, 9.0)), new CadencePlan(EdgePerS: bracket)).Windows[0].FromPerS - 0.8123);
        Assert.True(Error(1e-4) <= 0.5e-4);
        Assert.True(Error(1e-2) <= 0.5e-2);
    }

    [Fact]
    public void A_window_between_two_scanned_rhythms_is_missed_and_a_denser_scan_finds_it()
    {
        Assert.Empty(Run(MadeUp.Walking((1.65, 1.70))).Windows);
        Assert.Single(Run(MadeUp.Walking((1.65, 1.70)), new CadencePlan(ScanPoints: 120)).Windows);
    }

    // The scan has 0.79 and 0.90 about the first change, which costs no run of its own; the edge of the window at 1.1 is bisected.
    [Fact]
    public void Only_edges_of_windows_are_bisected()
    {
        CadenceResult result = Run((_, t) => MadeUp.Outcome(
            t.CadencePerS < 0.85 ? WalkPattern.OneSided : t.CadencePerS < 1.1 ? WalkPattern.Tracking : WalkPattern.Alternating));
        var bands = result.Bands();
        Assert.Equal([WalkPattern.OneSided, WalkPattern.Tracking, WalkPattern.Alternating], bands.Select(b => b.Pattern));
        Assert.Equal(1.1, bands[1].ToPerS, 0.0101);
        double[] scan = new CadencePlan().Scan();
        Assert.All(result.Points.Where(p => p.PerS < 1.0), p => Assert.Contains(p.PerS, scan));
    }

    [Fact]
    public void The_best_rhythm_keeps_its_distance_from_the_brink()
    {
        // Glide 0.1/f is widest at the lower edge; the best must still walk when missed by a tenth.
        CadenceResult result = Run(MadeUp.Walking((1.0, 3.0)));
        Assert.Equal(1.0, result.Widest!.PerS, 0.02);
        Assert.Equal(1.15, result.Best!.PerS);
        Assert.True(result.Best.HasRoom);
        Assert.True(result.BestPoint!.PerS == 1.15 && result.BestPoint.Walks);
    }

    // Glide 0.1 f is widest at the upper edge of 3 /s: missed by a tenth, 2.70 still walks and 2.75 does not.
    [Fact]
    public void The_best_rhythm_keeps_its_distance_from_the_upper_brink_too()
    {
        CadenceResult result = Run((_, t) => MadeUp.Outcome(
            t.CadencePerS is >= 1.0 and <= 3.0 ? WalkPattern.Alternating : WalkPattern.Tracking, 0.1 * t.CadencePerS));
        Assert.Equal(new BestRhythm(2.7, true), result.Best);
    }

    [Fact]
    public void A_window_too_narrow_for_the_hand_has_its_middle_as_best_without_room()
    {
        CadenceResult result = Run(MadeUp.Walking((1.5, 1.6)));
        Assert.False(result.Best!.HasRoom);
        Assert.Equal(1.55, result.Best.PerS, 0.02);
        Assert.True(result.BestPoint!.Walks);
    }

    [Fact]
    public void The_wrist_limit_is_where_the_torque_crosses_for_each_end_of_the_guess()
    {
        // Torque 0.4 f: 1 N m at 2.5 /s, 0.5 N m at 1.25 /s, 4 N m beyond the range.
        var (likely, weak, strong) = Run(MadeUp.Walking((0.0, 9.0))).Wrist;
        Assert.Equal(2.5, likely.ToPerS, 1e-9);
        Assert.Equal(1.25, weak.ToPerS, 1e-9);
        Assert.Equal(new WristLimit(4.0, true), strong);
    }

    [Fact]
    public void A_wrist_too_weak_for_the_slowest_rhythm_sustains_none() =>
        Assert.True(double.IsNaN(CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(), new CadencePlan(), new(0.1, 0.1, 0.1), MadeUp.Walking((0, 9))).Demand().Wrist.Likely.ToPerS));

    [Fact]
    public void Luck_is_not_a_rule()
    {
        // Above 2 /s only starts with the nose to the left walk.
        CadenceResult result = Run((_, t) => MadeUp.Outcome(
            t.CadencePerS < 2 || t.StartHeadingRad > 0 ? WalkPattern.Alternating : WalkPattern.OneSided));
        CadenceWindow window = Assert.Single(result.Windows);
        Assert.Equal(2.0, window.ToPerS, 0.0101);
        Assert.Equal(WalkPattern.OneSided, window.Above);
        Assert.All(result.Points.Where(p => p.PerS >= 2), p => Assert.InRange(p.LockShare, 0.3, 0.7));
    }

    [Fact]
    public void The_share_of_starts_decides_what_walks()
    {
        StationaryOutcome yes = MadeUp.Outcome(WalkPattern.Alternating, 0.06), no = MadeUp.Outcome(WalkPattern.Skipping, 0.01);
        var five = new RhythmPoint(1, [yes, yes, yes, yes, yes, no], 0.8);
        Assert.True(five.Walks);
        Assert.Equal(5.0 / 6.0, five.LockShare, 15);
        Assert.Equal(0.06, five.Median(o => o.GlideWidthM));
        var four = new RhythmPoint(1, [yes, yes, yes, yes, no, no], 0.8);
        Assert.False(four.Walks);
        Assert.Equal(WalkPattern.Skipping, four.Pattern);
        Assert.Equal(WalkPattern.Irregular, new RhythmPoint(1, [yes, StationaryOutcome.Failed("stiff")], 0.8).Pattern);
    }

    [Fact]
    public void Failed_runs_are_counted_and_told()
    {
        CadenceResult result = Run((_, t) => t.CadencePerS > 2 ? StationaryOutcome.Failed("too stiff") : MadeUp.Outcome(WalkPattern.Alternating));
        Assert.Contains("too stiff", result.Failures, StringComparison.Ordinal);
        Assert.Equal(2.0, Assert.Single(result.Windows).ToPerS, 0.0101);
        Assert.Null(result.Windows[0].Above);
        Assert.Throws<ModelException>(() => Run((_, _) => StationaryOutcome.Failed("none")));
    }

    [Fact]
    public void The_own_rhythm_is_among_the_samples() => Assert.Equal(2.0, Run(MadeUp.Walking((1, 2))).Own!.PerS);

    [Fact]
    public void A_stopped_study_says_so()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(
            () => CadenceStudy.Run(MadeUp.Setup(), new RetrieveTask(), new CadencePlan(), Torque, MadeUp.Walking((1, 2)), null, stop.Token));
    }

    // Glide 0.1/f in a window from 1 to 3: the first two rhythms that look best turn out not to walk when they are sampled themselves.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void A_best_rhythm_that_does_not_walk_when_sampled_gives_way_to_the_next(int unmasked)
    {
        var search = new RhythmSearch(MadeUp.Setup(), new RetrieveTask(), new CadencePlan());
        var holes = new List<double>();
        bool scanned = false;
        while (search.Wanted.Count > 0)
        {
            if (scanned && holes.Count < unmasked && search.Wanted is [{ PerS: double only }] && only == search.Finish(Torque).Demand().Best?.PerS)
            {
                holes.Add(only);
            }

            search.Add([.. search.Wanted.Select(w => All(w, holes.Contains(w.PerS) || w.PerS is < 1.0 or > 3.0 ? WalkPattern.Tracking : WalkPattern.Alternating))]);
            scanned = true;
        }

        CadenceResult result = search.Finish(Torque).Demand();
        Assert.Equal(unmasked, holes.Count);
        Assert.DoesNotContain(result.Best!.PerS, holes);
        Assert.Equal(result.Best.PerS, result.BestPoint!.PerS);
        Assert.True(result.BestPoint.Walks);

        static IReadOnlyList<StationaryOutcome> All(WantedRhythm w, WalkPattern pattern) => [.. w.Starts.Select(_ => MadeUp.Outcome(pattern, 0.1 / w.PerS))];
    }

    [Fact]
    public void Many_set_ups_in_common_batches_give_what_each_gives_alone()
    {
        // The edge depends on the hand height, which stands for the set-up.
        (Setup, RetrieveTask)[] specs =
        [
            .. Enumerable.Range(0, 3).Select(i => (MadeUp.Setup() with { Angler = new AnglerSpec(HandHeightM: 1 + (0.5 * i)) }, new RetrieveTask(CadencePerS: 1.0 + i))),
        ];
        static StationaryOutcome Lab(Setup s, RetrieveTask t) => MadeUp.Outcome(t.CadencePerS > s.Angler.HandHeightM ? WalkPattern.Alternating : WalkPattern.Tracking);
        RhythmSearch[] together = CadenceStudy.Search(specs, new CadencePlan(), Lab);
        for (int i = 0; i < specs.Length; i++)
        {
            CadenceResult one = CadenceStudy.Run(specs[i].Item1, specs[i].Item2, new CadencePlan(), Torque, Lab).Demand(), other = together[i].Finish(Torque).Demand();
            Assert.Equal(one.Windows, other.Windows);
            Assert.Equal(one.Points.Select(p => p.PerS), other.Points.Select(p => p.PerS));
            Assert.Equal(1 + (0.5 * i), one.Windows[0].FromPerS, 0.0101);
        }
    }
}
