using LureSim.Studies.Cadence;

namespace LureSim.Studies.Tests.Cadence;

public sealed class InterpolationTests
{
    [Fact]
    public void Between_samples_the_line_is_straight_and_beyond_them_level()
    {
        double[] at = [1, 2, 4], value = [10, 20, 0];
        Assert.Equal([10, 15, 20, 10, 0], new[] { 0.5, 1.5, 2, 3, 9 }.Select(x => Interpolation.At(at, value, x)));
    }

    [Fact]
    public void The_first_crossing_counts_and_gaps_are_left_out()
    {
        Assert.Equal(1.5, Interpolation.FirstAbove([1, 2, 3, 4], [0, 2, 0, 2], 1));
        Assert.Equal(2.0, Interpolation.FirstAbove([1, 2, 3], [0, double.NaN, 2], 1));
        Assert.Equal(1.0, Interpolation.FirstAbove([1, 2], [5, 6], 1));
        Assert.True(double.IsNaN(Interpolation.FirstAbove([1, 2], [0, 1], 1)));
    }
}
