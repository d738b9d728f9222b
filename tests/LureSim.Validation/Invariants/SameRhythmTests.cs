using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Validation.Invariants;

/// <summary>
/// One file and one rhythm, asked in both ways: a shown retrieve and a point of <c>cadence</c>. Where one says irregular and the other alternating,
/// at least one says that it depends. The rhythms are those of a table of 140 where the words differed, near the edges of windows, and some within.
/// </summary>
public sealed class SameRhythmTests
{
    public static TheoryData<string, double> Rhythms { get; } = new()
    {
        { "hollow-weedless.toml", 1.25 }, { "hollow-weedless.toml", 1.3 }, { "hollow-weedless.toml", 1.5 },
        { "large-walker.toml", 0.8 }, { "large-walker.toml", 2.0 }, { "large-walker.toml", 2.9 },
        { "small-walker-fluorocarbon.toml", 1.3 }, { "small-walker-fluorocarbon.toml", 2.0 },
        { "small-walker-nylon.toml", 1.1 }, { "small-walker-nylon.toml", 4.0 },
        { "small-walker.toml", 0.8 }, { "small-walker.toml", 0.9 }, { "small-walker.toml", 2.0 }, { "small-walker.toml", 4.0 },
    };

    [Theory]
    [MemberData(nameof(Rhythms))]
    public void Retrieve_and_cadence_do_not_contradict_each_other_without_saying_so(string file, double perS)
    {
        Scenario scenario = Shipped.Read(Shipped.Files.Single(f => Path.GetFileName(f) == file), FormattableString.Invariant($"retrieve.cadence={perS} /s"));
        RetrieveTask task = scenario.Retrieve!;
        WalkPattern shown = RetrieveRun.Run(scenario.Setup, task).Demand().Summary.Pattern;
        var point = new RhythmPoint(
            perS, [.. WalkStart.Spread(6).Select(s => StationaryOutcome.Of(scenario.Setup, StationaryRun.Make(task, perS, s, new()), default))], 0.8);
        string? said = SettledWalk.Difference(task, shown, SettledWalk.Run(scenario.Setup, task, default));
        bool walksInOneOnly = (shown == WalkPattern.Alternating) != (point.Pattern == WalkPattern.Alternating);
        Assert.True(!walksInOneOnly || said is not null || point.DependsOnStart, $"{file} at {perS} /s: {shown} and {point.Pattern}");
        Assert.True(said is null || said.Contains(RetrieveFigures.Name(shown), StringComparison.Ordinal));
    }
}
