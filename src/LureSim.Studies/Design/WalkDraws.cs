using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Design;

/// <summary>Draws of the guesses of a scenario, for the bands of candidates: the same luck for each of them.</summary>
public static class WalkDraws
{
    /// <summary>The scenario of a draw, by its number.</summary>
    /// <param name="source">Scenario file.</param>
    /// <param name="overrides">Overrides.</param>
    /// <param name="figures">Command whose guesses are drawn, those about the hands apart.</param>
    /// <param name="draws">How many.</param>
    /// <returns>Null where nothing is guessed, or no draw is wanted.</returns>
    public static Func<int, ScenarioResult>? Of(ScenarioSource source, IReadOnlyList<string> overrides, IFigureSource figures, int draws)
    {
        ArgumentNullException.ThrowIfNull(source);
        ScenarioResult scenario = source.Resolve(overrides);
        GuessedKey[] guesses = draws == 0 ? [] : GuessDesign.Of(scenario, figures, hands: false);
        if (guesses.Length == 0)
        {
            return null;
        }

        var design = new GuessDesign(draws, scenario.Setup!.Seed);
        return i => GuessDraw.Make(source, overrides, guesses, g => design.Share(g, i)).Scenario;
    }
}
