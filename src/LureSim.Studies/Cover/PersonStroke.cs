using LureSim.Model;
using LureSim.Model.Hands;
using LureSim.Model.Strike;

namespace LureSim.Studies.Cover;

/// <summary>The same person striking in another style.</summary>
internal static class PersonStroke
{
    /// <summary>The strike in a style: its usual stroke, with the effort of the person and as much stronger than usual as the person is in the scenario's style. A
    /// sweep is made on a tight line, the others with usual slack.</summary>
    /// <param name="task">Strike of the scenario.</param>
    /// <param name="style">Style.</param>
    public static StrikeTask With(StrikeTask task, StrikeStyle style)
    {
        StrikeStroke own = task.Stroke;
        if (own.Style == style)
        {
            return task;
        }

        StrikeStroke from = StrikeStroke.Of(own.Style), to = StrikeStroke.Of(style);
        StrikeStroke stroke = to with
        {
            Effort = own.Effort,
            TorqueNm = Within(nameof(StrikeStroke.TorqueNm), to.TorqueNm * own.TorqueNm / from.TorqueNm),
            PullN = Within(nameof(StrikeStroke.PullN), to.PullN * own.PullN / from.PullN),
            HoldShare = own.HoldShare,
        };
        return task with { Stroke = stroke, SlackM = style == StrikeStyle.Sweep ? 0.0 : own.Style == StrikeStyle.Sweep ? new StrikeTask().SlackM : task.SlackM };
    }

    private static double Within(string name, double value)
    {
        Parameter allowed = Parameter.Of<StrikeStroke>(name);
        return Math.Clamp(value, allowed.Low, allowed.High);
    }
}
