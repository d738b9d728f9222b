using LureSim.Model.Assembly;
using LureSim.Model.Cover;
using LureSim.Model.Retrieve;
using LureSim.Model.Tests.Crawl;

namespace LureSim.Model.Tests.Retrieve;

/// <summary>A lure that walks in an opening while plants hold the line between opening and rod.</summary>
public sealed class PlantsUnderLineTests
{
    private static readonly RetrieveTask Task = new(10.0, 1.8, 0.12, 8.0, WarmUpS: 3.0) { Solver = new(Nodes: 30) };

    private static RetrieveResult Run(CoverSpec cover, double strokeM = 0.12) => RetrieveRun.Run(CrawlCases.Setup(cover), Task with { StrokeM = strokeM }).Demand();

    private static CoverSpec Mat(double hold) => CrawlCases.Mat with { LineOverM = 10.0, OpeningM = 1.0, DragNM = hold };

    [Fact]
    public void Without_line_over_plants_nothing_of_the_cover_changes_a_bit() =>
        Assert.Equal(Run(new CoverSpec()).Series["lure_x_m"], Run(CrawlCases.Mat with { LineOverM = 0.0 }).Series["lure_x_m"]);

    [Fact]
    public void The_harder_plants_hold_the_less_of_a_twitch_comes_to_the_lure()
    {
        double[] reach = [.. new[] { 0.0, 0.1, 0.5 }.Select(f => Run(Mat(f)).Summary.PullImpulseNs)];
        Assert.True(reach[0] > reach[1] && reach[1] > reach[2], string.Join(' ', reach));
        Assert.True(reach[2] < 0.3 * reach[0]);
    }

    [Fact]
    public void A_longer_stroke_gets_through() => Assert.True(Run(Mat(0.5), 0.25).Summary.PullImpulseNs > 5.0 * Run(Mat(0.5)).Summary.PullImpulseNs);

    [Fact]
    public void The_energy_account_closes_with_plants() => Assert.InRange(Run(Mat(0.5), 0.2).Counters.EnergyOpenShare, 0.0, 0.005);
}
