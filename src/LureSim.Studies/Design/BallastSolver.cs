using LureSim.Model.Lures;
using LureSim.Model.Media;
using LureSim.Model.Trim;
using MathNet.Numerics.RootFinding;

namespace LureSim.Studies.Design;

/// <summary>
/// The inverse of floating. The lure is held at the wanted trim and free to rise: its mass alone says how deep it lies there, and balance asks that the centre of
/// gravity stands under or over that of buoyancy. So the mass of all follows from the freeboard (m = rho V), and the place of a weight of given mass is the
/// root of the arm between the centres, bracketed along the body and refined by Brent. Each answer is floated again, freely.
/// </summary>
public static class BallastSolver
{
    /// <summary>How near the wish an answer must float, rad (0.05 deg).</summary>
    public const double NearRad = 0.05 * Math.PI / 180.0;

    /// <summary>The same for the freeboard, m.</summary>
    public const double NearM = 0.05e-3;

    private const int Masses = 7, Halvings = 30;
    private const double LightestKg = 0.1e-3, RoundingM = 1e-9, SameShare = 0.02;

    /// <summary>Seeks every way to have a wish.</summary>
    /// <param name="before">The lure as it is, afloat.</param>
    /// <param name="water">Water.</param>
    /// <param name="wish">Wish.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="ArgumentException">The lure does not float as it is, or a wish is no number in its range.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static BallastAnswer Run(DesignPoint before, WaterState water, DesignWish wish, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(wish);
        TrimPoint now = before.Trim ?? throw new ArgumentException(before.Reason ?? "the lure does not float", nameof(before));
        KeptMass keeps = wish.Kept(before.Lure);
        var own = BallastSlot.Of(before.Lure, wish.Height, keeps == KeptMass.Total);
        var dead = new List<DeadEnd>();
        BallastAnswer Answer(IReadOnlyList<BallastPlace> places, double? least) => new(
            wish, before, own.Weight, places, Nearest(own, places), least, dead);

        double trim = wish.TrimRad ?? now.Rest.TrimRad;
        if (Total(own, keeps, water, trim, wish, now, dead) is not double total)
        {
            return Answer([], null);
        }

        double solid = total - own.HooksKg;
        if (keeps == KeptMass.Body)
        {
            return wish.FreeboardM is null && wish.TotalKg is null
                ? Several(own, most: Displaced(own.Lure, water) - own.BodyKg - own.HooksKg)
                : solid < own.BodyKg ? Blocked(new(DeadEndKind.TooHeavy, own.BodyKg - solid)) : Single((solid - own.BodyKg) / own.GainPerKg);
        }

        var kept = BallastSlot.Of(own.Lure with { MassKg = solid }, wish.Height, keepsTotal: true);
        return solid <= own.OthersKg ? Blocked(new(DeadEndKind.TooHeavy, own.OthersKg - solid)) : Several(kept, most: solid - own.OthersKg);

        BallastAnswer Blocked(DeadEnd end)
        {
            dead.Add(end);
            return Answer([], null);
        }

        BallastAnswer Single(double massKg) => Answer(new BallastSearch(own, water, trim, dead, stop).At(massKg, tells: true), null);

        BallastAnswer Several(BallastSlot slot, double most)
        {
            var search = new BallastSearch(slot, water, trim, dead, stop);
            double weight = own.Weight.MassKg;
            List<BallastPlace> places = weight > 0.0 && weight < most ? [.. search.At(weight, tells: true)] : [];
            double? least = Least(search, most);
            double from = least ?? LightestKg;
            for (int i = 0; i < Masses && least is not null; i++)
            {
                double mass = from + ((most - from) * i / Masses);
                if (places.Count == 0 || Math.Abs(mass - weight) > SameShare * weight)
                {
                    places.AddRange(search.At(mass, tells: places.Count == 0));
                }
            }

            return Answer([.. places.OrderBy(p => p.Weight.MassKg).ThenBy(p => p.Weight.XM)], least);
        }
    }

    // A weight that has its ball in the body, or sticks out no more than it does now, and of these the mass nearest to its own; where none has, the one that sticks out least.
    private static BallastPlace? Nearest(BallastSlot own, IReadOnlyList<BallastPlace> places)
    {
        double room = own.Index < 0 ? 0.0 : Math.Min(0.0, BallastRoom.SpareM(HullShape.Create(own.Lure).SectionAt(own.Weight.XM), own.Weight));
        return places.Where(p => p.SpareM >= room - RoundingM).MinBy(p => Math.Abs(p.Weight.MassKg - own.Weight.MassKg)) ?? places.MaxBy(p => p.SpareM);
    }

    // Mass with hooks; null where there is none, and the dead end says why.
    private static double? Total(BallastSlot own, KeptMass keeps, WaterState water, double trim, DesignWish wish, TrimPoint now, List<DeadEnd> dead)
    {
        double most = Displaced(own.Lure, water);
        double? asked = wish.FreeboardM is double f ? HeldTrim.MassKg(own.Lure, water, trim, f) : null;
        double total = wish.TotalKg ?? asked ?? now.Rest.MassKg;
        if (keeps == KeptMass.Total && wish.TotalKg is null)
        {
            total = now.Rest.MassKg;
        }

        if (total >= most * (1.0 - 1e-9))
        {
            dead.Add(new(DeadEndKind.Sinks, total, LimitM: most));
            return null;
        }

        if (total <= own.HooksKg)
        {
            dead.Add(new(DeadEndKind.TooHeavy, own.HooksKg - total));
            return null;
        }

        if (wish.FreeboardM is double wanted && HeldTrim.Of(own.Lure with { MassKg = total - own.HooksKg, Ballast = [] }, water, trim).FreeboardM is double comes
            && Math.Abs(comes - wanted) > NearM)
        {
            dead.Add(new(DeadEndKind.FreeboardSetByMass, asked!.Value, comes, wanted));
        }

        return total;
    }

    private static double Displaced(LureSpec lure, WaterState water) => water.DensityKgM3 * (HullShape.Create(lure).VolumeM3() + lure.Hooks.Sum(h => h.SteelVolumeM3));

    // Least mass with a root along the body; a heavier weight needs less of an arm.
    private static double? Least(BallastSearch search, double most)
    {
        double high = (1.0 - (1.0 / Masses)) * most, low = Math.Min(LightestKg, 0.5 * high);
        if (!search.CanBalance(high))
        {
            return null;
        }

        for (int i = 0; i < Halvings && !search.CanBalance(low); i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = search.CanBalance(middle) ? (low, middle) : (middle, high);
        }

        return search.CanBalance(low) ? low : high;
    }

    /// <summary>Root of an arm along the body.</summary>
    internal static double? Root(Func<double, double> arm, double low, double high) =>
        Brent.TryFindRoot(arm, low, high, 1e-10, 100, out double root) ? root : null;
}
