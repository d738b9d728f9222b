using LureSim.Reports.Charts.Cadence;
using LureSim.Reports.Tests.Support;

namespace LureSim.Reports.Tests.Charts.Cadence;

public sealed class CadenceChartTests
{
    [Fact]
    public void One_set_up_renders() => Pictures.Render(CadenceChart.Build(MadeUpCadence.TwoWindows()));

    [Fact]
    public void Failed_rhythms_leave_gaps_and_render() => Pictures.Render(CadenceChart.Build(MadeUpCadence.HalfFailed()));

    [Fact]
    public void Every_pattern_has_a_colour_of_its_own()
    {
        var classes = PatternClasses.Of(Enum.GetValues<Model.Retrieve.WalkPattern>().Cast<Model.Retrieve.WalkPattern?>().Append(null));
        Assert.Equal(8, classes.Length);
        Assert.Equal(8, classes.Select(c => c.Color).Distinct().Count());
        Assert.Equal(8, classes.Select(c => c.Label).Distinct().Count());
    }
}
