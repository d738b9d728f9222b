using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Studies.Cast;

/// <summary>One cast with what its spool needs.</summary>
/// <param name="Cast">The cast.</param>
/// <param name="Brake">Least brake against loops; null for a fixed spool, or when there is none.</param>
/// <param name="NoBrake">Why a revolving spool has no least brake, or null.</param>
public sealed record CastReport(CastResult Cast, LeastBrake? Brake = null, string? NoBrake = null);

/// <summary>A cast, and for a revolving spool the least brake that keeps its loops down.</summary>
public static class CastStudy
{
    /// <summary>Runs cast and brake search.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Cast.</param>
    /// <param name="context">Stop.</param>
    /// <param name="run">Runs one cast; null = the cast.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure hangs in the water at the start.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static Outcome<CastReport> Run(
        Setup setup, CastTask task, RunContext context = default, Func<Setup, CastTask, Outcome<CastResult>>? run = null)
    {
        ArgumentNullException.ThrowIfNull(setup);
        Outcome<CastResult> cast = run is null ? CastRunner.Run(setup, task, context) : run(setup, task);
        if (!cast.IsWhole)
        {
            return new(null, cast.Failure);
        }

        if (setup.Reel.Kind != ReelKind.Revolving)
        {
            return new(new CastReport(cast.Result));
        }

        Outcome<LeastBrake> brake = CastBrakes.Least(setup, task, context: context, run: run);
        return new(new CastReport(cast.Result, brake.Result, brake.Failure?.Reason));
    }
}
