namespace LureSim.Model.Hands;

/// <summary>
/// The stroke of one twitch over its period: a raised-cosine pull, a raised-cosine return of a share of the stroke, and a
/// slow drift back for the rest. When pull and return do not fit they are squeezed to 80 % of the period.
/// </summary>
public sealed class Twitch
{
    private readonly double _share;

    /// <summary>Prepares the stroke.</summary>
    /// <param name="cadencePerS">Twitches per second, positive.</param>
    /// <param name="pullTimeS">Pull time, s, positive.</param>
    /// <param name="returnTimeS">Return time, s, positive.</param>
    /// <param name="returnShare">Share of the stroke given back in the return, 0 to 1.</param>
    public Twitch(double cadencePerS, double pullTimeS, double returnTimeS, double returnShare)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cadencePerS);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pullTimeS);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(returnTimeS);
        PeriodS = 1.0 / cadencePerS;
        double squeeze = Math.Min(1.0, 0.8 * PeriodS / (pullTimeS + returnTimeS));
        PullS = squeeze * pullTimeS;
        ReturnS = squeeze * returnTimeS;
        _share = returnShare;
    }

    /// <summary>Period, s.</summary>
    public double PeriodS { get; }

    /// <summary>Pull time after squeezing, s.</summary>
    public double PullS { get; }

    /// <summary>Return time after squeezing, s.</summary>
    public double ReturnS { get; }

    /// <summary>Share of the stroke reached and its rate, 0 to 1 and 1/s.</summary>
    /// <param name="timeS">Time since the first pull began, s, not negative.</param>
    public (double Share, double Rate) At(double timeS)
    {
        double u = timeS % PeriodS;
        if (u < PullS)
        {
            return Ramp(u, PullS, 0.0, 1.0);
        }

        u -= PullS;
        if (u < ReturnS)
        {
            return Ramp(u, ReturnS, 1.0, 1.0 - _share);
        }

        return Ramp(u - ReturnS, PeriodS - PullS - ReturnS, 1.0 - _share, 0.0);
    }

    private static (double Share, double Rate) Ramp(double u, double time, double from, double to)
    {
        double angle = Math.PI * u / time;
        double change = 0.5 * (to - from);
        return (from + (change * (1.0 - Math.Cos(angle))), change * Math.PI / time * Math.Sin(angle));
    }
}
