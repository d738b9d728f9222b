using LureSim.Model.Lines;
using LureSim.Model.Reels;
using LureSim.Model.Tests.Cast;

namespace LureSim.Model.Tests.Reels;

public sealed class SpoolSpecTests
{
    private static readonly SpoolSpec Spool = new(WidthM: 0.022, Packing: 0.75);

    // A spool of 34 mm, 22 mm wide, filled to its axle with line of 1 mm at the loosest packing of 0.6: R^2/(d^2/(4 x 0.6 x W)) = 15.2592 m. Beside a
    // third of the radius nine tenths of that fit, 13.7333 m; of them 0.8 are wound, 0.6 to all of it.
    [Fact]
    public void A_thick_line_fills_the_spool_by_eight_tenths()
    {
        Ranged line = Spool.UsualLine(CastCases.Braid with { DiameterM = 1e-3 }, 0.017);
        Assert.Equal(0.8 * 13.73328, line.Value, 1e-5);
        Assert.Equal(0.6 * 13.73328, line.Low, 1e-5);
        Assert.Equal(13.73328, line.High, 1e-5);
    }

    [Fact]
    public void Of_a_thin_line_there_are_seventy_five_metres() =>
        Assert.Equal(new Ranged(75.0, 50.0, 100.0), Spool.UsualLine(CastCases.Braid, 0.017));

    // 95 % of what fills it down to its axle: 0.95 R^2 4 p W/d^2 with p = 0.75.
    [Fact]
    public void The_most_line_fills_the_spool_to_its_axle() => Assert.Equal(
        0.95 * 0.017 * 0.017 * 4.0 * 0.75 * 0.022 / 1e-6, Spool.MostLineM(CastCases.Braid with { DiameterM = 1e-3 }, 0.017), 1e-9);
}
