using LureSim.Studies.Fit;

namespace LureSim.Studies.Tests.Fit;

/// <summary>The law of the size of an angle against numbers of the normal law.</summary>
public sealed class FoldedAngleTests
{
    // P(-1 < e < 1) = 0.682689, P(-1 < 2 + e < 1) = Phi(-1) - Phi(-3) = 0.158655 - 0.001350 (tables of the normal law).
    [Fact]
    public void Below_an_end_it_is_the_share_of_the_normal_law()
    {
        Assert.Equal(0.0, FoldedAngle.MissBelow(1.0, 0.0));
        Assert.Equal(-Math.Sqrt(2.0 * Math.Log(0.682689 / 0.157305)), FoldedAngle.MissBelow(1.0, 2.0), 1e-4);
        Assert.Equal(FoldedAngle.MissBelow(1.0, 8.999), FoldedAngle.MissBelow(1.0, 9.001), 0.02);
        Assert.True(double.IsFinite(FoldedAngle.MissBelow(1.0, 100.0)));
    }

    [Theory]
    [InlineData(0.0, 0.0, 0.0)]
    [InlineData(10.0, 12.0, -2.0)]
    [InlineData(10.0, 7.0, 3.0)]
    public void Far_from_nothing_it_is_the_difference(double measured, double computed, double miss) => Assert.Equal(miss, FoldedAngle.Miss(measured, computed), 1e-6);

    [Fact]
    public void Small_sizes_hardly_tell_an_angle_from_none()
    {
        Assert.Equal(0.0, FoldedAngle.Miss(0.9, 0.0), 1e-9);
        Assert.InRange(FoldedAngle.Miss(1.4, 0.0), 0.3, 0.9);
        Assert.True(FoldedAngle.Miss(1.4, 2.0) < 0.0);
    }
}
