using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Strike;
using LureSim.Studies.Tests.Support;

namespace LureSim.Studies.Tests.Strike;

/// <summary>Ranges of pulls that are guesses: those of the keys times what the keys multiply, and none for what the reader gave.</summary>
public sealed class StrikeGuessesTests
{
    [Fact]
    public void A_strength_has_the_range_of_its_key()
    {
        (Setup setup, StrikeGuesses guesses) = Of();
        Assert.Equal(setup.Hook.SettingN, guesses.SettingN!.Value.Value, 1e-9);
        Assert.Equal(0.5 * setup.Hook.SettingN, guesses.SettingN.Value.Low, 1e-9);
        Assert.Equal(2.0 * setup.Hook.SettingN, guesses.SettingN.Value.High, 1e-9);
        Parameter rod = StrikeKeys.RodLimit.Parameter!, knot = StrikeKeys.KnotStrength.Parameter!;
        Assert.Equal((rod.GuessLow * setup.Rod.ThirdLoadN, rod.GuessHigh * setup.Rod.ThirdLoadN), Range(guesses, WeakPlace.Rod));
        Assert.Equal((knot.GuessLow * setup.Line.BreakN, knot.GuessHigh * setup.Line.BreakN), Range(guesses, WeakPlace.Knot));
        Assert.Equal((knot.GuessLow * setup.Leader!.Line.BreakN, knot.GuessHigh * setup.Leader.Line.BreakN), Range(guesses, WeakPlace.Leader));
        Assert.Contains(guesses.Strengths, g => g.Place == WeakPlace.HookHold);
        Assert.DoesNotContain(guesses.Strengths, g => g.Place == WeakPlace.Line);
    }

    [Fact]
    public void What_was_given_is_no_guess()
    {
        (_, StrikeGuesses guesses) = Of("strike.set_force=8 N", "strike.tear_force=40 N", "strike.rod_limit=12");
        Assert.Null(guesses.SettingN);
        Assert.DoesNotContain(guesses.Strengths, g => g.Place is WeakPlace.HookHold or WeakPlace.Rod);
        Assert.Contains(guesses.Strengths, g => g.Place == WeakPlace.Knot);
    }

    private static (double Low, double High) Range(StrikeGuesses guesses, WeakPlace place)
    {
        PlaceGuess guess = guesses.Strengths.Single(g => g.Place == place);
        return (guess.LowN, guess.HighN);
    }

    private static (Setup Setup, StrikeGuesses Guesses) Of(params string[] overrides)
    {
        ScenarioResult scenario = ScenarioSource.Read(Shipped.File("treble-edge.toml"), overrides, Activities.Strike);
        return (scenario.Setup!, StrikeGuesses.Of(scenario.Setup!, scenario.Effective()));
    }
}
