using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cadence;

/// <summary>Searches the rhythms of one or many set-ups on all cores.</summary>
public static class CadenceStudy
{
    // Refinement adds about this much to the first pass; only progress depends on it.
    private const double RefinementShare = 0.5;

    /// <summary>The rhythms of one set-up; it fails when every run did.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Retrieve.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="torque">What the wrist sustains.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="progress">Called with the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the task is a steady pull.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CadenceResult> Run(
        Setup setup,
        RetrieveTask task,
        CadencePlan plan,
        SustainedTorque torque,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        Action<double>? progress = null,
        CancellationToken stop = default) => Search([(setup, task)], plan, run, progress, stop)[0].Finish(torque);

    /// <summary>Finished searches of many set-ups, round by round in common batches.</summary>
    /// <param name="trials">Set-ups with their retrieves.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="run">Runs one retrieve; null = the retrieve.</param>
    /// <param name="progress">Called with the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static RhythmSearch[] Search(
        IReadOnlyList<(Setup Setup, RetrieveTask Task)> trials,
        CadencePlan plan,
        Func<Setup, RetrieveTask, StationaryOutcome>? run = null,
        Action<double>? progress = null,
        CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(trials);
        ArgumentNullException.ThrowIfNull(plan);
        run ??= (setup, task) => StationaryOutcome.Of(setup, task, stop);
        WalkStart[] starts = WalkStart.Spread(plan.Starts);
        RhythmSearch[] searches = [.. trials.Select(t => new RhythmSearch(t.Setup, t.Task, plan))];
        double expected = (1.0 + RefinementShare) * starts.Length * searches.Sum(s => s.Wanted.Count);
        int done = 0;
        for (RhythmSearch[] open = searches; open.Length > 0; open = [.. open.Where(s => s.Wanted.Count > 0)])
        {
            (Setup Setup, RetrieveTask Task)[] batch =
            [
                .. open.SelectMany(s => s.Wanted.SelectMany(w => w.Starts.Select((i, k) => (s.Setup, StationaryRun.Make(s.Task, w.PerS, starts[i], plan.Runs, w.TakeUpsMS[k]))))),
            ];
            StationaryOutcome[] outcomes = ParallelRuns.Execute(batch, t => run(t.Setup, t.Task), plan.Threads, Done, stop);
            HandOut(open, outcomes);
        }

        return searches;

        void Done()
        {
            int now = Interlocked.Increment(ref done);
            progress?.Invoke(Math.Min(0.99, now / Math.Max(expected, now)));
        }
    }

    private static void HandOut(RhythmSearch[] open, StationaryOutcome[] outcomes)
    {
        int at = 0;
        foreach (RhythmSearch search in open)
        {
            var own = new List<IReadOnlyList<StationaryOutcome>>();
            foreach (WantedRhythm wanted in search.Wanted)
            {
                own.Add(outcomes[at..(at + wanted.Starts.Count)]);
                at += wanted.Starts.Count;
            }

            search.Add(own);
        }
    }
}
