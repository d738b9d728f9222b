using LureSim.Model.Lures;

namespace LureSim.Model.Tests.Lures;

public sealed class HullSectionTests
{
    private static readonly HullSection Section = new(0.013, 0.008, -0.002);

    // Sampled on 2000 x 2000 cells; a cell row on the edge is worth 1e-3 of the half-height at most.
    [Theory]
    [InlineData(0.0, 0.001)]
    [InlineData(0.7, -0.003)]
    [InlineData(-2.1, 0.004)]
    public void Cut_agrees_with_counted_cells(double heel, double level)
    {
        const int n = 2000;
        (double ny, double nz) = Math.SinCos(heel);
        double area = 0.0, my = 0.0, mz = 0.0;
        for (int i = 0; i < n; i++)
        {
            double y = 0.013 * ((2.0 * (i + 0.5) / n) - 1.0);
            for (int j = 0; j < n; j++)
            {
                double z = 0.008 * ((2.0 * (j + 0.5) / n) - 1.0);
                if (Math.Pow(y / 0.013, 2) + Math.Pow(z / 0.008, 2) < 1.0 && (ny * y) + (nz * (z - 0.002)) < level)
                {
                    area += 1.0;
                    my += y;
                    mz += z - 0.002;
                }
            }
        }

        SectionCut cut = Section.Cut(ny, nz, level);
        Assert.Equal(Wetting.Partial, cut.Wetting);
        Assert.Equal(area * 4.0 * 0.013 * 0.008 / n / n, cut.AreaM2, 2e-3 * cut.AreaM2);
        Assert.Equal(my / area, cut.CentroidYM, 1e-5);
        Assert.Equal(mz / area, cut.CentroidZM, 1e-5);
    }

    [Fact]
    public void Chord_is_the_slope_of_the_area()
    {
        (double ny, double nz) = Math.SinCos(0.4);
        SectionCut cut = Section.Cut(ny, nz, 0.001);
        double slope = (Section.Cut(ny, nz, 0.001 + 1e-7).AreaM2 - Section.Cut(ny, nz, 0.001 - 1e-7).AreaM2) / 2e-7;
        Assert.Equal(slope, cut.ChordM, 1e-6 * cut.ChordM);
        Assert.Equal(0.001, (ny * cut.ChordMidYM) + (nz * cut.ChordMidZM), 1e-12);
    }

    [Fact]
    public void Above_and_below_are_dry_and_wet()
    {
        Assert.Equal(Wetting.Dry, Section.Cut(0.0, 1.0, -0.0101).Wetting);
        Assert.Equal(Wetting.Wet, Section.Cut(0.0, 1.0, 0.0061).Wetting);
        Assert.Equal(Section.AreaM2, Section.Cut(0.0, 1.0, 0.0061).AreaM2, 1e-18);
        Assert.Equal(0.0, Section.WettedPerimeterM(0.0, 1.0, -0.0101));
    }

    [Fact]
    public void Wetted_and_dry_perimeters_add_up()
    {
        (double ny, double nz) = Math.SinCos(0.9);
        double wet = Section.WettedPerimeterM(ny, nz, 0.002);
        double dry = Section.WettedPerimeterM(-ny, -nz, -0.002);
        Assert.Equal(Section.PerimeterM, wet + dry, 1e-9);
        Assert.Equal(Math.PI * 0.01, new HullSection(0.01, 0.01, 0.0).WettedPerimeterM(0.0, 1.0, 0.0), 1e-12);
    }

    [Fact]
    public void Point_section_has_no_area_and_a_state()
    {
        var point = new HullSection(0.0, 0.0, 0.0);
        Assert.Equal(Wetting.Wet, point.Cut(0.0, 1.0, 0.001).Wetting);
        Assert.Equal(Wetting.Dry, point.Cut(0.0, 1.0, -0.001).Wetting);
        Assert.Equal(0.0, point.Cut(0.0, 1.0, 0.001).AreaM2);
        Assert.Equal(0.0, point.PerimeterM);
    }
}
