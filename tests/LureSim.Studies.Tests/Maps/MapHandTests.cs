using LureSim.Model.Retrieve;
using LureSim.Studies.Cadence;
using LureSim.Studies.Maps;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Maps;

/// <summary>Which take-up speed a run of a map begins with.</summary>
public sealed class MapHandTests
{
    private const double Fastest = 5.0, PerS = 2.0;

    [Fact]
    public void Nothing_known_is_no_hand() => Assert.Null(MapHand.At([], new(4, 0, 0), Fastest));

    [Fact]
    public void Among_points_of_one_word_the_mean() =>
        Assert.Equal(PerS * ((2.0 * 0.1) + 0.3) / 3.0, At(new(2, 0, 0), ((0, 0), WalkPattern.Tracking, 0.1), ((4, 0), WalkPattern.Tracking, 0.1), ((2, 2), WalkPattern.Tracking, 0.3))!.Value, 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Next_to_a_walk_every_start_has_the_hand_of_the_walk(int start) =>
        Assert.Equal(PerS * 0.1, At(new(4, 0, start), ((0, 0), WalkPattern.Alternating, 0.1), ((8, 0), WalkPattern.Tracking, 0.3))!.Value, 1e-12);

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1, 0.3)]
    public void Between_two_words_that_do_not_walk_half_of_the_starts_have_either(int start, double advance) =>
        Assert.Equal(PerS * advance, At(new(4, 0, start), ((0, 0), WalkPattern.Spinning, 0.1), ((8, 0), WalkPattern.Tracking, 0.3))!.Value, 1e-12);

    [Fact]
    public void Points_farther_than_twice_the_nearest_do_not_count() =>
        Assert.Equal(PerS * 0.2, At(new(4, 4, 0), ((4, 5), WalkPattern.Tracking, 0.2), ((4, 1), WalkPattern.Alternating, 0.1))!.Value, 1e-12);

    [Fact]
    public void A_point_run_ahead_gives_its_own() =>
        Assert.Equal(PerS * 0.2, At(new(4, 4, 0), ((4, 4), WalkPattern.Tracking, 0.2), ((4, 5), WalkPattern.Alternating, 0.1))!.Value, 1e-12);

    [Fact]
    public void No_hand_is_faster_than_it_can_be() => Assert.Equal(Fastest, At(new(4, 4, 0), ((4, 5), WalkPattern.Tracking, 10.0))!.Value);

    private static double? At(MapRun run, params ((int I, int J) At, WalkPattern Pattern, double AdvanceM)[] known) =>
        MapHand.At(known.Select(k => KeyValuePair.Create(k.At, Point(k.Pattern, k.AdvanceM))), run, Fastest);

    private static RhythmPoint Point(WalkPattern pattern, double advanceM) =>
        new(PerS, [new(MadeUp.Outcome(pattern).Summary! with { AdvancePerTwitchM = advanceM })], 0.8);
}
