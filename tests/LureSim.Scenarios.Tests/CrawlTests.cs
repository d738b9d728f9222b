using LureSim.Model.Cover;
using LureSim.Model.Reels;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests;

/// <summary>Table <c>[crawl]</c>, and the plants that it crawls over.</summary>
public sealed class CrawlTests
{
    private static ScenarioResult Read(params string[] overrides) => ScenarioSource.FromText(Texts.Least, asked: Activities.Crawl).Resolve(overrides);

    [Fact]
    public void Keys_reach_the_crawl_and_the_hand_is_that_of_the_retrieve()
    {
        ScenarioResult read = Read(
            "crawl.distance=10 m", "crawl.to_opening=2 m", "crawl.cadence=2.5 /s", "crawl.stroke=6 in", "crawl.slack=8 cm", "crawl.duration=20 s", "retrieve.gather_lag=0.9 s", "solver.nodes=20",
            "cover.kind=mat", "cover.opening=1.5 m", "cover.stiffness=90 N/m", "cover.damping=0.3");
        Assert.Equal((10.0, 2.0, 2.5, 20.0, 20), (read.Crawl!.DistanceM, read.Crawl.ToOpeningM, read.Crawl.CadencePerS, read.Crawl.DurationS, read.Crawl.Solver.Nodes));
        Assert.Equal(0.1524, read.Crawl.StrokeM, 1e-12);
        Assert.Equal(new TakeUpSpec(SlackM: 0.08, LagS: 0.9), read.Crawl.TakeUp);
        CoverSpec cover = read.Setup!.Cover;
        Assert.Equal((CoverKind.Mat, 1.5, 90.0, 0.3), (cover.Kind, cover.OpeningM, cover.StiffnessNM, cover.DampingRatio));
    }

    [Theory]
    [InlineData("crawl.to_opening: 12 m over plants end under the rod tip; with crawl.distance, 12 m, at most 10.98 m is due", "crawl.to_opening=12 m")]
    [InlineData("crawl.to_opening: 3 m over plants end under the rod tip; with crawl.distance, 2 m, at most 0.91 m is due", "crawl.distance=2 m")]
    [InlineData("crawl.slack: more slack than distance; less than 200 cm is due", "crawl.distance=2 m", "crawl.to_opening=0.5 m", "crawl.slack=2 m")]
    public void What_does_not_fit_is_said_in_a_line(string said, params string[] overrides)
    {
        ScenarioResult read = Read(overrides);
        Assert.Null(read.Scenario);
        Assert.Contains(said, read.Errors.Single().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_of_the_crawl_stops_no_cast()
    {
        Assert.True(ScenarioSource.FromText(Texts.Least, asked: Activities.Cast).Resolve(["crawl.to_opening=12 m"]).IsValid);
        Assert.True(Read("cast.overhang=9 m").IsValid);
    }

    [Fact]
    public void Its_key_is_suggested_where_no_other_table_has_it() => Assert.Contains(
        "crawl.to_opening", ScenarioSource.FromText(Texts.Least).Resolve(["retrieve.to_opening=2 m"]).Errors.Single().ToString(), StringComparison.Ordinal);
}
