using LureSim.Model.Lures.Free;

namespace LureSim.Model.Pool;

/// <summary>Measurements that anybody can make in a pool: a tow, a push, a coast-down, and three swings after letting go.</summary>
/// <param name="TowLineM">Line from hand to line tie, m.</param>
/// <param name="HandHeightM">Hand over the water, m; less than the line.</param>
/// <param name="TowStiffnessN">EA of that line, N, guess 150 (30 to 600: nylon of 0.14 to 0.6 mm); k = EA over length.</param>
/// <param name="TowDampingTimeS">tau, its damping over its stiffness, s, guess 0.005 (0.001 to 0.02); c = k tau.</param>
/// <param name="TowDistanceM">Way of the hand, m; the last <see cref="CountedShare"/> of it counts.</param>
/// <param name="TowHeadingRad">Heading off the line at the start, rad: a lure that will not stay straight needs something to grow from.</param>
/// <param name="PushSpeedMS">Speed at which the lure is let go, m/s, of push and coast-down.</param>
/// <param name="PushDriftRad">Angle between its way and its axis at the push, rad.</param>
/// <param name="HeelRad">Heel at which it is let go, rad; at most half of what it rights itself from.</param>
/// <param name="PressM">How far it is pressed down, m; at most half of its highest point.</param>
/// <param name="StepS">Time step, s; a tow takes two of them at once.</param>
public sealed record PoolTask(
    [property: Parameter("tow line", "m", 0.3, 30.0)] double TowLineM = 3.0,
    [property: Parameter("hand height", "m", 0.0, 5.0)] double HandHeightM = 0.3,
    [property: Parameter("EA", "N", 1.0, 1e5, GuessLow = 30.0, GuessHigh = 600.0)] double TowStiffnessN = 150.0,
    [property: Parameter("tau", "s", 0.0, 1.0, GuessLow = 0.001, GuessHigh = 0.02)] double TowDampingTimeS = 0.005,
    [property: Parameter("tow distance", "m", 1.0, 100.0)] double TowDistanceM = 8.0,
    [property: Parameter("start heading", "rad", 0.0, 1.5)] double TowHeadingRad = 5.0 * Math.PI / 180.0,
    [property: Parameter("u0", "m/s", 0.05, 3.0)] double PushSpeedMS = 0.5,
    [property: Parameter("drift", "rad", 0.0, 0.8)] double PushDriftRad = 3.0 * Math.PI / 180.0,
    [property: Parameter("heel", "rad", 0.01, 1.5)] double HeelRad = 20.0 * Math.PI / 180.0,
    [property: Parameter("press", "m", 1e-4, 0.05)] double PressM = 0.005,
    [property: Parameter("h", "s", 1e-4, 4e-3)] double StepS = 2e-3) : ISpec
{
    /// <summary>Range of a tow speed, m/s.</summary>
    public const double SlowestTowMS = 0.05, FastestTowMS = 2.0;

    /// <summary>Most speeds of a tow.</summary>
    public const int MostSpeeds = 20;

    /// <summary>Share of the way, at its end, over which a tow is measured.</summary>
    public const double CountedShare = 0.3;

    /// <summary>Tow speeds, m/s, rising; 1 to <see cref="MostSpeeds"/> of them.</summary>
    public ValueList<double> SpeedsMS { get; init; } = [0.15, 0.3, 0.5, 0.8];

    /// <summary>The line from hand to lure.</summary>
    internal ElasticLine TowLine => new(TowLineM, TowStiffnessN / TowLineM, TowStiffnessN / TowLineM * TowDampingTimeS);

    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        Parameter.Demand(this);
        Require.InRange(SpeedsMS.Count, 1, MostSpeeds, nameof(SpeedsMS));
        double least = SlowestTowMS;
        foreach (double speed in SpeedsMS)
        {
            least = Require.InRange(speed, least, FastestTowMS, nameof(SpeedsMS));
        }

        if (HandHeightM >= TowLineM)
        {
            throw new ArgumentException($"HandHeightM is {HandHeightM}; it must be less than TowLineM, {TowLineM}.");
        }
    }
}
