using LureSim.Model.Lures;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Strike;

namespace LureSim.Reports.Strike;

/// <summary>What a strike rests on that nobody has measured.</summary>
internal static class GuessStory
{
    /// <summary>One sentence or two.</summary>
    /// <param name="report">Strike.</param>
    /// <param name="shown">Units.</param>
    public static string Sentence(StrikeReport report, Shown shown)
    {
        HookHold hook = report.Strike.Setup.Hook;
        return $"What this rests on: nobody has published what drives a hook into a fish or tears it out, nor what a rod bears or plants hold. Here a point needs {shown.Pull(hook.SetN)}, tears at {shown.Pull(hook.HoldN)}, "
            + $"its wire opens at {shown.Pull(hook.WireN)}, knots bear {Trade.Fixed(100.0 * report.Strike.Task.KnotShare, 0)} % of the line and the rod {Trade.Fixed(report.Strike.Task.RodFactor, 0)} times the load that drops its tip by a third. "
            + "Give what you know better: strike.set_force, tear_force, wire_force, knot_strength, rod_limit.";
    }
}
