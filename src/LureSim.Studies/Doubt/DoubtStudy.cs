namespace LureSim.Studies.Doubt;

/// <summary>A figure that people ask for first, and how a chart shows it.</summary>
/// <param name="Key">Name in files.</param>
/// <param name="Words">In a sentence, for example <c>glide per twitch</c>.</param>
/// <param name="Unit">Unit on the axis.</param>
/// <param name="Scale">From the figure's own unit to <paramref name="Unit"/>.</param>
public sealed record HeadlineFigure(string Key, string Words, string Unit, double Scale);

/// <summary>A study of doubt and what the reader needs to see it.</summary>
/// <param name="Report">Study.</param>
/// <param name="Labels">Label of each guess, in the report's order.</param>
/// <param name="Headlines">Figures for which the guesses are ranked.</param>
public sealed record DoubtStudy(DoubtReport Report, IReadOnlyList<string> Labels, IReadOnlyList<HeadlineFigure> Headlines);
