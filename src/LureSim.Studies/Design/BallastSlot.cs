using LureSim.Model.Lures;

namespace LureSim.Studies.Design;

/// <summary>How the weight of a design is held while it moves.</summary>
public enum BallastHeight
{
    /// <summary>At its own height.</summary>
    Kept,

    /// <summary>As low as a ball of it fits over the belly.</summary>
    Lowest,
}

/// <summary>
/// The weight of a lure that a design moves: its heaviest, or a new one where it has none. The others stay.
/// </summary>
/// <param name="Lure">Lure.</param>
/// <param name="Index">Place of the weight in the list; -1: a new one.</param>
/// <param name="Height">How it is held.</param>
/// <param name="KeepsTotal">True: the mass of body and weights stays, so a heavier weight means a lighter body; false: the body stays, so the total moves; in a body of known
/// density that is filled the weight takes the place of what was there.</param>
public sealed record BallastSlot(LureSpec Lure, int Index, BallastHeight Height, bool KeepsTotal)
{
    /// <summary>The slot of a lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="height">How the weight is held.</param>
    /// <param name="keepsTotal">Whether the total mass stays.</param>
    public static BallastSlot Of(LureSpec lure, BallastHeight height = BallastHeight.Kept, bool keepsTotal = false)
    {
        ArgumentNullException.ThrowIfNull(lure);
        int index = -1;
        for (int i = 0; i < lure.Ballast.Count; i++)
        {
            index = index < 0 || lure.Ballast[i].MassKg > lure.Ballast[index].MassKg ? i : index;
        }

        return new(lure, index, index < 0 ? BallastHeight.Lowest : height, keepsTotal);
    }

    /// <summary>The weight as it is; without mass in the middle where there is none.</summary>
    public BallastSpec Weight => Index < 0 ? new(0.0, 0.0, 0.0) : Lure.Ballast[Index];

    /// <summary>Mass of the body with its other weights as it would be without this one, hooks apart, kg.</summary>
    public double BodyKg => KeepsTotal ? Lure.MassKg - Weight.MassKg : With(Weight with { MassKg = 0.0 }).MassKg;

    /// <summary>By how much the total grows with each kg of the weight while the body stays: less than 1 where it takes the place of wood.</summary>
    public double GainPerKg => Lure.Build is { Kind: LureBuild.Solid, DensityKgM3: double wood } ? 1.0 - (wood / Weight.DensityKgM3) : 1.0;

    /// <summary>Mass of the other weights, kg.</summary>
    public double OthersKg => Lure.Ballast.Sum(b => b.MassKg) - Weight.MassKg;

    /// <summary>Mass of the hooks, kg.</summary>
    public double HooksKg => Lure.Hooks.Sum(h => h.MassKg);

    /// <summary>The lure with another weight at a place; its height follows from <see cref="Height"/>.</summary>
    /// <param name="massKg">Mass of the weight, kg.</param>
    /// <param name="xM">From the middle toward the nose, m.</param>
    public LureSpec With(double massKg, double xM) => With(At(massKg, xM));

    /// <summary>Another weight at a place.</summary>
    /// <param name="massKg">Mass of the weight, kg.</param>
    /// <param name="xM">From the middle toward the nose, m.</param>
    public BallastSpec At(double massKg, double xM)
    {
        BallastSpec moved = Weight with { MassKg = massKg, XM = xM };
        return Height == BallastHeight.Kept ? moved : moved with { ZM = BallastRoom.LowestM(HullShape.Create(Lure).SectionAt(xM), moved) };
    }

    /// <summary>The lure with another weight.</summary>
    /// <param name="weight">Weight.</param>
    public LureSpec With(BallastSpec weight)
    {
        ArgumentNullException.ThrowIfNull(weight);
        BallastSpec[] all = [.. Lure.Ballast];
        if (Index < 0)
        {
            all = [weight];
        }
        else
        {
            all[Index] = weight;
        }

        double mass = KeepsTotal ? Lure.MassKg : Lure.MassKg - Weight.MassKg + weight.MassKg;
        LureSpec with = Lure with { Ballast = [.. all], MassKg = mass };
        return KeepsTotal ? with : LureWeight.Weighed(with);
    }
}
