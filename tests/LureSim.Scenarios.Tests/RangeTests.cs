using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests;

/// <summary>Table <c>ranges</c>: how well given values are known.</summary>
public sealed class RangeTests : IDisposable
{
    private const string Measured = """
        bend_load = "4.3 N"
        mass = "115 g"
        [ranges]
        bend_load = "4.1 to 4.6 N"
        "rod.mass" = "110 g to 120 g"
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("ranges").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_part_brings_its_ranges_along()
    {
        GuessedKey power = Guess(WithPart().Resolve(), RodKeys.BendLoad)!;
        Assert.Equal((4.3, 4.1, 4.6), (power.Value, power.Low, power.High));
        Assert.False(power.Follows);
        Assert.Equal(0.110, Guess(WithPart().Resolve(), RodKeys.Mass)!.Low, 1e-15);
    }

    [Fact]
    public void A_range_falls_with_a_later_value()
    {
        string text = Texts.With("power = \"medium-heavy\"", "bend_load = \"4.5 N\"") + "\n[ranges]\n\"rod.bend_load\" = \"4.4 N to 4.9 N\"";
        Assert.Equal(4.4, Guess(Texts.Read(text), RodKeys.BendLoad)!.Low);
        Assert.Null(Guess(Texts.Read(text, "rod.bend_load=6 N"), RodKeys.BendLoad));
        Assert.Equal(5.5, Guess(Texts.Read(text, "rod.power=heavy"), RodKeys.BendLoad)!.Low);
        Assert.Null(Guess(WithPart("mass = \"100 g\"").Resolve(), RodKeys.Mass));
        Assert.NotNull(Guess(WithPart("mass = \"100 g\"").Resolve(), RodKeys.BendLoad));
    }

    [Fact]
    public void The_effective_file_reads_back_with_the_same_ranges()
    {
        ScenarioResult first = WithPart().Resolve();
        ScenarioResult second = ScenarioSource.FromText(first.Effective().ToToml()).Resolve();
        Assert.Empty(second.Errors);
        foreach (KeySpec key in (KeySpec[])[RodKeys.BendLoad, RodKeys.Mass])
        {
            (GuessedKey a, GuessedKey b) = (Guess(first, key)!, Guess(second, key)!);
            Assert.Equal((a.Value, a.Low, a.High), (b.Value, b.Low, b.High));
        }
    }

    [Theory]
    [InlineData("\"rod.mass\" = \"110 g to 120 g\"", "s.toml(14,14): rod.mass: a range without a value; give the value too")]
    [InlineData("\"rod.grip\" = \"10 in to 11 in\"", "s.toml(14,14): rod.grip: the range 10 to 11 in leaves out its own value, 12 in")]
    [InlineData("\"rod.bend_load\" = \"6 N to 4 N\"", "s.toml(14,19): ranges.rod.bend_load: \"6 N to 4 N\" is no range; two values are due, the lower first, for example \"4.1 N to 4.6 N\"")]
    [InlineData("\"rod.bend_load\" = 3", "s.toml(14,19): ranges.rod.bend_load: a bare number; two values are due, the lower first, for example \"4.1 N to 4.6 N\"")]
    [InlineData("\"rod.bnd_load\" = \"4 N to 5 N\"", "s.toml(14,1): ranges.rod.bnd_load: a range of what? A key in quotes is due, for example \"rod.mass\"; did you mean rod.bend_load?")]
    [InlineData("\"rod.action\" = \"slow to fast\"", "s.toml(14,16): ranges.rod.action: it is no quantity, so it has no range")]
    public void Bad_ranges_are_told_in_one_line(string line, string fault) =>
        Assert.Equal(fault, Assert.Single(Texts.Errors($"{Texts.With("[line]", "grip = \"12 in\"\n[line]").TrimEnd()}\n[ranges]\n{line}")));

    [Fact]
    public void A_range_of_a_value_that_cannot_be_is_refused_in_the_words_of_the_value() =>
        Assert.Contains("allowed", Assert.Single(Texts.Errors($"{Texts.Least}\n[ranges]\n\"rod.bend_load\" = \"4 N to 400 N\"")), StringComparison.Ordinal);

    private static GuessedKey? Guess(ScenarioResult result, KeySpec key)
    {
        Assert.Empty(result.Errors);
        return result.Effective().Guesses.SingleOrDefault(g => g.Key == key);
    }

    // The rod of the least scenario as a part, and what the scenario says beside it.
    private ScenarioSource WithPart(string more = "")
    {
        File.WriteAllText(Path.Combine(_folder, "rod.toml"), Measured);
        string text = Texts.With("power = \"medium-heavy\"", $"base = \"rod.toml\"\n{more}");
        return ScenarioSource.FromText(text, "s.toml", _folder);
    }
}
