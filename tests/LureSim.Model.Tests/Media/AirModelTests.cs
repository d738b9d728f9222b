using LureSim.Model.Media;

namespace LureSim.Model.Tests.Media;

public sealed class AirModelTests
{
    [Fact]
    public void Warm_air_is_lighter_and_more_viscous_and_high_air_lighter()
    {
        AirState cool = AirModel.Evaluate(new(0.0, 0.0));
        AirState warm = AirModel.Evaluate(new(35.0, 0.0));
        AirState high = AirModel.Evaluate(new(0.0, 2000.0));
        Assert.True(warm.DensityKgM3 < cool.DensityKgM3);
        Assert.True(warm.DynamicViscosityPaS > cool.DynamicViscosityPaS);
        Assert.True(high.DensityKgM3 < cool.DensityKgM3);
        Assert.Equal(cool.DynamicViscosityPaS, high.DynamicViscosityPaS);
    }

    [Theory]
    [InlineData(-21.0, 0.0)]
    [InlineData(51.0, 0.0)]
    [InlineData(20.0, -1.0)]
    [InlineData(20.0, 4001.0)]
    [InlineData(double.NaN, 0.0)]
    public void Out_of_range_is_refused(double t, double h) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AirModel.Evaluate(new(t, h)));
}
