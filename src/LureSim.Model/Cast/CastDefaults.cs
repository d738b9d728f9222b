using LureSim.Model.Hands;
using LureSim.Model.Lines;
using LureSim.Model.Lures;
using LureSim.Model.Reels;

namespace LureSim.Model.Cast;

/// <summary>Defaults that depend on line and lure. All are guesses; each comes with its range.</summary>
public static class CastDefaults
{
    // Low end of the guess of packing; what fits then fits always.
    private const double LoosestPacking = 0.6;

    /// <summary>A whole cast of a set-up, best release.</summary>
    /// <param name="run">Rod, reel, line and lure.</param>
    /// <param name="hands">Hands; the practised ones when none are given.</param>
    public static CastSpec Cast(RunSpec run, HandsSpec? hands = null)
    {
        ArgumentNullException.ThrowIfNull(run);
        var spool = new SpoolSpec();
        spool = spool with { LineM = SpoolLine(run.Line, 0.5 * run.Reel.SpoolDiameterM, spool.WidthM, spool.Packing).Value };
        return new(
            hands ?? HandsSpec.Practised, 0.45, new ReleaseSpec(), spool, new FixedSpoolSpec(PickUpFactor(run.Line).Value), Flight(run.Line, run.Lure));
    }

    /// <summary>Line on a revolving spool: 75 m (50 to 100), or less where less fits beside a third of the radius.</summary>
    /// <param name="line">Line.</param>
    /// <param name="radiusM">R_0, radius of the wound line, m.</param>
    /// <param name="widthM">W, its width, m.</param>
    /// <param name="packing">Share of line in the wound volume.</param>
    public static Ranged SpoolLine(LineSpec line, double radiusM, double widthM, double packing)
    {
        ArgumentNullException.ThrowIfNull(line);
        double holds = 0.9 * WoundLine.Capacity(0.0, radiusM, widthM, Math.Min(LoosestPacking, packing), line.DiameterM);
        return new(Math.Min(75.0, 0.8 * holds), Math.Min(50.0, 0.6 * holds), Math.Min(100.0, holds));
    }

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

    /// <summary>Most line that a revolving spool takes, m: 95 % of what fills it down to its axle.</summary>
    /// <param name="line">Line.</param>
    /// <param name="radiusM">R_0, radius of the wound line, m.</param>
    /// <param name="widthM">W, its width, m.</param>
    /// <param name="packing">Share of line in the wound volume.</param>
    public static double MostSpoolLineM(LineSpec line, double radiusM, double widthM, double packing)
    {
        ArgumentNullException.ThrowIfNull(line);
        return 0.95 * WoundLine.Capacity(0.0, radiusM, widthM, packing, line.DiameterM);
    }

    private static bool IsBraid(LineSpec line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Material == LineMaterial.Braid;
    }
}
