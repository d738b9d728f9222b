using LureSim.Model.Lures;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Design;

/// <summary>What a search changes on a lure. The mass of body and weights stays; a body of known material stays itself.</summary>
/// <param name="BallastKg">Mass of the weight, kg.</param>
/// <param name="BallastXM">Its place, m from the middle toward the nose.</param>
/// <param name="TieZM">Line tie over the axis, m.</param>
/// <param name="HookSteps">Sizes that every hook is larger by.</param>
public sealed record WalkMove(double BallastKg, double BallastXM, double TieZM, int HookSteps)
{
    /// <summary>The changed lure.</summary>
    /// <param name="lure">Lure.</param>
    /// <param name="sizes">Its hooks by size.</param>
    public LureSpec Of(LureSpec lure, HookSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(lure);
        ArgumentNullException.ThrowIfNull(sizes);
        LureSpec moved = BallastSlot.Of(lure, BallastHeight.Kept, keepsTotal: lure.Build.DensityKgM3 is null).With(BallastKg, BallastXM) with { TieZM = TieZM };
        return HookSteps == 0 ? moved : sizes.With(moved, h => h.Row + HookSteps);
    }
}

/// <summary>Bounds of a search, and the smooth map that keeps it inside: middle plus half times the sine of a free number.</summary>
/// <param name="Low">Lower bounds: mass, place, tie.</param>
/// <param name="High">Upper bounds.</param>
public sealed record WalkBounds(IReadOnlyList<double> Low, IReadOnlyList<double> High)
{
    /// <summary>Numbers that vary.</summary>
    public const int Count = 3;

    /// <summary>Bounds of a lure: a third of its weight to twice it, the place where the body has room within a third of the length of its own, the tie from a third of the height under the axis to a tenth over it.</summary>
    /// <param name="lure">Lure.</param>
    public static WalkBounds Of(LureSpec lure)
    {
        ArgumentNullException.ThrowIfNull(lure);
        var slot = BallastSlot.Of(lure);
        double mass = slot.Weight.MassKg > 0.0 ? slot.Weight.MassKg : 0.15 * lure.MassKg, x = slot.Weight.XM, third = lure.LengthM / 3.0;
        (double tail, double nose) = BallastRoom.Along(slot, mass) ?? (-third, third);
        return new(
            [mass / 3.0, Math.Max(tail, x - third), -lure.HeightM / 3.0],
            [Math.Min(2.0 * mass, 0.9 * (lure.MassKg - slot.OthersKg)), Math.Min(nose, x + third), 0.1 * lure.HeightM]);
    }

    /// <summary>A value inside.</summary>
    /// <param name="i">Which.</param>
    /// <param name="free">Any number.</param>
    public double At(int i, double free) => (0.5 * (Low[i] + High[i])) + (0.5 * (High[i] - Low[i]) * Math.Sin(free));

    /// <summary>The free number of a value; one outside is taken to the bound.</summary>
    /// <param name="i">Which.</param>
    /// <param name="value">Value.</param>
    public double Free(int i, double value) => Math.Asin(Math.Clamp(((2.0 * value) - Low[i] - High[i]) / (High[i] - Low[i]), -1.0, 1.0));
}
