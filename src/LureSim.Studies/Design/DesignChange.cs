using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Design;

/// <summary>What a builder can change, or get wrong.</summary>
public enum ChangeKind
{
    /// <summary>The weight lengthwise, m toward the nose.</summary>
    BallastAlong,

    /// <summary>The weight up, m.</summary>
    BallastUp,

    /// <summary>Mass of the weight, kg.</summary>
    BallastMass,

    /// <summary>Mass of the body, kg.</summary>
    BodyMass,

    /// <summary>Line tie toward the nose, m.</summary>
    TieAlong,

    /// <summary>Line tie up, m.</summary>
    TieUp,

    /// <summary>Every hook by so many sizes.</summary>
    HookSize,

    /// <summary>Front hook left off.</summary>
    NoFrontHook,

    /// <summary>Rear hook left off.</summary>
    NoRearHook,

    /// <summary>Length by a share, all that is on it along with it; the mass stays unless it follows from the material.</summary>
    Length,

    /// <summary>Breadth and height by a share; the mass stays unless it follows from the material.</summary>
    Section,
}

/// <summary>One change.</summary>
/// <param name="Kind">What.</param>
/// <param name="Amount">By how much, in the unit of its kind.</param>
public sealed record DesignChange(ChangeKind Kind, double Amount)
{
    /// <summary>The changed lure; null where it has nothing of the kind.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="sizes">Its hooks by size.</param>
    /// <param name="height">How a weight is held that moves along or becomes heavier.</param>
    /// <param name="keepsTotal">True: the body makes up for a heavier weight; false: the body stays.</param>
    public LureSpec? Of(LureSpec lure, HookSizes sizes, BallastHeight height = BallastHeight.Kept, bool keepsTotal = false)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(sizes);
        var slot = BallastSlot.Of(lure, height, keepsTotal);
        BallastSpec w = slot.Weight;
        return Kind switch
        {
            ChangeKind.BallastAlong => slot.Index < 0 ? null : slot.With(w.MassKg, w.XM + Amount),
            ChangeKind.BallastUp => slot.Index < 0 ? null : slot.With(w with { ZM = w.ZM + Amount }),
            ChangeKind.BallastMass => slot.Index < 0 || w.MassKg + Amount < 0.0 ? null : slot.With(w.MassKg + Amount, w.XM),
            ChangeKind.BodyMass => lure with { MassKg = lure.MassKg + Amount },
            ChangeKind.TieAlong => lure with { TieXM = lure.TieXM + Amount },
            ChangeKind.TieUp => lure with { TieZM = lure.TieZM + Amount },
            ChangeKind.HookSize => Resized(lure, sizes),
            ChangeKind.NoFrontHook => Pointed(lure).Length == 0 ? null : Without(lure, Pointed(lure)[^1]),
            ChangeKind.NoRearHook => Pointed(lure).Length < 2 ? null : Without(lure, Pointed(lure)[0]),
            ChangeKind.Length => LureWeight.Weighed(Scaled(lure, 1.0 + Amount, 1.0)),
            ChangeKind.Section => LureWeight.Weighed(Scaled(lure, 1.0, 1.0 + Amount)),
            _ => null,
        };
    }

    private LureSpec? Resized(LureSpec lure, HookSizes sizes)
    {
        int step = (int)Amount;
        bool Exists(SizedHook h) => h.Row + step >= 0 && h.Row + step < HookSizes.Count;
        return sizes.Hooks.Count > 0 && sizes.Hooks.Count <= lure.Hooks.Count && sizes.Hooks.All(Exists) ? sizes.With(lure, h => h.Row + step) : null;
    }

    // Tail to nose; rings are no hooks.
    private static HookSpec[] Pointed(LureSpec lure) => [.. lure.Hooks.Where(h => h.HasPoints).OrderBy(h => h.XM)];

    private static LureSpec Without(LureSpec lure, HookSpec hook) => lure with { Hooks = [.. lure.Hooks.Where(h => !ReferenceEquals(h, hook))] };

    private static LureSpec Scaled(LureSpec lure, double along, double across) => lure with
    {
        LengthM = along * lure.LengthM,
        DiameterM = across * lure.DiameterM,
        HeightM = across * lure.HeightM,
        TieXM = along * lure.TieXM,
        TieZM = across * lure.TieZM,
        Ballast = [.. lure.Ballast.Select(b => b with { XM = along * b.XM, ZM = across * b.ZM })],
        Hooks = [.. lure.Hooks.Select(h => h with { XM = along * h.XM, ZM = across * h.ZM })],
        Stations = lure.Stations is null ? null : [.. lure.Stations.Select(s => new HullStation(along * s.XM, across * s.HalfBreadthM, across * s.HalfHeightM, across * s.CentreZM))],
    };
}
