using LureSim.Model.Lines;
using LureSim.Model.Lures;

namespace LureSim.Model.Cast;

/// <summary>Defaults that depend on line and lure. All are guesses with the ranges stated at the spec.</summary>
public static class CastDefaults
{
    /// <summary>A whole cast for a line and a lure, best release.</summary>
    /// <param name="line">Line.</param>
    /// <param name="lure">Lure.</param>
    /// <param name="hands">Hands; the practised ones when none are given.</param>
    public static CastSpec Cast(LineSpec line, LureSpec lure, HandsSpec? hands = null) => new(
        hands ?? HandsSpec.Practised, 0.45, new ReleaseSpec(), new SpoolSpec(), FixedSpool(line), Flight(line, lure));

    /// <summary>Fixed spool: pick-up factor 2 for braid, 1.2 for single strands.</summary>
    /// <param name="line">Line.</param>
    public static FixedSpoolSpec FixedSpool(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new FixedSpoolSpec(line.Material == LineMaterial.Braid ? 2.0 : 1.2);
    }

    /// <summary>Flight: a drop tumbles little, a hollow body much.</summary>
    /// <param name="line">Line.</param>
    /// <param name="lure">Lure.</param>
    public static FlightSpec Flight(LineSpec line, LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(lure);
        double tumbling = lure.Shape switch { LureShape.Drop => 0.1, LureShape.Hollow => 0.7, _ => 0.5 };
        bool braid = line.Material == LineMaterial.Braid;
        return new FlightSpec(tumbling, 0.3, 0.7, braid ? 0.8 : 0.4, braid ? 1.3 : 1.0);
    }
}
