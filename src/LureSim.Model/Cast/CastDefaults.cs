using LureSim.Model.Lines;
using LureSim.Model.Lures;

namespace LureSim.Model.Cast;

/// <summary>Defaults that depend on line and lure. All are guesses; each comes with its range.</summary>
public static class CastDefaults
{
    /// <summary>A whole cast for a line and a lure, best release.</summary>
    /// <param name="line">Line.</param>
    /// <param name="lure">Lure.</param>
    /// <param name="hands">Hands; the practised ones when none are given.</param>
    public static CastSpec Cast(LineSpec line, LureSpec lure, HandsSpec? hands = null) => new(
        hands ?? HandsSpec.Practised, 0.45, new ReleaseSpec(), new SpoolSpec(), new FixedSpoolSpec(PickUpFactor(line).Value), Flight(line, lure));

    /// <summary>Fixed spool of a line.</summary>
    /// <param name="line">Line.</param>
    public static FixedSpoolSpec FixedSpool(LineSpec line) => new(PickUpFactor(line).Value);

    /// <summary>Flight of a lure on a line.</summary>
    /// <param name="line">Line.</param>
    /// <param name="lure">Lure.</param>
    public static FlightSpec Flight(LineSpec line, LureSpec lure) =>
        new(TumblingShare(lure).Value, 0.3, 0.7, FrictionFactor(line).Value, WetFactor(line).Value);

    /// <summary>K of a fixed spool: 2 for braid, 1.2 for single strands.</summary>
    /// <param name="line">Line.</param>
    public static Ranged PickUpFactor(LineSpec line) => IsBraid(line) ? new(2.0, 1.0, 3.0) : new(1.2, 1.0, 2.0);

    /// <summary>x: a drop tumbles little, a hollow body much.</summary>
    /// <param name="lure">Lure.</param>
    public static Ranged TumblingShare(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        return lure.Shape switch
        {
            LureShape.Drop => new(0.1, 0.0, 0.3),
            LureShape.Hollow => new(0.7, 0.4, 1.0),
            _ => new(0.5, 0.2, 1.0),
        };
    }

    /// <summary>Share of the thread-drawing skin friction.</summary>
    /// <param name="line">Line.</param>
    public static Ranged FrictionFactor(LineSpec line) => IsBraid(line) ? new(0.8, 0.4, 1.5) : new(0.4, 0.27, 1.0);

    /// <summary>Mass of the wet line over dry; single strands carry little water.</summary>
    /// <param name="line">Line.</param>
    public static Ranged WetFactor(LineSpec line) => IsBraid(line) ? new(1.3, 1.0, 1.6) : new(1.0, 1.0, 1.1);

    private static bool IsBraid(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Material == LineMaterial.Braid;
    }
}
