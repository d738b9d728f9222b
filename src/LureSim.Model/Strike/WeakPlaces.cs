using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Model.Lures;

namespace LureSim.Model.Strike;

/// <summary>Largest loads of a strike, or of a fish that pulls later.</summary>
/// <param name="HookN">Pull on hook and leader, N.</param>
/// <param name="TipN">Pull on line and knot, N.</param>
/// <param name="RodUse">Load on the rod over what it bears.</param>
public readonly record struct StrikeLoads(double HookN, double TipN, double RodUse);

/// <summary>What can give, with what it bears.</summary>
public static class WeakPlaces
{
    /// <summary>Every place under its load, least margin first.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="loads">Loads.</param>
    public static ValueList<Margin> Margins(Setup setup, StrikeTask task, StrikeLoads loads)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        HookHold hook = setup.Hook;
        double bears = RodBearsN(setup, task);
        var all = new List<Margin>
        {
            new(WeakPlace.Knot, loads.TipN, task.KnotShare * setup.Line.BreakN),
            new(WeakPlace.Line, loads.TipN, setup.Line.BreakN),
            new(WeakPlace.HookWire, loads.HookN, hook.OpeningN),
            new(WeakPlace.HookHold, loads.HookN, hook.TearingN),
            new(WeakPlace.Rod, loads.RodUse * bears, bears),
        };
        if (setup.Leader is LeaderSpec leader)
        {
            all.Add(new(WeakPlace.Leader, loads.HookN, task.KnotShare * leader.Line.BreakN));
        }

        return [.. all.OrderBy(m => m.Ratio).ThenBy(m => m.Place)];
    }

    /// <summary>Pull at 45 deg of rod angle that the rod bears, N.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    internal static double RodBearsN(Setup setup, StrikeTask task) => task.RodFactor * setup.Rod.ThirdLoadN;
}
