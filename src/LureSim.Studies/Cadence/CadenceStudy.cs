using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>Searches the rhythms of one or many set-ups on all cores.</summary>
public static class CadenceStudy
{
    /// <summary>The rhythms of one set-up; it fails when every run did.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="torque">What the wrist sustains.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="news">Who is told while it goes on; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the task is a steady pull.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CadenceResult> Run(
        Setup setup,
        RetrieveTask task,
        CadencePlan plan,
        SustainedTorque torque,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        CadenceNews? news = null,
        CancellationToken stop = default) => Search([(setup, task)], plan, run, news, stop)[0].Finish(torque);

    /// <summary>Finished searches of many set-ups. The first of them are finished first.</summary>
    /// <param name="trials">Set-ups with their retrieves.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="news">Who is told while it goes on; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static RhythmSearch[] Search(
        IReadOnlyList<(Setup Setup, RetrieveTask Task)> trials,
        CadencePlan plan,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        CadenceNews? news = null,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(trials);
        ArgumentNullException.ThrowIfNull(plan);
        run ??= (setup, task) => StationaryOutcome.Of(setup, task, stop);
        RhythmSearch[] searches = [.. trials.Select(t => new RhythmSearch(t.Setup, t.Task, plan))];
        using var queue = new SearchQueue(searches, plan, news ?? new());
        queue.Run(run, stop);
        return searches;
    }
}
