using LureSim.Reports.Bend;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Text;

public sealed class BendTextTests
{
    [Fact]
    public void It_says_what_the_test_tells_and_what_it_does_not()
    {
        string text = BendText.Build(MadeUpBend.Report(odd: false), new(UnitChoice.Metric), null).ReplaceLineEndings(" ");
        Assert.Contains("326 g at the tip bring it down by a third of the 1.8 m that are free; it then points 46 deg", text, StringComparison.Ordinal);
        Assert.Contains("medium, perhaps medium-heavy in power and fast in action", text, StringComparison.Ordinal);
        Assert.Contains("Still a guess: share of the mass beyond the hand. What would tell most: the point on which the rod balances", text, StringComparison.Ordinal);
        Assert.Contains("no further reading that this test knows would tell it: how fast stiffness falls with thickness.", text, StringComparison.Ordinal);
        Assert.Contains("Not measured: tip angle, balance point.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("does not fit", text, StringComparison.Ordinal);
        Assert.DoesNotContain("To use it", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_does_not_fit_is_told_with_its_place()
    {
        string text = BendText.Build(MadeUpBend.Report(odd: true), new(UnitChoice.Metric), "rod.toml").ReplaceLineEndings(" ");
        Assert.Contains("b.csv(6): the drop of 55.0 cm does not fit the others, which make it 44.7 cm", text, StringComparison.Ordinal);
        Assert.Contains("2.4 times what such readings should scatter", text, StringComparison.Ordinal);
        Assert.Contains("To use it: --set rod=rod.toml", text, StringComparison.Ordinal);
    }
}
