using LureSim.Reports.Cadence;
using LureSim.Reports.Kit.Charts;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cadence;

namespace LureSim.Reports.Tests.Charts.Cadence;

public sealed class CadenceChartTests
{
    [Fact]
    public void One_set_up_renders() => Pictures.Render(CadenceChart.Build(MadeUpCadence.TwoWindows()));

    [Fact]
    public void Failed_rhythms_leave_gaps_and_render() => Pictures.Render(CadenceChart.Build(MadeUpCadence.HalfFailed()));

    [Theory]
    [InlineData(true, false)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void Many_set_ups_render_and_the_failed_one_leaves_its_row_empty(bool numbers, bool twoKeys)
    {
        AcrossResult across = MadeUpCadence.Across(numbers, twoKeys);
        string suffix = $"_{numbers}_{twoKeys}";
        Chart windows = AcrossWindows.Build(across), glide = AcrossGlide.Build(across);
        Pictures.Render(windows with { Name = windows.Name + suffix });
        Pictures.Render(glide with { Name = glide.Name + suffix });
        string[] words = [.. windows.Model.Annotations.OfType<OxyPlot.Annotations.TextAnnotation>().Select(a => a.Text ?? string.Empty)];
        Assert.Equal(twoKeys ? 6 : 3, words.Count(w => w.StartsWith("glides ", StringComparison.Ordinal)));
        Assert.Equal(twoKeys ? 2 : 1, words.Count(w => w == "no run finished"));
        Chart? trend = AcrossTrend.Build(across);
        Assert.Equal(numbers, trend is not null);
        if (trend is not null)
        {
            Pictures.Render(trend with { Name = trend.Name + suffix });
        }
    }

    // The made-up glide is 0.08/f m, 8/f cm; the starts spread it by less than 0.4 cm.
    [Fact]
    public void The_trend_shows_the_glide_at_the_best_rhythm_in_centimetres()
    {
        AcrossResult across = MadeUpCadence.Across(numbers: true, twoKeys: false);
        Chart trend = AcrossTrend.Build(across)!;

        // The band behind the line is a kind of line too.
        OxyPlot.DataPoint first = trend.Model.Series.OfType<OxyPlot.Series.LineSeries>()
            .First(s => s is not OxyPlot.Series.AreaSeries && s.YAxisKey == Panels.Key(1) && s.Points.Count > 0).Points[0];
        Assert.Equal(0.2, first.X, 1e-12);
        Assert.Equal(8.0 / across.Cases[0].Result!.Best!.PerS, first.Y, 0.4);
    }

    [Fact]
    public void A_map_renders() => Pictures.Render(CadenceMap.Build(MadeUpCadence.Map(), "what it says"));

    [Fact]
    public void Every_pattern_has_a_colour_of_its_own()
    {
        var classes = PatternClasses.Of(Enum.GetValues<Model.Retrieve.WalkPattern>().Cast<Model.Retrieve.WalkPattern?>().Append(null));
        Assert.Equal(13, classes.Length);
        Assert.Equal(13, classes.Select(c => c.Color).Distinct().Count());
        Assert.Equal(13, classes.Select(c => c.Label).Distinct().Count());
    }
}
