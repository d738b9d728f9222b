using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Tests;

public class EffectiveTests
{
    public static TheoryData<string> Shipped => [.. Directory.GetFiles(Folder.Shipped, "*.toml").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_scenario_reads_without_remarks(string file)
    {
        ScenarioResult result = ScenarioSource.Read(Path.Combine(Folder.Shipped, file));
        Assert.Empty(result.Errors);
        Assert.Empty(result.Notes);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void The_effective_file_reads_back_to_the_same_run(string file)
    {
        ScenarioResult first = ScenarioSource.Read(Path.Combine(Folder.Shipped, file));
        ScenarioResult second = ScenarioSource.FromText(first.Effective().ToToml()).Resolve();
        Assert.Empty(second.Errors);
        Assert.Equal(SpecText.Of(first.Scenario!), SpecText.Of(second.Scenario!));
    }

    [Fact]
    public void Overrides_of_every_sort_survive_the_effective_file()
    {
        ScenarioResult first = Texts.Read(
            Texts.Least, "title=say \"hi\" \\ there", "rod.length=7'6\"", "reel.take_up=30 in/turn", "reel.ratio=7.1:1", "retrieve.stroke=6 deg", "lure.tie.z=-2 mm",
            "air.wind_from=from left", "rod.damping=12 %", "cast.effort=full", "cast.skill=expert", "cast.style=one-handed", "cast.release=20 deg", "reel.magnetic_brake=1 uN m s", "hands.scatter=5 %", "lure.ballast=[{ mass = \"1 g\", x = \"-1 in\" }]", "retrieve.hold_distance=true", "air.roughness=1e-5 m");
        Assert.Empty(first.Errors);
        ScenarioResult second = ScenarioSource.FromText(first.Effective().ToToml()).Resolve();
        Assert.Empty(second.Errors);
        Assert.Equal(SpecText.Of(first.Scenario!), SpecText.Of(second.Scenario!));
    }

    [Fact]
    public void Marks_tell_where_a_value_comes_from()
    {
        EffectiveScenario effective = Texts.Read(Texts.Least).Effective();
        Assert.Equal(ValueMark.Given, Find(effective, RodKeys.Length).Mark);
        Assert.Equal(ValueMark.Guess, Find(effective, RodKeys.BendLoad).Mark);
        Assert.Equal(ValueMark.Guess, Find(effective, RodKeys.Damping).Mark);
        Assert.Equal(ValueMark.Default, Find(effective, RetrieveKeys.Distance).Mark);
        Assert.Equal(ValueMark.Derived, Find(effective, ReelKeys.TakeUp).Mark);
        Assert.Equal("\"115 mm\"", Find(effective, LureKeys.Length).Text);
        Assert.Equal(0.115, Find(effective, LureKeys.Length).Si, 1e-17);
    }

    [Fact]
    public void A_given_force_is_no_guess() =>
        Assert.Equal(ValueMark.Given, Find(Texts.Read(Texts.Least, "rod.bend_load=4.5 N").Effective(), RodKeys.BendLoad).Mark);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_guess_lies_in_its_range_and_both_ends_can_be_set(string file)
    {
        var source = ScenarioSource.Load(Path.Combine(Folder.Shipped, file));
        ScenarioResult plain = source.Resolve();
        IReadOnlyList<GuessedKey> guesses = plain.Effective().Guesses;
        Assert.InRange(guesses.Count, 60, 130);
        foreach (GuessedKey guess in guesses)
        {
            Assert.InRange(guess.Value, guess.Low, guess.High);
            foreach (double end in new[] { guess.Low, guess.High })
            {
                ScenarioResult result = source.Resolve([guess.Override(end)]);
                Assert.Empty(result.Errors);
                // A range may begin at its value (a wet strand weighs at least what a dry one weighs).
                Assert.True(end == guess.Value || SpecText.Of(plain.Scenario!) != SpecText.Of(result.Scenario!), guess.Key.Path);
                double back = guess.Key.Lens?.Get(result.Scenario!) ?? Quantity.Read(guess.Override(end).Split('=')[1], guess.Key.Kind).Si;
                Assert.Equal(end, back, 1e-12 * Math.Abs(end));
            }
        }
    }

    private static EffectiveValue Find(EffectiveScenario effective, KeySpec key) => effective.Values.Single(v => v.Key == key);
}
