using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class HullShapeTests
{
    [Theory]
    [InlineData(LureShape.Cigar, 0.0)]
    [InlineData(LureShape.Spheroid, 0.0)]
    [InlineData(LureShape.Pencil, -0.2)]
    [InlineData(LureShape.Drop, -0.4)]
    [InlineData(LureShape.Hollow, 0.0)]
    public void Thickest_where_the_formula_says_and_closed_at_both_ends(LureShape shape, double thickest)
    {
        var hull = new NamedHull(shape, 0.1, 0.02, 0.016);
        HullSection s = hull.SectionAt(0.05 * thickest);
        Assert.Equal(0.010, s.HalfBreadthM, 1e-15);
        Assert.Equal(0.008, s.HalfHeightM, 1e-15);
        Assert.True(hull.SectionAt((0.05 * thickest) + 0.002).HalfBreadthM < 0.010);
        Assert.True(hull.SectionAt((0.05 * thickest) - 0.002).HalfBreadthM < 0.010);
        Assert.Equal(0.0, hull.SectionAt(-0.05).AreaM2, 1e-15);
        Assert.Equal(0.0, hull.SectionAt(0.05).AreaM2, 1e-15);
    }

    // Volumes by integrating the formulas in closed form: cigar 1 - 1/3.5, spheroid 2/3, pencil 3/4 of the cylinder;
    // drop 0.3 x 2/3 + 0.7 x 8/15.
    [Theory]
    [InlineData(LureShape.Cigar, 5.0 / 7.0)]
    [InlineData(LureShape.Spheroid, 2.0 / 3.0)]
    [InlineData(LureShape.Pencil, 0.75)]
    [InlineData(LureShape.Drop, (0.3 * 2.0 / 3.0) + (0.7 * 8.0 / 15.0))]
    public void Volume_is_the_closed_form_share_of_the_cylinder(LureShape shape, double share)
    {
        double cylinder = Math.PI * 1e-4 * 0.1;
        Assert.Equal(share, new NamedHull(shape, 0.1, 0.02, 0.02).VolumeM3() / cylinder, 1e-4);
    }

    [Fact]
    public void Belly_of_the_hollow_body_is_flatter_than_its_back()
    {
        HullSection s = new NamedHull(LureShape.Hollow, 0.06, 0.026, 0.02).SectionAt(0.02);
        double back = s.CentreZM + s.HalfHeightM;
        double belly = s.CentreZM - s.HalfHeightM;
        Assert.True(0.01 - back > 2.0 * (0.01 + belly));
    }

    [Fact]
    public void Stations_are_linear_between_and_held_beyond()
    {
        var hull = new StationHull(0.1, [new(-0.05, 0.0, 0.0, 0.001), new(0.0, 0.01, 0.008), new(0.04, 0.006, 0.004)]);
        Assert.Equal(new HullSection(0.005, 0.004, 0.0005), hull.SectionAt(-0.025));
        Assert.Equal(0.008, hull.SectionAt(0.02).HalfBreadthM, 1e-15);
        Assert.Equal(0.006, hull.SectionAt(0.05).HalfBreadthM, 1e-15);
    }

    [Fact]
    public void Shell_inertia_of_a_sphere_is_two_thirds_m_r_squared()
    {
        LureSpec ball = new(LureShape.Spheroid, 0.04, 0.04, 0.04, 0.02, 0.02, 0.0, [], []);
        LureMass m = LureMass.Of(ball, HullShape.Create(ball));
        Assert.Equal(2.0 / 3.0 * 0.02 * 0.02 * 0.02, m.YawInertiaKgM2, 1e-4 * m.YawInertiaKgM2);
    }

    [Fact]
    public void Shell_of_an_open_can_counts_its_ends()
    {
        LureSpec can = new(
            LureShape.Stations, 0.04, 0.02, 0.02, 0.01, 0.02, 0.0, [], [], [new(-0.02, 0.01, 0.01), new(0.02, 0.01, 0.01)]);
        HullForm hull = HullShape.Create(can);
        double side = 2.0 * Math.PI * 0.01 * 0.04;
        double ends = 2.0 * Math.PI * 1e-4;
        Assert.Equal(side + ends, hull.SurfaceM2(), 1e-9);
        double expected = 0.01 / (side + ends) * ((side * ((0.04 * 0.04 / 12.0) + 0.5e-4)) + (ends * (4e-4 + 0.25e-4)));
        Assert.Equal(expected, LureMass.Of(can, hull).YawInertiaKgM2, 1e-4 * expected);
    }
}
