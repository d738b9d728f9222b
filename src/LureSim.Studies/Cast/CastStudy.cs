using LureSim.Model;
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
    /// <param name="spec">The cast.</param>
    /// <exception cref="ArgumentException">A value is out of range, or the lure hangs in the water at the start.</exception>
    /// <exception cref="ModelException">The cast cannot be finished.</exception>
    public static CastReport Run(CastRunSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        CastResult cast = CastRunner.Run(spec);
        if (spec.Run.Reel.Kind != ReelKind.Revolving)
        {
            return new(cast);
        }

        try
        {
            return new(cast, CastBrakes.Least(spec));
        }
        catch (ModelException e)
        {
            return new(cast, null, e.Message);
        }
    }
}
