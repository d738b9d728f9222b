namespace LureSim.Studies.Cadence;

/// <summary>What a search over rhythm tells while it goes on: one call at a time, from any thread. With more than one thread the order in which
/// rhythms are told may differ from run to run; what is told of each does not.</summary>
/// <param name="Share">Gets the share done, 0 to 1; may be null.</param>
/// <param name="Rhythm">Gets the place of the set-up in the list, and a rhythm of it whose wanted starts are all done. A rhythm is told again when more
/// starts of it were run, with all of them, and may then have another word. May be null.</param>
/// <param name="Finished">Gets the place of the set-up in the list and its finished search, as soon as it wants no more; may be null.</param>
public sealed record CadenceNews(Action<double>? Share = null, Action<int, RhythmPoint>? Rhythm = null, Action<int, RhythmSearch>? Finished = null);
