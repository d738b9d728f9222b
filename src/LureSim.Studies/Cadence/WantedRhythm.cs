namespace LureSim.Studies.Cadence;

/// <summary>A rhythm that a search wants to have run.</summary>
/// <param name="PerS">Rhythm, twitches per second.</param>
/// <param name="Starts">Which starts of the plan, by their place in its list.</param>
/// <param name="TakeUpsMS">With what take-up speed the hand begins, one per start, m/s; null = as a retrieve does.</param>
public sealed record WantedRhythm(double PerS, IReadOnlyList<int> Starts, IReadOnlyList<double?> TakeUpsMS);
