using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Figures;

/// <summary>A dressed treble at the tail: drag at its place, from a word of the scenario to the walk.</summary>
public sealed class DressingTests
{
    private static RetrieveSummary Walk(string word)
    {
        ScenarioResult read = ScenarioSource.Load(Shipped.File("small-walker.toml")).Resolve([$"lure.hooks[2].dressing={word}", "retrieve.cadence=1.2 /s", "retrieve.duration=14 s"]);
        return RetrieveRun.Run(read.Setup!, read.Retrieve!).Demand().Summary;
    }

    // Found, not aimed at: 18, 16 and 2.7 cm of path, 177, 95 and 3 deg of swing (docs/crawl.md).
    [Fact]
    public void Feathers_at_the_tail_narrow_the_walk_and_plenty_of_them_end_it()
    {
        RetrieveSummary none = Walk("none"), thin = Walk("thin"), full = Walk("full");
        Assert.True(none.WidthM > thin.WidthM && thin.WidthM > 2.0 * full.WidthM, $"{none.WidthM} {thin.WidthM} {full.WidthM}");
        Assert.True(none.HeadingSwingDeg > 1.3 * thin.HeadingSwingDeg);
        Assert.Equal((WalkPattern.Alternating, WalkPattern.Tracking), (none.Pattern, full.Pattern));
    }
}
