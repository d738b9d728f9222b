using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Doubt;

/// <summary>
/// One draw of the guesses, what belongs together drawn together. A value that follows from others is drawn about what follows from the others as
/// drawn, not about what followed before: a line drawn thick fills the spool with fewer metres, since wound diameter and width of a spool are what
/// they are and the length that people wind on is a share of what it holds. So the line comes first, by its number, diameter and packing, then what
/// follows from it, at the same place in a range that moved along.
/// </summary>
/// <param name="Scenario">With the draw; it may have errors where a value that was given contradicts it.</param>
/// <param name="Values">Value of each guess, SI, in the order asked for.</param>
public sealed record GuessDraw(ScenarioResult Scenario, IReadOnlyList<double> Values)
{
    /// <summary>Draws.</summary>
    /// <param name="source">Scenario file.</param>
    /// <param name="overrides">Overrides that stand besides.</param>
    /// <param name="guesses">What is drawn.</param>
    /// <param name="share">Place of each guess in its range, 0 to 1; 0.5 for the value in use.</param>
    public static GuessDraw Make(ScenarioSource source, IReadOnlyList<string> overrides, IReadOnlyList<GuessedKey> guesses, Func<GuessedKey, double> share)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(overrides);
        ArgumentNullException.ThrowIfNull(guesses);
        ArgumentNullException.ThrowIfNull(share);
        double[] values = [.. guesses.Select(g => GuessDesign.At(g, share(g)))];
        int[] free = [.. Enumerable.Range(0, guesses.Count).Where(i => !Follows(guesses[i]))];
        int[] bound = [.. Enumerable.Range(0, guesses.Count).Where(i => Follows(guesses[i]))];
        string[] first = [.. overrides, .. free.Select(i => guesses[i].Override(values[i]))];
        ScenarioResult scenario = source.Resolve(first);
        if (bound.Length == 0 || !scenario.IsValid)
        {
            return new(scenario, values);
        }

        IReadOnlyList<GuessedKey> moved = scenario.Effective().Guesses;
        foreach (int i in bound)
        {
            values[i] = GuessDesign.At(moved.FirstOrDefault(m => m.Key == guesses[i].Key) ?? guesses[i], share(guesses[i]));
        }

        return new(source.Resolve([.. first, .. bound.Select(i => guesses[i].Override(values[i]))]), values);
    }

    // What a line is comes from its material and its label; everything else that follows may follow from the line.
    private static bool Follows(GuessedKey guess) => guess.Follows && guess.Key.Table != LineKeys.Set.Material.Table && guess.Key.Table != LeaderKeys.Set.Material.Table;
}
