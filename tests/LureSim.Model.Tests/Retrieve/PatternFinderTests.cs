using LureSim.Model.Hands;
using LureSim.Model.Retrieve;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>Made-up twitches whose pattern is known, and both sides of every threshold.</summary>
public sealed class PatternFinderTests
{
    private const double SurgeMass = 0.02, Reaching = 2.0 * PatternFinder.ReachedSpeedMS * SurgeMass, Missing = 0.5 * PatternFinder.ReachedSpeedMS * SurgeMass;
    private const double Wide = 150.0, Length = 0.1;

    // Twitches in hundreds, so that a share of 1 % can be made.
    private const int Count = 100;

    [Fact]
    public void Clear_cases_get_their_names()
    {
        Assert.Equal(WalkPattern.Alternating, Named(k => Twitch(k % 2 == 0 ? 70 : -70)));
        Assert.Equal(WalkPattern.OneSided, Named(_ => Twitch(70)));
        Assert.Equal(WalkPattern.OneSided, Named(_ => Twitch(-70)));
        Assert.Equal(WalkPattern.Irregular, Named(k => Twitch(k % 4 < 2 ? 70 : -70)));
        Assert.Equal(WalkPattern.Tracking, Named(k => Twitch(k % 2 == 0 ? 5 : -5, swing: 10)));
        Assert.Equal(WalkPattern.Skipping, Named(k => Twitch(k % 4 < 2 ? 70 : -70, impulse: k % 2 == 0 ? Reaching : 0.0)));
        Assert.Equal(WalkPattern.Spinning, Named(k => Twitch(k % 2 == 0 ? 70 : -70, back: k % 2)));
        Assert.Equal(WalkPattern.Still, Named(_ => Twitch(40, swing: 0, impulse: 0)));
    }

