using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Hands;
using LureSim.Model.Landing;
using LureSim.Model.Strike;

namespace LureSim.Studies.Strike;

/// <summary>Holding and landing by the person who strikes, where they strike.</summary>
public static class LandingOfStrike
{
    /// <summary>Works it out.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="task">Strike.</param>
    /// <exception cref="ArgumentException">A value is out of range.</exception>
    public static Outcome<LandingResult> Run(Setup setup, StrikeTask task)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(task);
        return LandingRun.Run(setup, Task(task));
    }

    // Both arms, as strong over the usual person as the person is in the style of the strike.
    private static LandingTask Task(StrikeTask task)
    {
        StrikeStroke stroke = task.Stroke, usual = StrikeStroke.Of(stroke.Style);
        var landing = new LandingTask(DistanceM: task.DistanceM, KnotShare: task.KnotShare, RodFactor: task.RodFactor);
        return landing with
        {
            TorqueNm = Within(nameof(LandingTask.TorqueNm), landing.TorqueNm * stroke.TorqueNm / usual.TorqueNm),
            PullN = Within(nameof(LandingTask.PullN), landing.PullN * stroke.PullN / usual.PullN),
            HoldShare = Within(nameof(LandingTask.HoldShare), stroke.HoldShare),
        };
    }

    private static double Within(string name, double value)
    {
        Parameter allowed = Parameter.Of<LandingTask>(name);
        return Math.Clamp(value, allowed.Low, allowed.High);
    }
}
