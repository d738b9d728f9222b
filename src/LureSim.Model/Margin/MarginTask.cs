namespace LureSim.Model.Margin;

/// <summary>What the walk margin is asked at: a straight tow, and one pull at a lure that lies at an angle to its line.</summary>
/// <param name="SpeedMS">U, speed of the tow, m/s.</param>
/// <param name="LineM">l, line from hand to line tie, m.</param>
/// <param name="HandHeightM">Hand over the water, m; less than the line.</param>
/// <param name="PullNs">Impulse of the pull, N s; pulls of a walk bring 0.007 to 0.09 at the nose.</param>
/// <param name="PullS">How long it lasts, half a sine, s.</param>
/// <param name="AngleRad">Angle between axis and line when it comes, rad.</param>
/// <param name="WatchS">How long the lure is watched from the start of the pull, s.</param>
/// <param name="StepS">Time step, s.</param>
public sealed record MarginTask(
    [property: Parameter("U", "m/s", 0.05, 2.0)] double SpeedMS = 0.3,
    [property: Parameter("l", "m", 0.3, 30.0)] double LineM = 3.0,
    [property: Parameter("hand height", "m", 0.0, 5.0)] double HandHeightM = 0.3,
    [property: Parameter("J", "N s", 1e-4, 1.0)] double PullNs = 0.04,
    [property: Parameter("pull time", "s", 0.01, 1.0)] double PullS = 0.12,
    [property: Parameter("angle", "rad", 0.0, 3.1)] double AngleRad = 45.0 * Math.PI / 180.0,
    [property: Parameter("watch", "s", 0.05, 10.0)] double WatchS = 1.0,
    [property: Parameter("h", "s", 1e-4, 4e-3)] double StepS = 1e-3) : ISpec
{
    /// <summary>Demands every number inside its range.</summary>
    /// <exception cref="ArgumentException">A value is out of range; the message names it and what is allowed.</exception>
    public void Check()
    {
        Parameter.Demand(this);
        if (HandHeightM >= LineM)
        {
            throw new ArgumentException($"HandHeightM is {HandHeightM}; it must be less than LineM, {LineM}.");
        }
    }
}
