namespace LureSim.Cli;

/// <summary>Where a command writes: results to <paramref name="Out"/>, everything else to <paramref name="Error"/>.</summary>
/// <param name="Out">stdout.</param>
/// <param name="Error">stderr.</param>
/// <param name="IsInteractive">True when a person watches stderr.</param>
/// <param name="ShowsProgress">False where lines that depend on the speed of the machine would disturb.</param>
public sealed record Terminal(TextWriter Out, TextWriter Error, bool IsInteractive, bool ShowsProgress = true);
