namespace LureSim.Model.Hands;

/// <summary>How the angler stands and twitches.</summary>
/// <param name="HandHeightM">Height of the hand over the water, m, 0.3 to 4.</param>
/// <param name="RodElevationRad">Rod above the horizontal at rest; negative = tip low, rad, -1.4 to 1.4.</param>
/// <param name="RodBearingRad">Rod from the line's direction: 0 = pointing at the lure, pi/2 = square to it, rad; negative: to the other side.</param>
/// <param name="PullTimeS">Time of the pull, s, guess 0.10 (0.06 to 0.18).</param>
/// <param name="ReturnTimeS">Time of the quick return, s, guess 0.15 (0.08 to 0.3).</param>
/// <param name="ReturnShare">Share of the stroke given back in the quick return; the rest drifts back until the next pull, 0 to 1.</param>
/// <param name="SustainedTorqueNm">Wrist torque that can be repeated for a long time, N m, guess 3 (2 to 5: a quarter of
/// the isometric maximum, P5).</param>
public sealed record AnglerSpec(
    [property: Parameter("hand height", "m", 0.3, 4.0)] double HandHeightM = 1.2,
    [property: Parameter("elevation", "rad", -1.4, 1.4)] double RodElevationRad = -0.35,
    [property: Parameter("bearing", "rad", -2.6, 2.6)] double RodBearingRad = 1.05,
    [property: Parameter("pull time", "s", 0.03, 1.0, GuessLow = 0.06, GuessHigh = 0.18)] double PullTimeS = 0.10,
    [property: Parameter("return time", "s", 0.03, 2.0, GuessLow = 0.08, GuessHigh = 0.3)] double ReturnTimeS = 0.15,
    [property: Parameter("return share", "", 0.0, 1.0)] double ReturnShare = 1.0,
    [property: Parameter("sustained torque", "N m", 0.1, 30.0, GuessLow = 2.0, GuessHigh = 5.0)] double SustainedTorqueNm = 3.0) : ISpec;
