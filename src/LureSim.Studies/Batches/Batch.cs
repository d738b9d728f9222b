using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace LureSim.Studies.Batches;

/// <summary>Runs a long list on several threads and hands each result on as soon as it is there. Nothing is kept, so memory does
/// not grow with the list.</summary>
public static class Batch
{
    /// <summary>Runs at a time for a count that was asked for. Bounded on all cores too: without a bound the pool of threads adds more all along a list of long runs.</summary>
    /// <param name="threads">Count; 0 for every core.</param>
    public static int Cores(int threads) => threads == 0 ? Environment.ProcessorCount : threads;

    /// <summary>Runs every index. Returns when all are done.</summary>
    /// <param name="indices">What to run; read lazily, in order.</param>
    /// <param name="threads">Most runs at a time, at least 1.</param>
    /// <param name="run">A pure function of the index, called from several threads.</param>
    /// <param name="finished">Gets each result, one call at a time, in the order of finishing.</param>
    /// <param name="stop">Stops before the next run; <paramref name="run"/> may watch it too.</param>
    /// <exception cref="OperationCanceledException">Stopped; what was finished was handed on.</exception>
    /// <remarks>The first exception of <paramref name="run"/> or <paramref name="finished"/> ends the batch and is thrown
    /// as it was.</remarks>
    public static void Execute<T>(
        IEnumerable<int> indices, int threads, Func<int, T> run, Action<int, T> finished, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(indices);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(finished);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        var options = new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = stop };
        var gate = new Lock();
        try
        {
            // Without buffering: runs take very different times, and a chunk held by one thread would idle the others.
            Parallel.ForEach(Partitioner.Create(indices, EnumerablePartitionerOptions.NoBuffering), options, index =>
            {
                T result = run(index);
                lock (gate)
                {
                    finished(index, result);
                }
            });
        }
        catch (AggregateException e)
        {
            stop.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
        }
    }
}
