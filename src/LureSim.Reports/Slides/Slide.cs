using LureSim.Reports.Kit.Drawing;

namespace LureSim.Reports.Slides;

/// <summary>One slide of a talk.</summary>
/// <param name="Name">File stem without number.</param>
/// <param name="Title">What it says, on one line.</param>
/// <param name="Say">What the speaker may say.</param>
/// <param name="Command">Command that makes the picture by itself.</param>
/// <param name="Picture">Picture, fitted for a slide; null for the moving one.</param>
/// <param name="Movie">Moving picture as SVG; null for the others.</param>
public sealed record Slide(string Name, string Title, string Say, string Command, Chart? Picture, byte[]? Movie = null);

/// <summary>The slides of a scenario in the order of a talk.</summary>
/// <param name="Title">Title of the scenario.</param>
/// <param name="File">Scenario file.</param>
/// <param name="Slides">Slides.</param>
/// <param name="Guesses">Number of values that nobody gave.</param>
public sealed record SlideDeck(string Title, string File, IReadOnlyList<Slide> Slides, int Guesses)
{
    /// <summary>File stem of a slide: its number and its name.</summary>
    /// <param name="index">0 and up.</param>
    public string Stem(int index) => FormattableString.Invariant($"{index + 1:00}_{Slides[index].Name}");
}
