using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>One strike of many: one that cannot be done belongs to itself alone.</summary>
internal static class StrikeTrial
{
    /// <summary>The strike, or null where the model cannot finish it or the set-up makes none, such as a leader longer than the line that is out.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <param name="run">Runs one strike.</param>
    public static StrikeResult? Try(Setup setup, StrikeTask task, Func<Setup, StrikeTask, Outcome<StrikeResult>> run)
    {
        try
        {
            Outcome<StrikeResult> outcome = run(setup, task);
            return outcome.IsWhole ? outcome.Result : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
