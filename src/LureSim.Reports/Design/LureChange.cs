using LureSim.Model.Lures;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Design;

namespace LureSim.Reports.Design;

/// <summary>What differs between two builds of a lure, in words.</summary>
public static class LureChange
{
    // Smaller differences are rounding.
    private const double LeastM = 5e-5, LeastKg = 5e-6;

    /// <summary>Weight, tie, hooks, total: what of them differs; "nothing moved" where none does.</summary>
    /// <param name="before">Lure as it is.</param>
    /// <param name="after">Lure to build.</param>
    /// <param name="shown">Units.</param>
    public static string Words(LureSpec before, LureSpec after, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(shown);
        var units = new DesignUnits(shown);
        BallastSpec from = BallastSlot.Of(before).Weight, to = BallastSlot.Of(after).Weight;
        var parts = new List<string>();
        Add("weight", from.MassKg, to.MassKg, LeastKg, units.MassText);
        Add("weight", from.XM, to.XM, LeastM, units.Along);
        Add("weight", from.ZM, to.ZM, LeastM, units.Up);
        Add("line tie", before.TieXM, after.TieXM, LeastM, units.Along);
        Add("line tie", before.TieZM, after.TieZM, LeastM, units.Up);
        Add("hooks", before.Hooks.Sum(h => h.MassKg), after.Hooks.Sum(h => h.MassKg), LeastKg, units.MassText);
        Add("body and weights", before.MassKg, after.MassKg, LeastKg, units.MassText);
        return parts.Count == 0 ? "nothing moved" : string.Join("; ", parts);

        void Add(string what, double was, double now, double least, Func<double, string> tell)
        {
            if (Math.Abs(now - was) >= least)
            {
                parts.Add($"{what} {tell(now)} instead of {tell(was)}");
            }
        }
    }
}
