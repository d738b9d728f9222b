using LureSim.Reports.Doubt;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Doubt;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts;

public sealed class DoubtChartTests
{
    private static readonly HeadlineFigure Glide = new("glide_width_m", "glide per twitch", "cm", 100.0);
    private static readonly string[] Labels = ["lure.form_drag (0.1 to 0.35)", "rod.damping (0.05 to 0.2)", "line.modulus (30 to 70 GPa)"];

    [Fact]
    public void A_chart_ranks_the_guesses_and_pales_what_may_be_chance()
    {
        Chart chart = DoubtChart.Build(Report(), Glide, Labels);
        Pictures.Render(chart);
        Assert.Equal("doubt_glide_width", chart.Name);
        RectangleBarSeries[] bars = [.. chart.Model.Series.OfType<RectangleBarSeries>()];
        Assert.Equal(6, bars.Length);

        // Top row: rod.damping, told; its high third lowers the glide by 2 cm.
        Assert.Equal((-2.0, 2.0), (bars[1].Items[0].X0, bars[0].Items[0].Y0));
        Assert.Equal(255, bars[0].FillColor.A);
        Assert.True(bars[4].FillColor.A < 100);
    }

    [Fact]
    public void A_study_without_effects_still_makes_a_picture()
    {
        DoubtReport report = Report();
        Pictures.Render(DoubtChart.Build(report with { Effects = [[new(0, 0, 0, 0)], [new(0, 0, 0, 0)], [new(0, 0, 0, 0)]] }, Glide, Labels) with { Name = "doubt_none" });
    }

    [Fact]
    public void The_text_names_bands_patterns_and_what_matters()
    {
        string text = DoubtText.Build(new DoubtStudy(Report(), Labels, [Glide]));
        Assert.Contains("  glide_width_m        0.01      0.02     0.034\n", text, StringComparison.Ordinal);
        Assert.Contains("Of the runs: alternating 75 %, still 25 %.", text, StringComparison.Ordinal);
        Assert.Contains("rod.damping (-0.80), lure.form_drag (0.40); chance takes one guess in twenty past 0.20", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("line.modulus (", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width));
    }

    private static DoubtReport Report() => new(
        99,
        2,
        [KeyValuePair.Create("alternating", 0.75), KeyValuePair.Create("still", 0.25)],
        [new("glide_width_m", 0.01, 0.02, 0.034, 97)],
        ["lure.form_drag", "rod.damping", "line.modulus"],
        [[new(0.4, 0.4, -0.01, 0.008)], [new(-0.8, 0.8, 0.03, -0.02)], [new(0.05, 0.05, 0.001, 0.002)]]);
}
