namespace LureSim.References.Ode;

/// <summary>An event that happened.</summary>
/// <param name="Event">Index in <see cref="OdeProblem.Events"/>.</param>
/// <param name="Time">Time of the zero.</param>
/// <param name="Rising">True when g came from below.</param>
/// <param name="Before">State just before a map.</param>
/// <param name="After">State just after it; equal to <paramref name="Before"/> without one.</param>
public sealed record EventOccurrence(int Event, double Time, bool Rising, IReadOnlyList<double> Before, IReadOnlyList<double> After);
