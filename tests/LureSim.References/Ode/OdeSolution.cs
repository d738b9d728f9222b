namespace LureSim.References.Ode;

/// <summary>What an integration cost.</summary>
/// <param name="Accepted">Steps accepted, those cut short by an event included.</param>
/// <param name="Rejected">Steps tried in vain.</param>
/// <param name="Evaluations">Calls of the right side, trial steps and restarts included.</param>
/// <param name="Events">Events that counted.</param>
public readonly record struct OdeCounters(int Accepted, int Rejected, long Evaluations, int Events);

/// <summary>A finished or stopped integration. Everything up to <see cref="Time"/> is valid whatever the status.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Time">Time reached.</param>
/// <param name="State">State there, always finite.</param>
/// <param name="SavedTimes">Requested times that were reached.</param>
/// <param name="SavedStates">State at each saved time.</param>
/// <param name="Occurrences">Events in order of time.</param>
/// <param name="Counters">Cost.</param>
public sealed record OdeSolution(
    OdeStatus Status,
    double Time,
    double[] State,
    double[] SavedTimes,
    double[][] SavedStates,
    IReadOnlyList<EventOccurrence> Occurrences,
    OdeCounters Counters)
{
    /// <summary>True when the run came to a planned end: the last time or a terminal event.</summary>
    public bool Completed => Status is OdeStatus.Success or OdeStatus.TerminalEvent;
}
