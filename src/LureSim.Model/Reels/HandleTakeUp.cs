using LureSim.Model.Hands;

namespace LureSim.Model.Reels;

/// <summary>
/// How fast the reel takes line in. Gathering keeps a wanted slack as people do, slowly: with e the slack, smoothed over a
/// lag, minus the wanted slack, V = V_i + gain e, V_i' = gain reset e, held between 0 and the fastest (common practice, no source).
/// </summary>
public sealed class HandleTakeUp
{
    private readonly TakeUpSpec _spec;
    private readonly Twitch _twitch;
    private double _smoothSlack;
    private double _integral;

    /// <summary>Starts to gather.</summary>
    /// <param name="spec">How the handle is turned.</param>
    /// <param name="twitch">Stroke over time.</param>
    /// <param name="slackM">Slack at the start, m.</param>
    /// <param name="startMS">Speed at the start of gathering, m/s.</param>
    public HandleTakeUp(TakeUpSpec spec, Twitch twitch, double slackM, double startMS)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(twitch);
        _spec = spec;
        _twitch = twitch;
        _smoothSlack = slackM;
        _integral = startMS;
    }

    /// <summary>Take-up speed for the coming step, m/s.</summary>
    /// <param name="timeS">t at the start of the step, s.</param>
    /// <param name="dt">Step, s.</param>
    /// <param name="slackM">Slack now, m.</param>
    public double Speed(double timeS, double dt, double slackM)
    {
        switch (_spec.Mode)
        {
            case TakeUpMode.Steady:
                return _spec.SpeedMS;
            case TakeUpMode.PerTwitch:
                double u = (timeS % _twitch.PeriodS) - _twitch.PullS;
                return u >= 0.0 && u < _twitch.ReturnS ? _spec.PerTwitchM / _twitch.ReturnS : 0.0;
            default:
                _smoothSlack += dt * (slackM - _smoothSlack) / _spec.LagS;
                double error = _smoothSlack - _spec.SlackM;
                _integral = Math.Clamp(_integral + (dt * (_spec.GainPerS * _spec.ResetPerS) * error), 0.0, _spec.FastestMS);
                return Math.Clamp(_integral + (_spec.GainPerS * error), 0.0, _spec.FastestMS);
        }
    }
}