    // Half of 0.1 m; one twitch without travel is made up for by the others, since the mean counts.
    [Theory]
    [InlineData(0.0501, WalkPattern.Alternating)]
    [InlineData(0.0499, WalkPattern.Turning)]
    public void A_walk_is_wider_than_a_turn_on_the_spot(double width, WalkPattern pattern)
    {
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70) with { WidthM = width }));
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70) with { WidthM = k % 2 == 0 ? 0.0 : 2.0 * width }));
        Assert.Equal(WalkPattern.OneSided, Named(_ => Twitch(70) with { WidthM = width }));
    }

    [Theory]
    [InlineData(4.9, 4.9, WalkPattern.Tracking)]
    [InlineData(5.1, -5.1, WalkPattern.OneSided)]
    [InlineData(20.0, 12.1, WalkPattern.OneSided)]
    [InlineData(20.0, -11.9, WalkPattern.Irregular)]
    public void On_a_steady_pull_the_angle_off_the_line_decides(double size, double mean, WalkPattern pattern) =>
        Assert.Equal(pattern, PatternFinder.ClassifyTow(size, mean));

    // A tight line drawn by strokes: the hull sheers widely within a twitch, but is back on the line at its end.
    [Fact]
    public void A_towed_lure_that_swings_over_and_back_is_tracking() =>
        Assert.Equal(WalkPattern.Tracking, Named(k => Twitch(k % 2 == 0 ? 12 : -12, swing: 120)));

    [Theory]
    [InlineData(9, WalkPattern.Still)]
    [InlineData(10, WalkPattern.Skipping)]
    [InlineData(84, WalkPattern.Skipping)]
    [InlineData(85, WalkPattern.Alternating)]
    public void Share_of_pulls_that_reach_the_lure(int reached, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70, impulse: k < reached ? Reaching : Missing)));

    [Theory]
    [InlineData(1.001, WalkPattern.Alternating)]
    [InlineData(0.999, WalkPattern.Still)]
    public void A_pull_reaches_the_lure_from_a_surge_change_of_5_cm_a_second(double share, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70, impulse: share * PatternFinder.ReachedSpeedMS * SurgeMass)));

    [Theory]
    [InlineData(9, WalkPattern.Alternating)]
    [InlineData(10, WalkPattern.Spinning)]
    public void Turns_past_the_back(int turns, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70, back: k < turns ? 1 : 0)));

    [Theory]
    [InlineData(19.9, WalkPattern.Tracking)]
    [InlineData(20.1, WalkPattern.Alternating)]
    public void Median_swing(double swing, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70, swing)));

    // A few wide swings do not lift the median.
    [Fact]
    public void Swing_is_judged_by_its_median() =>
        Assert.Equal(WalkPattern.Tracking, Named(k => Twitch(k % 2 == 0 ? 70 : -70, swing: k < 45 ? 170 : 10)));

    [Theory]
    [InlineData(19.9, WalkPattern.Tracking)]
    [InlineData(20.1, WalkPattern.Alternating)]
    public void Mean_angle_off_the_line(double angle, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? angle : -angle)));

    // Eleven twitches have ten changes of side: one lost leaves nine of ten, exactly the share that is asked for.
    [Theory]
    [InlineData(1, WalkPattern.Alternating)]
    [InlineData(2, WalkPattern.Irregular)]
    public void Nine_flips_of_ten_are_enough(int held, WalkPattern pattern)
    {
        double[] side = [1, -1, 1, -1, held > 0 ? -1 : 1, held > 0 ? 1 : -1, held > 0 ? -1 : 1, 1, -1, held > 1 ? -1 : 1, held > 1 ? 1 : -1];
        Assert.Equal((10 - held) / 10.0, PatternFinder.FlipShare([.. side.Select(s => Twitch(70.0 * s))]), 1e-12);
        Assert.Equal(pattern, Named(k => Twitch(70.0 * side[k]), side.Length));
    }

    // Count twitches have Count - 1 changes; holding a side once costs one flip.
    [Theory]
    [InlineData(0, WalkPattern.Alternating)]
    [InlineData(9, WalkPattern.Alternating)]
    [InlineData(10, WalkPattern.Irregular)]
    public void Flips_lost_from_an_alternation(int held, WalkPattern pattern) => Assert.Equal(pattern, Named(Sides(held)));

    [Theory]
    [InlineData(9, WalkPattern.OneSided)]
    [InlineData(10, WalkPattern.Irregular)]
    public void Flips_in_a_one_sided_walk(int excursions, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 1 && k < 2 * excursions ? -70 : 70)));

    // One change of side in the whole run: hardly any flips, but neither side is its own.
    [Theory]
    [InlineData(80, WalkPattern.OneSided)]
    [InlineData(79, WalkPattern.Irregular)]
    public void A_one_sided_walk_keeps_its_side(int onOneSide, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k < onOneSide ? 70 : -70)));

    [Fact]
    public void Rules_are_taken_in_order()
    {
        Assert.Equal(WalkPattern.Still, Named(_ => Twitch(170, impulse: 0, back: 1)));
        Assert.Equal(WalkPattern.Spinning, Named(k => Twitch(0, swing: 5, impulse: k % 2 == 0 ? Reaching : 0, back: 1)));
        Assert.Equal(WalkPattern.Tracking, Named(k => Twitch(70, swing: 5, impulse: k % 2 == 0 ? Reaching : 0)));
    }

    [Theory]
    [InlineData(3, WalkPattern.Irregular)]
    [InlineData(4, WalkPattern.Alternating)]
    public void Fewer_than_four_twitches_are_not_judged(int count, WalkPattern pattern) =>
        Assert.Equal(pattern, Named(k => Twitch(k % 2 == 0 ? 70 : -70), count));

    [Fact]
    public void The_mirrored_walk_has_the_same_name()
    {
        var random = new Random(7);
        for (int run = 0; run < 200; run++)
        {
            TwitchRecord[] walk = [.. Enumerable.Range(0, 24).Select(_ =>
                Twitch(random.NextDouble() * 240 - 120, random.NextDouble() * 60, random.NextDouble() * 2 * Reaching, random.Next(12) / 11))];
            TwitchRecord[] mirrored = [.. walk.Select(t => t with { EndHeadingRad = -t.EndHeadingRad, SidewaysM = -t.SidewaysM })];
            Assert.Equal(PatternFinder.Classify(walk, SurgeMass, Length), PatternFinder.Classify(mirrored, SurgeMass, Length));
        }
    }

    [Theory]
    [InlineData(new double[0], 0.0)]
    [InlineData(new[] { 3.0 }, 3.0)]
    [InlineData(new[] { 9.0, 1.0 }, 5.0)]
    [InlineData(new[] { 9.0, 1.0, 2.0 }, 2.0)]
    public void Median(double[] values, double expected) => Assert.Equal(expected, PatternFinder.Median(values));

    [Fact]
    public void Share_of_flips()
    {
        Assert.Equal(0.0, PatternFinder.FlipShare([Twitch(70)]));
        Assert.Equal(1.0, PatternFinder.FlipShare([Twitch(70), Twitch(-1)]));

        // Straight at the rod is no side.
        Assert.Equal(0.5, PatternFinder.FlipShare([Twitch(70), Twitch(0), Twitch(-70), Twitch(70), Twitch(-70)]));
    }

    [Fact]
    public void Nothing_is_refused() => Assert.Throws<ArgumentNullException>(() => PatternFinder.Classify(null!, SurgeMass, Length));

    private static WalkPattern Named(Func<int, TwitchRecord> twitch, int count = Count) =>
        PatternFinder.Classify([.. Enumerable.Range(0, count).Select(twitch)], SurgeMass, Length);

    /// <summary>An alternation that holds its side so many times.</summary>
    private static Func<int, TwitchRecord> Sides(int held)
    {
        var side = new int[Count];
        side[0] = 1;
        for (int k = 1; k < Count; k++)
        {
            side[k] = k % 9 == 0 && k / 9 <= held ? side[k - 1] : -side[k - 1];
        }

        return k => Twitch(70.0 * side[k]);
    }

    private static TwitchRecord Twitch(double endDeg, double swing = Wide, double impulse = Reaching, int back = 0) =>
        new(0.0, endDeg * Math.PI / 180.0, swing * Math.PI / 180.0, impulse, 0.2, 0.05, back) { WidthM = 0.1 };
}
