using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Runs;

/// <summary>
/// What the rhythm of a retrieve comes to when it goes on as <c>cadence</c> counts it: distance held, its length and mesh, from the same
/// start. A retrieve of 15 s is still settling where the answer stands near the edge of a window (docs/cadence.md).
/// </summary>
public static class SettledWalk
{
    /// <summary>Runs it.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve, twitched.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static StationaryOutcome Run(Setup setup, RetrieveTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        return StationaryOutcome.Of(setup, StationaryRun.Make(task, task.CadencePerS, new(task.StartHeadingRad, task.StartSidewaysM), new StationaryPlan()), stop);
    }

    /// <summary>A sentence where the settled walk has another word than the retrieve; null where it has the same, or failed.</summary>
    /// <param name="task">Retrieve.</param>
    /// <param name="shown">Its word.</param>
    /// <param name="settled">Outcome of <see cref="Run"/>.</param>
    public static string? Difference(RetrieveTask task, WalkPattern shown, StationaryOutcome settled)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(settled);
        return settled.Pattern is not WalkPattern later || later == shown
            ? null
            : FormattableString.Invariant($"the answer to this rhythm depends on how it starts and on how long it goes on: {RetrieveFigures.Name(shown)} in this ")
                + FormattableString.Invariant($"retrieve, {RetrieveFigures.Name(later)} once settled (distance held, as cadence counts)");
    }
}
