using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

/// <summary>Named shapes with their own ends and places.</summary>
public sealed class LureFormTests
{
    [Theory]
    [InlineData(LureShape.Cigar)]
    [InlineData(LureShape.Pencil)]
    [InlineData(LureShape.Drop)]
    [InlineData(LureShape.Spheroid)]
    [InlineData(LureShape.Hollow)]
    public void What_a_shape_has_of_its_own_changes_nothing_when_it_is_said(LureShape shape)
    {
        var own = new NamedHull(shape, 0.1, 0.02, 0.018);
        LureFormSpec usual = HullShape.Usual(shape);
        var said = new NamedHull(shape, 0.1, 0.02, 0.018, shape == LureShape.Hollow ? usual with { NoseBluntness = null, TailBluntness = null } : usual);
        for (double x = -0.05; x <= 0.05; x += 0.001)
        {
            HullSection a = own.SectionAt(x), b = said.SectionAt(x);
            Assert.Equal(a.HalfBreadthM, b.HalfBreadthM, 1e-12);
            Assert.Equal(a.HalfHeightM, b.HalfHeightM, 1e-12);
            Assert.Equal(a.CentreZM, b.CentreZM, 1e-12);
        }
    }

    // Volume of sqrt(1 - |s|^p) of revolution: pi R2 L p/(p + 1), exact.
    [Theory]
    [InlineData(1.2)]
    [InlineData(2.0)]
    [InlineData(5.0)]
    [InlineData(10.0)]
    public void The_volume_of_a_blunted_cigar_is_p_over_p_plus_one_of_its_cylinder(double p)
    {
        var hull = new NamedHull(LureShape.Cigar, 0.1, 0.02, 0.02, new(p, p));
        Assert.Equal(p / (p + 1.0), hull.VolumeM3() / (Math.PI * 1e-4 * 0.1), 1e-4);
    }

    // Each end has p/(p+1) of its own length, wherever the thickest place is.
    [Fact]
    public void Ends_of_their_own_add_up_by_their_lengths()
    {
        var hull = new NamedHull(LureShape.Cigar, 0.1, 0.02, 0.02, new(4.0, 1.5, 0.3));
        Assert.Equal(((0.3 * 4.0 / 5.0) + (0.7 * 1.5 / 2.5)), hull.VolumeM3(2001) / (Math.PI * 1e-4 * 0.1), 1e-5);
        Assert.Equal(0.01, hull.SectionAt(0.02).HalfBreadthM, 1e-12);
    }

    [Fact]
    public void A_belly_said_to_be_straight_is_straight()
    {
        var hull = new NamedHull(LureShape.Cigar, 0.1, 0.02, 0.016, new(BellyFlatness: 1.0));
        for (double x = -0.05; x <= 0.05; x += 0.005)
        {
            HullSection s = hull.SectionAt(x);
            Assert.Equal(-0.008, s.CentreZM - s.HalfHeightM, 1e-12);
        }
    }

    [Fact]
    public void Out_of_range_is_refused_by_name()
    {
        LureSpec cigar = TestLures.Cigar();
        foreach ((string name, LureFormSpec form) in ((string, LureFormSpec)[])[
            ("NoseBluntness", new(1.0)), ("TailBluntness", new(null, double.NaN)), ("ThickestPlace", new(ThickestPlace: 0.1)), ("BellyFlatness", new(BellyFlatness: 1.1))])
        {
            Assert.Contains(name, Assert.ThrowsAny<ArgumentException>(() => HullShape.Create(cigar with { Form = form })).Message, StringComparison.Ordinal);
        }
    }
}
