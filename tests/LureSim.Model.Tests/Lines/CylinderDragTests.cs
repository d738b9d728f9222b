using LureSim.Model.Lines;
using LureSim.Model.Lines.Chain;

namespace LureSim.Model.Tests.Lines;

public sealed class CylinderDragTests
{
    private const double LeastRe = 1.0 / 1024.0, MostRe = 2097152.0;

    // The table that the line's step uses.
    private static readonly DragCurve Table = DragCurve.FromLaw(CylinderDrag.Cd);

    [Fact]
    public void Table_keeps_to_the_formula_within_two_parts_in_ten_thousand()
    {
        double worst = 0.0;
        // A factor prime to the knots, so that the samples fall everywhere between them.
        for (double re = LeastRe; re < MostRe; re *= 1.000937)
        {
            worst = Math.Max(worst, Math.Abs(Table.At(re) / CylinderDrag.Cd(re) - 1.0));
        }

        Assert.InRange(worst, 1e-6, 2e-4);
    }

    [Fact]
    public void Table_is_exact_at_its_knots()
    {
        Assert.Equal(CylinderDrag.Cd(LeastRe), Table.At(LeastRe));
        Assert.Equal(CylinderDrag.Cd(1.0), Table.At(1.0));
        Assert.Equal(CylinderDrag.Cd(80.0), Table.At(80.0));
    }

    [Fact]
    public void Table_is_held_outside_its_range()
    {
        Assert.Equal(CylinderDrag.Cd(LeastRe), Table.At(0.0));
        Assert.Equal(CylinderDrag.Cd(MostRe), Table.At(1e9));
        Assert.Equal(CylinderDrag.Cd(MostRe), Table.At(Math.BitDecrement(MostRe)), 9);
    }

    [Fact]
    public void Drag_over_speed_never_falls()
    {
        double last = LeastRe * Table.At(LeastRe);
        Assert.True(last > 1.0);
        for (double re = LeastRe; re < 1e6; re *= 1.01)
        {
            double next = re * Table.At(re);
            Assert.True(next >= last, $"Re {re}");
            last = next;
        }
    }

    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void A_Reynolds_number_that_is_none_is_refused(double re)
    {
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
