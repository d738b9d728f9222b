using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using OxyPlot.Annotations;

namespace LureSim.Reports.Tests.Charts;

public sealed class RetrieveChartTests
{
    [Fact]
    public void A_run_has_six_pictures_and_each_renders_in_both_formats()
    {
        IReadOnlyList<Chart> charts = RetrieveCharts.All(MadeUpRetrieve.Result(), Shown.Both);
        Assert.Equal(["path_top", "pull_slack_turn", "side_view", "attitude_side", "attitude_time", "loads"], charts.Select(c => c.Name));
        Assert.All(charts, Pictures.Render);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(60.0)]
    public void Short_and_long_runs_can_be_drawn(double duration) =>
        Assert.All(RetrieveCharts.All(MadeUpRetrieve.Result(duration), Shown.Both), c => ChartRenderer.Svg(c));

    [Fact]
    public void A_lure_that_never_moves_can_be_drawn()
    {
        RetrieveResult result = MadeUpRetrieve.Result(pattern: WalkPattern.Still);
        result = result with
        {
            Series = new([.. result.Series.Channels.Select(c => c.Name == "time_s" ? c : c with { Values = [.. c.Values.Select(_ => c.Name == "lure_x_m" ? 5.0 : 0.0)] })]),
        };
        Assert.All(RetrieveCharts.All(result, Shown.Both), c => ChartRenderer.Svg(c));
    }

    [Fact]
    public void Top_view_has_one_scale_on_both_axes_and_hulls_as_long_as_their_pitch_leaves_them()
    {
        RetrieveResult result = MadeUpRetrieve.With(MadeUpRetrieve.Result(), "pitch_deg", _ => 40.0);
        Chart chart = TopView.Build(result, Shown.Both);
        ChartRenderer.Svg(chart);
        Assert.Equal(chart.Model.Axes[0].Scale, -chart.Model.Axes[1].Scale, 6);
        PolygonAnnotation[] hulls = [.. chart.Model.Annotations.OfType<PolygonAnnotation>()];
        Assert.Equal(4, hulls.Length);
        Assert.All(hulls, hull => Assert.Equal(100.0 * result.Hull.LengthM * Math.Cos(40.0 * Math.PI / 180.0), Span(hull), 4));

        // Outline runs tail, left side, nose, then back: the nose sits in the middle of the list.
        static double Span(PolygonAnnotation hull)
        {
            OxyPlot.DataPoint tail = hull.Points[0], nose = hull.Points[(hull.Points.Count / 2) - 1];
            return Math.Sqrt(Math.Pow(nose.X - tail.X, 2) + Math.Pow(nose.Y - tail.Y, 2));
        }
    }

    [Fact]
    public void Side_view_puts_the_lure_at_its_height()
    {
        RetrieveResult result = MadeUpRetrieve.Result();
        result = result with { Snapshots = [.. result.Snapshots.Select(s => s with { LureZM = -0.07 })] };
        Assert.All(SideView.Build(result, Shown.Both).Model.Annotations.OfType<PointAnnotation>(), dot => Assert.Equal(-0.07, dot.Y));
    }

    [Fact]
    public void Nose_of_a_hull_at_zero_heading_points_at_the_rod()
    {
        OxyPlot.DataPoint nose = LureBody.Place(10, 0, Math.PI, 0.05, 0);
        Assert.Equal(9.95, nose.X, 12);
    }
}
