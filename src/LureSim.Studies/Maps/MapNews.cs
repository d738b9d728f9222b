using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

/// <summary>Who is told of a map while it is drawn, and what is known of it already. Kept and progress are called one at a time, from several threads.</summary>
/// <param name="Progress">Gets the share done; may be null.</param>
/// <param name="Known">The outcome of a run by its index (<see cref="MapPlan.IndexOf"/>), if an earlier map of the same plan has it; null = none.</param>
/// <param name="Kept">Gets each outcome that was not known with its index, in the order of finishing; may be null.</param>
public sealed record MapNews(Action<double>? Progress = null, Func<int, StationaryOutcome?>? Known = null, Action<int, StationaryOutcome>? Kept = null);
