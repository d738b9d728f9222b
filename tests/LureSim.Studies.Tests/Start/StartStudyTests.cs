using CsCheck;
using LureSim.Scenarios;
using LureSim.Scenarios.Parts;
using LureSim.Scenarios.Starting;
using LureSim.Studies.Start;

namespace LureSim.Studies.Tests.Start;

/// <summary>Scenarios from a few words: valid, and afloat as their kind is.</summary>
public class StartStudyTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly string[] Kinds = ["small-walker", "walker", "large-walker", "slanted", "upright", "hollow", "frog", "stickbait"];
    private static readonly string?[] Rods = [null, "7 ft medium-heavy fast", "2.1 m", "heavy", "6'6\" medium moderate", "light extra-fast 5 ft 6 in", "8 ft slow", "heavy-fast"];
    private static readonly string?[] Lines = [null, "30 lb braid", "PE 2 braid", "nylon", "0.30 mm nylon", "12 lb fluorocarbon", "80 lb"];
    private static readonly string?[] Leaders = [null, "none", "15 in nylon", "2 ft of 20 lb fluorocarbon", "7 ft", "0.6 mm nylon 30 cm"];
    private static readonly string?[] Heights = [null, "kayak", "dock", "boat deck", "3 ft", "0.4 m", "wading"];
    private static readonly string?[] Hooks = [null, null, null, "no. 6", "1/0"];

    [Theory]
    [InlineData("small-walker", 0, 5)]
    [InlineData("walker", 0, 5)]
    [InlineData("large-walker", 0, 5)]
    [InlineData("slanted", 22, 28)]
    [InlineData("upright", 42, 48)]
    [InlineData("hollow", 22, 28)]
    public void A_kind_floats_as_it_is_called(string kind, double least, double most)
    {
        StartResult made = Made(new() { Words = kind });
        Assert.InRange(made.Trim.Rest.TrimRad / Degree, least, most);
        Assert.Equal(made.PromisedRad, made.Trim.Rest.TrimRad, 0.3 * Degree);
        Assert.Contains($"rest {StartStudy.Angle(made.Trim.Rest.TrimRad)} in still water", made.Toml, StringComparison.Ordinal);
        Assert.Empty(made.Remarks);
    }

    [Fact]
    public void Any_words_give_a_scenario_that_floats_as_promised_or_one_clear_line()
    {
        int made = 0, refused = 0;
        Gen.Select(Of(Kinds), Gen.Double[1.0, 90.0], Of(Rods), Of(Lines), Of(Leaders), Of(Heights), Of(Hooks), Gen.Double[0.6, 1.4]).Sample(
            (kind, grams, rod, line, leader, height, hooks, stretch) =>
            {
                StartRequest request = Request(kind!, grams, rod, line, leader, height, hooks, stretch);
                (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(request);
                Assert.Empty(faults);
                (StartResult? result, faults) = StartStudy.Make(plan!, "x.toml", ".");
                if (result is null)
                {
                    Interlocked.Increment(ref refused);
                    Assert.DoesNotContain('\n', Assert.Single(faults).ToString());
                    return;
                }

                Interlocked.Increment(ref made);
                Assert.Empty(ScenarioSource.FromText(result.Toml).Resolve().Errors);
                Assert.True(result.Trim.IsUpright);
                Assert.InRange(result.Trim.Rest.TrimRad, result.PromisedRad - StartStudy.BandRad, result.PromisedRad + StartStudy.BandRad);
            }, iter: 120);
        Assert.True(made > 3 * refused, $"{made} made, {refused} refused");
    }

    [Theory]
    [InlineData("walker", "2 oz", "3 in", "would sink; of this kind, that mass is about")]
    [InlineData("walker", "0.5 g", null, "hooks and ballast alone weigh as much")]
    public void What_cannot_float_is_said_with_what_would(string kind, string mass, string? length, string said)
    {
        (StartResult? result, IReadOnlyList<ScenarioFault> faults) = Make(new() { Words = kind, Mass = mass, Length = length });
        Assert.Null(result);
        Assert.Contains(said, Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Hooks_that_no_ballast_can_balance_are_refused()
    {
        (StartResult? result, IReadOnlyList<ScenarioFault> faults) = Make(new() { Words = "slanted", Mass = "14 g", Length = "135 mm", Hooks = "2/0" });
        Assert.Null(result);
        Assert.Contains("rests 25 deg tail-down, but with this mass, length and hooks its ballast brings it no nearer than", Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Far_from_its_part_and_low_in_the_water_it_says_so()
    {
        Assert.Contains("times those of lures/large-walker", Assert.Single(Made(new() { Words = "large-walker", Mass = "100 g" }).Remarks), StringComparison.Ordinal);
        Assert.Contains("the lure is heavy", Assert.Single(Made(new() { Words = "large-walker", Mass = "27 g", Length = "115 mm" }).Remarks), StringComparison.Ordinal);
        Assert.Contains("read as decimal feet", Assert.Single(Made(new() { Rod = "6.6 ft" }).Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_part_fits_into_a_set_up() => Assert.All(PartLibrary.All, p => Assert.True(PartFacts.Read(p).IsValid));

    [Fact]
    public void The_same_words_give_the_same_file()
    {
        StartRequest request = new() { Words = "slanted", Mass = "5/8 oz", Hooks = "no. 4" };
        Assert.Equal(Made(request).Toml, Made(request).Toml);
    }

    private static Gen<string?> Of(string?[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static StartRequest Request(string kind, double grams, string? rod, string? line, string? leader, string? height, string? hooks, double stretch) => new()
    {
        Words = kind,
        Mass = FormattableString.Invariant($"{grams:F1} g"),
        Length = stretch > 1.2 ? FormattableString.Invariant($"{4.2 * Math.Cbrt(grams / 17.0):F2} in") : null,
        Rod = rod,
        Line = line,
        Leader = leader,
        Height = height,
        Hooks = hooks,
    };

    private static (StartResult? Result, IReadOnlyList<ScenarioFault> Faults) Make(StartRequest request)
    {
        (StartPlan? plan, IReadOnlyList<ScenarioFault> faults) = StartReader.Read(request);
        Assert.Empty(faults);
        return StartStudy.Make(plan!, "x.toml", ".");
    }

    private static StartResult Made(StartRequest request)
    {
        (StartResult? result, IReadOnlyList<ScenarioFault> faults) = Make(request);
        Assert.Empty(faults);
        return result!;
    }
}
