using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Cast;

/// <summary>One cast with what a brake does to it.</summary>
/// <param name="Cast">The cast.</param>
/// <param name="Brakes">Distance and loose line against the strength of the brake; empty for a fixed spool.</param>
public sealed record CastReport(CastResult Cast, IReadOnlyList<BrakePoint> Brakes)
{
    /// <summary>Least strength with which hardly a cast tangles; null for a fixed spool, or when even the strongest brake does not reach it.</summary>
    public double? LeastBrake => CastBrakes.Least(Brakes);
}

/// <summary>A cast, and for a revolving spool what brakes of other strengths would make of it.</summary>
public static class CastStudy
{
    /// <summary>Runs all casts.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="threads">Most threads; 0 = all cores. The result does not depend on it.</param>
    /// <param name="context">Stop.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure hangs in the water at the start.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CastReport> Run(
        Setup setup, CastTask task, int threads = 0, RunContext context = default, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        run ??= (s, t) => CastRunner.Run(s, t, context);
        bool braked = setup.Reel.Kind == ReelKind.Revolving;
        Setup[] all = [setup, .. braked ? CastBrakes.Strengths.Select(s => CastBrakes.With(setup, s)) : []];
        Outcome<CastResult>[] casts = ParallelRuns.Execute(all, s => run(s, task), threads, null, context.Stop);
        return casts[0].IsWhole
            ? new(new CastReport(casts[0].Result!, [.. casts.Skip(1).Zip(CastBrakes.Strengths).Where(c => c.First.IsWhole).Select(c => CastBrakes.Point(c.Second, c.First.Result!))]))
            : new(null, casts[0].Failure);
    }
}
