using LureSim.Reports.Cast;
using LureSim.Reports.Kit.Drawing;
using LureSim.Reports.Kit.Json;
using LureSim.Reports.Kit.Text;
using LureSim.Reports.Retrieve;
using LureSim.Reports.Tests.Support;
using LureSim.Studies.Cast;
using OxyPlot.Series;

namespace LureSim.Reports.Tests.Charts.Cast;

public sealed class MatchChartTests
{
    private static readonly MatchReport Report = new(
        "Made up", new(0.8, 0.1, 0.04, [new("a", 30.0, 0.78, 31.0), new("b", 34.0, 0.82, 33.0)]), 0.7, [new("lure.tumbling (0.2 to 1)", 0.6, double.NaN)]);

    [Fact]
    public void The_picture_has_a_dot_per_cast_at_computed_and_measured()
    {
        Chart chart = MatchChart.Build(Report);
        Pictures.Render(chart);
        Assert.Equal([(31.0, 30.0), (33.0, 34.0)], chart.Model.Series.OfType<ScatterSeries>().Single().Points.Select(p => (p.X, p.Y)));
    }

    // Ranges of the words of an effort: docs/cast.md.
    [Theory]
    [InlineData(0.199, "less than a gentle cast")]
    [InlineData(0.20, "a gentle cast by the guessed scale")]
    [InlineData(0.374, "a gentle cast by the guessed scale")]
    [InlineData(0.375, "an everyday cast by")]
    [InlineData(0.65, "an everyday cast by")]
    [InlineData(0.66, "a hard cast; 1 is all")]
    [InlineData(1.10, "a hard cast; 1 is all")]
    [InlineData(1.11, "more than a practised person has")]
    public void An_effort_has_its_word(double effort, string word) => Assert.Contains(
        word, MatchText.Build(Report with { Fit = Report.Fit with { Effort = effort } }, new RunNotes([], []), null).ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Fact]
    public void The_text_says_what_the_effort_rests_on()
    {
        string text = MatchText.Build(Report, new RunNotes([], ["a guess"]), "out/x");
        Assert.Contains("off by 3.3 ft (1.0 m); alone it needs 0.82", text, StringComparison.Ordinal);
        Assert.Contains("With lure.tumbling (0.2 to 1) at its ends it would be 0.60 and out of reach.", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("--set cast=", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, Closing.Width));
    }
}
