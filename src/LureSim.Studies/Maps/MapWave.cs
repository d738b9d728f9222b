using LureSim.Model.Assembly;
using LureSim.Model.Retrieve;
using LureSim.Studies.Batches;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Maps;

/// <summary>Points of a map that are sampled together; each is handed on when its last start is done.</summary>
/// <param name="points">Lattice indices, and the set-up there or null where it makes no sense.</param>
/// <param name="starts">Starts of every point.</param>
/// <param name="plan">Plan.</param>
/// <param name="finished">Gets each point, one call at a time.</param>
internal sealed class MapWave(
    IReadOnlyList<(int I, int J, (Setup Setup, RetrieveTask Task)? Trial)> points, IReadOnlyList<WalkStart> starts, MapPlan plan, Action<MapSample> finished)
{
    private readonly StationaryOutcome?[,] _outcomes = new StationaryOutcome?[points.Count, starts.Count];

    /// <summary>Runs every start of every point.</summary>
    /// <param name="run">Runs one retrieve.</param>
    /// <param name="done">Called after each run, one call at a time.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped; what was finished was handed on.</exception>
    public void Run(Func<Setup, RetrieveTask, StationaryOutcome> run, Action done, CancellationToken stop)
    {
        foreach ((int i, int j, _) in points.Where(p => p.Trial is null))
        {
            finished(new(i, j, null));
        }

        IEnumerable<int> indices = Enumerable.Range(0, points.Count * starts.Count).Where(n => points[n / starts.Count].Trial is not null);
        Batch.Execute(indices, plan.Threads == 0 ? int.MaxValue : plan.Threads, One, Keep, stop);

        StationaryOutcome One(int n)
        {
            (Setup setup, RetrieveTask task) = points[n / starts.Count].Trial!.Value;
            return run(setup, StationaryRun.Make(task, task.CadencePerS, starts[n % starts.Count], plan.Run ?? new()));
        }

        void Keep(int n, StationaryOutcome outcome)
        {
            int point = n / starts.Count;
            _outcomes[point, n % starts.Count] = outcome;
            done();
            StationaryOutcome?[] all = [.. Enumerable.Range(0, starts.Count).Select(s => _outcomes[point, s])];
            if (all.All(o => o is not null))
            {
                (int i, int j, (Setup Setup, RetrieveTask Task)? trial) = points[point];
                finished(new(i, j, new(trial!.Value.Task.CadencePerS, [.. all.OfType<StationaryOutcome>()], plan.LockShare)));
            }
        }
    }
}
