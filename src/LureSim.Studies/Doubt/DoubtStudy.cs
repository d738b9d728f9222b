using LureSim.Scenarios.Effective;

namespace LureSim.Studies.Doubt;

/// <summary>A figure that people ask for first, and how a chart shows it.</summary>
/// <param name="Key">Name in files.</param>
/// <param name="Words">In a sentence, for example <c>glide per twitch</c>.</param>
/// <param name="Unit">Unit on the axis.</param>
/// <param name="Scale">From the figure's own unit to <paramref name="Unit"/>.</param>
public sealed record HeadlineFigure(string Key, string Words, string Unit, double Scale);

/// <summary>A study of doubt and what the reader needs to see it.</summary>
/// <param name="Report">Draws of the guesses about everything but the hands.</param>
/// <param name="Hands">Draws of the guesses about the hands, all else as it stands, the same luck; null where no hands enter.</param>
/// <param name="Screen">Which guess matters; null where it was not looked for.</param>
/// <param name="ScreenRuns">Runs that looking for it takes.</param>
/// <param name="Guesses">The guesses of <paramref name="Screen"/>, in its order.</param>
/// <param name="Headlines">Figures for which the guesses are ranked.</param>
public sealed record DoubtStudy(
    DoubtReport Report, DoubtReport? Hands, ScreenReport? Screen, int ScreenRuns, IReadOnlyList<GuessName> Guesses, IReadOnlyList<HeadlineFigure> Headlines);

/// <summary>How a guess is called.</summary>
/// <param name="Key">Key, for files.</param>
/// <param name="Label">Words and range in the key's own unit, for people.</param>
public sealed record GuessName(string Key, string Label)
{
    /// <summary>The guess itself, for a reader with units of his own; null where there is none.</summary>
    public GuessedKey? Guess { get; init; }
}
