using LureSim.Model.Media;

namespace LureSim.Model.Tests.Media;

public sealed class WindProfileTests
{
    private static WindProfile Wind(double speed, double from, double roughness = 2e-4) =>
        new(new AirSpec(WindSpeedMS: speed, WindFromRad: from, RoughnessM: roughness));

    [Fact]
    public void Reaches_the_stated_speed_at_ten_metres_and_rests_on_the_water()
    {
        WindProfile wind = Wind(6.0, 0.0);
        Assert.Equal(6.0, wind.Speed(10.0), 12);
        Assert.Equal(0.0, wind.Speed(2e-4));
        Assert.Equal(0.0, wind.Speed(0.0));
        Assert.Equal(0.0, wind.Speed(-0.5));
        Assert.Equal(6.0 * Math.Log(1.0 / 2e-4) / Math.Log(10.0 / 2e-4), wind.Speed(1.0), 12);
    }

    [Theory]
    [InlineData(0.0, -1.0, 0.0)]
    [InlineData(Math.PI / 2.0, 0.0, -1.0)]
    [InlineData(Math.PI, 1.0, 0.0)]
    [InlineData(-Math.PI / 2.0, 0.0, 1.0)]
    public void Blows_away_from_where_it_comes(double from, double x, double y)
    {
        (double ux, double uy) = Wind(1.0, from).Velocity(10.0);
        Assert.Equal(x, ux, 12);
        Assert.Equal(y, uy, 12);
    }

    [Fact]
    public void No_wind_is_calm_everywhere()
    {
        Assert.True(Wind(0.0, 1.0).IsCalm);
        Assert.True(default(WindProfile).IsCalm);
        Assert.Equal((0.0, 0.0), default(WindProfile).Velocity(3.0));
    }

    [Theory]
    [InlineData(-1.0, 0.0, 2e-4)]
    [InlineData(26.0, 0.0, 2e-4)]
    [InlineData(5.0, double.NaN, 2e-4)]
    [InlineData(5.0, 0.0, 0.0)]
    public void Out_of_range_is_refused(double speed, double from, double roughness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Wind(speed, from, roughness));
}
