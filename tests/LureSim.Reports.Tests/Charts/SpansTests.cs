using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Retrieve;

namespace LureSim.Reports.Tests.Charts;

public sealed class SpansTests
{
    [Fact]
    public void Spans_open_and_close_where_the_test_changes()
    {
        bool[] on = [true, true, false, true, false, false, true];
        Assert.Equal([(0, 2), (3, 4), (6, 6)], Spans.Where(0, on.Length, i => on[i]));
        Assert.Empty(Spans.Where(4, 6, i => on[i]));
    }

    [Fact]
    public void Turning_is_shared_out_between_slack_and_pull()
    {
        double[] heading = [0, 10, 40, 30], tension = [1, 1, 0, 0];
        // 10 under pull, 30 across the change (counted as pull), 10 in slack.
        Assert.Equal(0.2, Spans.TurnInSlack(heading, tension, 0, 4), 12);
        Assert.Equal(0, Spans.TurnInSlack([5, 5, 5, 5], tension, 0, 4));
    }

    [Fact]
    public void Thinning_keeps_the_peak_and_the_order()
    {
        double[] x = [.. Enumerable.Range(0, 10001).Select(i => i * 0.1)], y = new double[x.Length];
        y[4711] = 7;
        (double[] thinX, double[] thinY) = Thinned.MinMax(x, y, 200);
        Assert.Equal(200, thinX.Length);
        Assert.Equal(7, thinY.Max());
        Assert.Equal(x[4711], thinX[Array.IndexOf(thinY, 7)]);
        Assert.Equal(thinX.Order(), thinX);
    }
}
