using LureSim.Model.Lines;

namespace LureSim.Model.Tests.Lines;

public sealed class CylinderDragTests
{
    [Fact]
    public void Table_keeps_to_the_formula_within_one_part_in_ten_thousand()
    {
        double worst = 0.0;
        // A factor prime to the knots, so that the samples fall everywhere between them.
        for (double re = CylinderDragTable.MinRe; re < CylinderDragTable.MaxRe; re *= 1.000937)
        {
            worst = Math.Max(worst, Math.Abs(CylinderDragTable.Cd(re) / CylinderDrag.Cd(re) - 1.0));
        }

        Assert.InRange(worst, 1e-6, 1e-4);
    }

    [Fact]
    public void Table_is_exact_at_its_knots()
    {
        Assert.Equal(CylinderDrag.Cd(CylinderDragTable.MinRe), CylinderDragTable.Cd(CylinderDragTable.MinRe));
        Assert.Equal(CylinderDrag.Cd(1.0), CylinderDragTable.Cd(1.0));
        Assert.Equal(CylinderDrag.Cd(80.0), CylinderDragTable.Cd(80.0));
    }

    [Fact]
    public void Table_is_held_outside_its_range()
    {
        Assert.Equal(CylinderDrag.Cd(CylinderDragTable.MinRe), CylinderDragTable.Cd(0.0));
        Assert.Equal(CylinderDrag.Cd(CylinderDragTable.MaxRe), CylinderDragTable.Cd(1e9));
        Assert.Equal(CylinderDrag.Cd(CylinderDragTable.MaxRe), CylinderDragTable.Cd(Math.BitDecrement(CylinderDragTable.MaxRe)), 9);
    }

    [Fact]
    public void Drag_over_speed_stays_above_zero_at_rest_and_never_falls()
    {
        double last = CylinderDragTable.ReCd(0.0);
        Assert.True(last > 1.0);
        for (double re = 1e-5; re < 1e6; re *= 1.01)
        {
            double next = CylinderDragTable.ReCd(re);
            Assert.True(next >= last, $"Re {re}");
            last = next;
        }
    }

    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_Reynolds_number_that_is_none_is_refused(double re)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CylinderDragTable.Cd(re));
        Assert.Throws<ArgumentOutOfRangeException>(() => CylinderDrag.Cd(re));
    }

    [Fact]
    public void Creeping_drag_is_finite_and_falls_with_Re_as_slowly_as_a_logarithm()
    {
        Assert.Equal(CylinderDrag.Cd(1.0000001e-4), CylinderDrag.Cd(0.9999999e-4), 1e-2);
        double lamb = (0.5 - 0.5772156649 - Math.Log(1e-8 / 8.0)) / (0.5 - 0.5772156649 - Math.Log(1e-6 / 8.0));
        Assert.Equal(lamb, 1e-6 * CylinderDrag.Cd(1e-6) / (1e-8 * CylinderDrag.Cd(1e-8)), 9);
    }
}
