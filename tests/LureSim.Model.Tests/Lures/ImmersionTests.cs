using LureSim.Model.Lures;
using LureSim.Numerics;

namespace LureSim.Model.Tests.Lures;

public sealed class ImmersionTests
{
    // A sphere looks the same from everywhere: cap formulas at any attitude, also straight up.
    [Theory]
    [InlineData(0.0, 0.0)]
    [InlineData(0.3, 0.0)]
    [InlineData(-0.9, 0.5)]
    [InlineData(1.5, 2.0)]
    [InlineData(Math.PI / 2.0, 0.0)]
    [InlineData(-Math.PI / 2.0, 1.0)]
    [InlineData(1.65, 0.0)]
    public void Sphere_is_a_cap_at_every_attitude(double trim, double heel)
    {
        const double r = 0.02;
        const double z0 = 0.005;
        var sphere = new NamedHull(LureShape.Spheroid, 2.0 * r, 2.0 * r, 2.0 * r);
        var attitude = new Attitude(z0, trim, heel);
        Immersion i = Immersion.Of(sphere, attitude);
        double h = r - z0;
        double volume = Math.PI * h * h * (r - (h / 3.0));
        double cut = (r * r) - (z0 * z0);
        Assert.Equal(volume, i.VolumeM3, 1e-5 * volume);
        Assert.Equal(Math.PI * cut, i.WaterplaneAreaM2, 2e-5 * Math.PI * cut);
        Assert.Equal(Math.PI * cut * cut / 4.0, i.InertiaTransM4, 5e-5 * cut * cut);
        Assert.Equal(Math.PI * cut * cut / 4.0, i.InertiaLongM4, 5e-5 * cut * cut);
        double below = 3.0 * Math.Pow((2.0 * r) - h, 2) / (4.0 * ((3.0 * r) - h));
        Assert.Equal(-below, Vec3.Dot(attitude.Up, i.Centre), 1e-5 * r);
        Assert.Equal(0.0, Vec3.Dot(attitude.Forward, i.Centre), 1e-5 * r);
        Assert.Equal(0.0, Vec3.Dot(attitude.Left, i.Centre), 1e-5 * r);
        Assert.Equal(0.0, i.FlotationXM, 1e-5 * r);
    }

    [Fact]
    public void Waterplane_is_the_slope_of_the_volume()
    {
        HullForm hull = HullShape.Create(TestLures.Hollow());
        var a = new Attitude(0.001, 0.2, 0.3);
        double slope = (Immersion.Of(hull, a with { HeightM = 0.001 - 1e-6 }).VolumeM3
            - Immersion.Of(hull, a with { HeightM = 0.001 + 1e-6 }).VolumeM3) / 2e-6;
        Immersion i = Immersion.Of(hull, a);
        Assert.Equal(slope, i.WaterplaneAreaM2, 1e-4 * slope);
    }

    [Fact]
    public void Far_above_nothing_and_far_below_everything()
    {
        HullForm hull = HullShape.Create(TestLures.Pencil());
        Assert.Equal(0.0, Immersion.Of(hull, new Attitude(1.0, 0.2)).VolumeM3);
        Assert.Equal(hull.VolumeM3(), Immersion.Of(hull, new Attitude(-1.0, 0.2)).VolumeM3, 1e-12);
    }

    [Fact]
    public void Strip_rule_is_exact_for_polynomials()
    {
        StripRule rule = StripRule.Of(9);
        double sum = 0.0, square = 0.0, eighth = 0.0;
        for (int i = 0; i < 9; i++)
        {
            sum += rule.Weight[i];
            square += rule.Weight[i] * rule.Node[i] * rule.Node[i];
            eighth += rule.Weight[i] * Math.Pow(rule.Node[i], 8);
        }

        Assert.Equal(2.0, sum, 1e-14);
        Assert.Equal(2.0 / 3.0, square, 1e-14);
        Assert.Equal(2.0 / 9.0, eighth, 1e-14);
    }
}
