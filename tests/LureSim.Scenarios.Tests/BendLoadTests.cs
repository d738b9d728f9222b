using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests;

/// <summary>How hard a rod is: by a class, which is a guess, or by a load that was measured.</summary>
public sealed class BendLoadTests
{
    // 9.80665 m/s2 is standard gravity, 28.349523125 g an avoirdupois ounce (both exact).
    [Theory]
    [InlineData("1.5 N", 1.5)]
    [InlineData("150 g", 0.150 * 9.80665)]
    [InlineData("5 oz", 5 * 0.028349523125 * 9.80665)]
    [InlineData("0.3 kg", 0.3 * 9.80665)]
    [InlineData("1 lb", 16 * 0.028349523125 * 9.80665)]
    public void A_load_is_a_force_or_the_weight_of_a_mass(string text, double loadN)
    {
        ScenarioResult result = Texts.Read(Texts.With("power = \"medium-heavy\"", $"bend_load = \"{text}\""));
        Assert.Empty(result.Errors);
        Assert.Equal(loadN, result.Setup!.Rod.ThirdLoadN, 1e-12);
    }

    [Theory]
    [InlineData("\"8 lb\"", "\"8 lb\"")]
    [InlineData("\"4.5 N\"", "\"4.5 N\"")]
    [InlineData("8", "\"8\"")]
    [InlineData("\"10-20 lb\"", "\"10-20 lb\"")]
    public void A_number_is_no_power(string typed, string shown) => Assert.Equal(
        $"s.toml(3,9): rod.power: {shown} is a number; the class is due: ultralight, light, medium-light, medium, medium-heavy, heavy, extra-heavy; "
            + "the line weight printed on a rod does not tell how it bends; a weight that you hung on the tip yourself goes into rod.bend_load",
        Assert.Single(Texts.Errors(Texts.With("\"medium-heavy\"", typed))));

    [Fact]
    public void One_of_the_two_is_due() => Assert.StartsWith(
        "s.toml(1,2): rod.power: missing; ", Assert.Single(Texts.Errors(Texts.With("power = \"medium-heavy\"", ""))), StringComparison.Ordinal);

    // A rod has its class printed on it whether or not it was measured, so the two may stand together, as action and tip ratio may.
    [Fact]
    public void What_was_measured_wins_over_what_is_printed()
    {
        string both = Texts.With("power = \"medium-heavy\"", "power = \"medium-heavy\"\nbend_load = \"3 N\"");
        ScenarioResult result = Texts.Read(both);
        Assert.Equal(3.0, result.Setup!.Rod.ThirdLoadN);
        Assert.Equal(ValueMark.Given, Of(result).Mark);
        Assert.Equal("medium-heavy", result.Values.Text(RodKeys.Power));
        Assert.Equal(6.5, Texts.Read(both, "rod.power=heavy").Setup!.Rod.ThirdLoadN);
        Assert.Equal(1.0, Texts.Read(both, "rod.bend_load=1 N").Setup!.Rod.ThirdLoadN);
    }

    [Fact]
    public void A_class_is_a_guess_at_the_load_with_a_range_that_can_be_set()
    {
        ScenarioResult result = Texts.Read(Texts.Least);
        EffectiveValue load = Of(result);
        Assert.Equal((ValueMark.Guess, 4.5, 3.75, 5.5), (load.Mark, load.Si, load.Low, load.High));
        GuessedKey guess = result.Effective().Guesses.Single(g => g.Key == RodKeys.BendLoad);
        Assert.Equal(5.5, Texts.Read(Texts.Least, guess.Override(5.5)).Setup!.Rod.ThirdLoadN);
    }

    private static EffectiveValue Of(ScenarioResult result) => result.Effective().Values.Single(v => v.Key == RodKeys.BendLoad);
}
