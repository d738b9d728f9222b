using System.Runtime.ExceptionServices;

namespace LureSim.Studies.Runs;

/// <summary>Many independent runs on all cores. Each result goes to the place of its input, so the order in which threads
/// finish leaves no trace.</summary>
public static class ParallelRuns
{
    /// <summary>Maps every input to its result.</summary>
    /// <param name="inputs">Inputs.</param>
    /// <param name="run">A pure function, called from several threads.</param>
    /// <param name="threads">Most threads at a time; 0 = all cores.</param>
    /// <param name="done">Called after each run, from several threads; may be null.</param>
    /// <param name="stop">Stops between runs.</param>
    /// <exception cref="OperationCanceledException">Stopped. Any other exception is the one of a run, as it is.</exception>
    public static TResult[] Execute<TInput, TResult>(
        IReadOnlyList<TInput> inputs, Func<TInput, TResult> run, int threads, Action? done, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        var results = new TResult[inputs.Count];
        var options = new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = threads == 0 ? -1 : threads };
        try
        {
            Parallel.For(0, inputs.Count, options, i =>
            {
                results[i] = run(inputs[i]);
                done?.Invoke();
            });
        }
        catch (AggregateException e)
        {
            stop.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
        }

        return results;
    }
}
