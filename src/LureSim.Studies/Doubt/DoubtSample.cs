namespace LureSim.Studies.Doubt;

/// <summary>One run of a study of doubt.</summary>
/// <param name="Guesses">Value of each guess, SI; NaN where the run had no such guess.</param>
/// <param name="Class">Word that sorts the run (a pattern), empty for none.</param>
/// <param name="Figures">Results; null when the run failed, NaN where it has no such figure (no window, no edge).</param>
/// <param name="Reason">Why it failed; empty when it did not.</param>
public sealed record DoubtSample(IReadOnlyList<double> Guesses, string Class, IReadOnlyList<double>? Figures, string Reason = "");
