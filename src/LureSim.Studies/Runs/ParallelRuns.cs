using LureSim.Studies.Batches;

namespace LureSim.Studies.Runs;

/// <summary>Many independent runs on all cores. Each result goes to the place of its input, so the order in which threads
/// finish leaves no trace.</summary>
public static class ParallelRuns
{
    /// <summary>Maps every input to its result.</summary>
    /// <param name="inputs">Inputs.</param>
    /// <param name="run">A pure function, called from several threads.</param>
    /// <param name="threads">Most threads at a time; 0 = all cores.</param>
    /// <param name="done">Called after each run, one call at a time; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped. Any other exception is the one of a run, as it is.</exception>
    public static TResult[] Execute<TInput, TResult>(
        IReadOnlyList<TInput> inputs, Func<TInput, TResult> run, int threads, Action? done, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        var results = new TResult[inputs.Count];
        Batch.Execute(Enumerable.Range(0, inputs.Count), Batch.Cores(threads), i => run(inputs[i]), Keep, stop);
        return results;

        void Keep(int i, TResult result)
        {
            results[i] = result;
            done?.Invoke();
        }
    }
}
