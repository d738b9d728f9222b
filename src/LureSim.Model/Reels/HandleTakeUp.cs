using LureSim.Model.Hands;

namespace LureSim.Model.Reels;

/// <summary>
/// How fast the reel takes line in. Gathering keeps a wanted slack as people do, slowly: with e the slack, smoothed over a
/// lag, minus the wanted slack, V = V_i + gain e, V_i' = gain reset e, held between 0 and the fastest (common practice, no source).
/// </summary>
public sealed class HandleTakeUp
{
    private readonly TakeUpSpec spec;
    private readonly Twitch twitch;
    private double smoothSlack;
    private double integral;

    /// <summary>Starts to gather.</summary>
    /// <param name="spec">How the handle is turned.</param>
    /// <param name="twitch">Stroke over time.</param>
    /// <param name="slackM">Slack at the start, m.</param>
    /// <param name="startMS">Speed at the start of gathering, m/s.</param>
    public HandleTakeUp(TakeUpSpec spec, Twitch twitch, double slackM, double startMS)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(twitch);
        this.spec = spec;
        this.twitch = twitch;
        smoothSlack = slackM;
        integral = startMS;
    }

    /// <summary>Take-up speed for the coming step, m/s.</summary>
    /// <param name="timeS">t at the start of the step, s.</param>
    /// <param name="dt">Step, s.</param>
    /// <param name="slackM">Slack now, m.</param>
    public double Speed(double timeS, double dt, double slackM)
    {
        switch (spec.Mode)
        {
            case TakeUpMode.Steady:
                return spec.SpeedMS;
            case TakeUpMode.PerTwitch:
                double u = (timeS % twitch.PeriodS) - twitch.PullS;
                return u >= 0.0 && u < twitch.ReturnS ? spec.PerTwitchM / twitch.ReturnS : 0.0;
            default:
                smoothSlack += dt * (slackM - smoothSlack) / spec.LagS;
                double error = smoothSlack - spec.SlackM;
                integral = Math.Clamp(integral + (dt * (spec.GainPerS * spec.ResetPerS) * error), 0.0, spec.FastestMS);
                return Math.Clamp(integral + (spec.GainPerS * error), 0.0, spec.FastestMS);
        }
    }
}
