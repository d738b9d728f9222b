using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;

namespace LureSim.Studies.Runs;

/// <summary>What one stationary retrieve gave, small enough to keep by the thousand.</summary>
/// <param name="Summary">Its figures; null when the run failed.</param>
/// <param name="Failure">Why it failed, or null.</param>
public sealed record StationaryOutcome(RetrieveSummary? Summary, string? Failure = null)
{
    /// <summary>Pattern; null when the run failed.</summary>
    public WalkPattern? Pattern => Summary?.Pattern;

    // Down to an eighth of the step.
    private const int MostHalvings = 3;

    /// <summary>Runs a retrieve and keeps its figures; a model at its end becomes <see cref="Failure"/>. A study sets the step, so the study makes
    /// it smaller: a run whose energy account stays open is made again with half of it, three times at most.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static StationaryOutcome Of(Setup setup, RetrieveTask task, CancellationToken stop)
    {
        Outcome<RetrieveResult> outcome = Whole(setup, task, stop);
        return outcome.IsWhole ? new(outcome.Result.Summary) : Failed(outcome.Failure.Reason);
    }

    /// <summary>The same with all that was recorded.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<RetrieveResult> Whole(Setup setup, RetrieveTask task, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(task);
        Outcome<RetrieveResult> outcome = RetrieveRun.Run(setup, task, new(null, stop));
        for (int halved = 0; halved < MostHalvings && outcome.Result?.Counters.EnergyOpenShare > SolverCounters.MostEnergyOpenShare; halved++)
        {
            task = task with { Solver = task.Solver with { StepS = 0.5 * task.Solver.StepS } };
            outcome = RetrieveRun.Run(setup, task, new(null, stop));
        }

        return outcome;
    }

    /// <summary>A run without figures.</summary>
    /// <param name="reason">Why.</param>
    public static StationaryOutcome Failed(string reason) => new(null, reason);
}
