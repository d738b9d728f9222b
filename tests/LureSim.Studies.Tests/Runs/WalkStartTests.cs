using LureSim.Studies.Runs;

namespace LureSim.Studies.Tests.Runs;

public sealed class WalkStartTests
{
    [Fact]
    public void More_starts_keep_the_first_ones() => Assert.Equal(WalkStart.Spread(6), WalkStart.Spread(24)[..6]);

    [Theory]
    [InlineData(6)]
    [InlineData(24)]
    public void Starts_lie_inside_both_ranges_and_on_both_sides(int count)
    {
        WalkStart[] starts = WalkStart.Spread(count);
        Assert.All(starts, s => Assert.InRange(Math.Abs(s.HeadingRad), 0, WalkStart.WidestHeadingRad));
        Assert.All(starts, s => Assert.InRange(Math.Abs(s.SidewaysM), 0, WalkStart.WidestSidewaysM));
        Assert.InRange(starts.Count(s => s.HeadingRad > 0), count / 3, count - (count / 3));
        Assert.InRange(starts.Count(s => s.SidewaysM > 0), count / 3, count - (count / 3));
        Assert.Equal(count, starts.Distinct().Count());
    }

    [Fact]
    public void No_starts_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => WalkStart.Spread(0));
}
