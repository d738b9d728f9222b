using LureSim.Model.Lures;
using LureSim.Reports.Design;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Design;

public sealed class LureChangeTests
{
    private static readonly LureSpec Own = MadeUpDesign.Cigar;

    private static string Words(LureSpec after) => LureChange.Words(Own, after, new(UnitChoice.Metric));

    [Fact]
    public void What_was_moved_is_told_and_nothing_else()
    {
        Assert.Equal("nothing moved", Words(Own));
        Assert.Equal("weight 17.0 mm behind the middle instead of 12.0 mm behind the middle", Words(Own with { Ballast = [new BallastSpec(0.0025, -0.017, -0.006), Own.Ballast[1]] }));
        Assert.Equal("line tie 2.0 mm under the axis instead of on the axis", Words(Own with { TieZM = -0.002 }));
        Assert.Equal("hooks 1.50 g instead of 3.00 g", Words(Own with { Hooks = [Own.Hooks[0]] }));
    }

    [Fact]
    public void Rounding_is_no_change() => Assert.Equal("nothing moved", Words(Own with { TieZM = 1e-9, MassKg = Own.MassKg + 1e-9 }));
}
