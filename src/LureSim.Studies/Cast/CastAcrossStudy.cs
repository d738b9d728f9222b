using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cast;

/// <summary>Casts of several set-ups, each also with its guesses drawn, the same luck for all.</summary>
public static class CastAcrossStudy
{
    /// <summary>Runs all casts.</summary>
    /// <param name="variants">Set-ups, at least one.</param>
    /// <param name="draws">Draws of the guesses, 0 or more.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="progress">Gets the share done, from several threads; may be null.</param>
    /// <param name="stop">Stops the runs.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<CastCase> Run(
        IReadOnlyList<CastVariant> variants,
        int draws,
        int threads,
        Action<double>? progress,
        CancellationToken stop,
        Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(variants);
        run ??= (setup, task) => CastRunner.Run(setup, task, new(null, stop));
        int done = 0, all = variants.Count * (draws + 1);
        void Done() => progress?.Invoke((double)Interlocked.Increment(ref done) / all);
        (CastResult? Cast, string? Failure)[] casts = ParallelRuns.Execute(variants, v => Try(v.Setup, v.Task, run), threads, Done, stop);
        int[] jobs = [.. Enumerable.Range(0, variants.Count * draws)];
        CastDraw[] drawn = ParallelRuns.Execute(jobs, j => Drawn(variants[j / draws], j % draws, run), threads, Done, stop);
        return [.. variants.Select((v, i) => new CastCase(v.Label, casts[i].Cast, casts[i].Failure, drawn[(i * draws)..((i + 1) * draws)]))];
    }

    private static CastDraw Drawn(CastVariant variant, int draw, Func<Setup, CastTask, Outcome<CastResult>> run) =>
        variant.Drawn(draw) is (Setup setup, CastTask task) && Try(setup, task, run).Cast is CastResult cast ? CastDraw.Of(cast) : CastDraw.Failed;

    /// <summary>Runs one cast of many. What no check of single numbers finds, the lure in the water at the start, belongs to it alone.</summary>
    internal static (CastResult? Cast, string? Failure) Try(Setup setup, CastTask task, Func<Setup, CastTask, Outcome<CastResult>> run)
    {
        try
        {
            Outcome<CastResult> outcome = run(setup, task);
            return (outcome.Result, outcome.Failure?.Reason);
        }
        catch (ArgumentException e)
        {
            return (null, e.Message.Split('\n')[0]);
        }
    }
}
