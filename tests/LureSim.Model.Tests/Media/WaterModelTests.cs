using LureSim.Model.Media;

namespace LureSim.Model.Tests.Media;

public sealed class WaterModelTests
{
    [Fact]
    public void Fresh_and_sea_water_join_at_no_salt()
    {
        for (double t = 0.0; t <= 40.0; t += 1.0)
        {
            WaterState fresh = WaterModel.Evaluate(new(t, 0.0));
            WaterState sea = WaterModel.Evaluate(new(t, 1e-9));
            // EOS-80 rests on an older formula for pure water, which parts from the newer one by a few mg/kg over 30 deg C.
            Assert.Equal(fresh.DensityKgM3, sea.DensityKgM3, 0.006);
            Assert.Equal(fresh.DynamicViscosityPaS, sea.DynamicViscosityPaS, 12);
            Assert.Equal(fresh.SurfaceTensionNM, sea.SurfaceTensionNM, 9);
        }
    }

    [Fact]
    public void Salt_makes_water_denser_more_viscous_and_tauter()
    {
        WaterState fresh = WaterModel.Evaluate(new(15.0));
        WaterState sea = WaterModel.Evaluate(new(15.0, 35.0));
        Assert.True(sea.DensityKgM3 > fresh.DensityKgM3);
        Assert.True(sea.DynamicViscosityPaS > fresh.DynamicViscosityPaS);
        Assert.True(sea.SurfaceTensionNM > fresh.SurfaceTensionNM);
    }

    [Theory]
    [InlineData(-0.1, 0.0)]
    [InlineData(40.1, 0.0)]
    [InlineData(double.NaN, 0.0)]
    [InlineData(20.0, -1.0)]
    [InlineData(20.0, 43.0)]
    [InlineData(20.0, double.NaN)]
    public void Out_of_range_is_refused(double t, double s) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterModel.Evaluate(new(t, s)));
}
