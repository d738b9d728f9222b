using LureSim.Model.Cast;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Runs;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Doubt;

/// <summary>The headline of a cast in the band of its own guesses, real casts.</summary>
public sealed class HeadlineBandTests
{
    private const int Draws = 24;

    public static TheoryData<string> Files => [.. Shipped.Files];

    // Every guess is drawn about its value, so the cast with all values as they stand lies in the middle of the casts drawn: its rank among 24 is no
    // farther out than 10 and 90 %, and the median within 5 %. Sampling alone moves the median of 24 by a fifth of the band, 2 %.
    [Theory]
    [MemberData(nameof(Files))]
    public void A_headline_lies_in_the_middle_of_its_band(string file)
    {
        ScenarioSource source = ScenarioSource.Load(Shipped.File(file), Activities.Cast);
        ScenarioResult scenario = source.Resolve();
        GuessedKey[] guesses = GuessDesign.Of(scenario, new CastSource(), hands: false);
        var design = new GuessDesign(Draws, scenario.Setup!.Seed);
        double headline = Mean(scenario);
        double[] drawn = [.. ParallelRuns.Execute(
            [.. Enumerable.Range(0, Draws)], i => Mean(GuessDraw.Make(source, [], guesses, g => design.Share(g, i)).Scenario), 0, null, default).Order()];
        Assert.All(drawn, d => Assert.True(double.IsFinite(d)));
        double below = drawn.Count(d => d < headline) / (double)Draws, median = 0.5 * (drawn[(Draws / 2) - 1] + drawn[Draws / 2]);
        Assert.InRange(below, 0.1, 0.9);
        Assert.InRange(median / headline, 0.95, 1.05);
    }

    private static double Mean(ScenarioResult scenario) => CastRunner.Run(scenario.Setup!, scenario.Cast!).Demand().DistanceMeanM;
}
