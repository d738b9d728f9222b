using LureSim.Model.Assembly;

namespace LureSim.Model.Landing;

/// <summary>What holding and landing a fish depends on besides the set-up: the angler's strength, and where.</summary>
/// <param name="DistanceM">Level distance from the rod tip to the fish, m.</param>
/// <param name="TorqueNm">tau_0, torque of the hands at rest, N m, guess 40 (two arms; 25 to 60).</param>
/// <param name="PullN">F_0, pull that arms and body hold, N, guess 100 (60 to 170).</param>
/// <param name="LiftShare">Share of both for a lift of a second or two, guess 1 (0.7 to 1.3: people yield only at up to 1.3 times their static strength).</param>
/// <param name="HoldShare">Share of both that is held for a minute, guess 0.4 (0.2 to 0.7).</param>
/// <param name="KnotShare">Strength of the knots over the line's, guess 0.75 (0.5 to 0.95).</param>
/// <param name="RodFactor">Load that the rod bears at 45 deg of rod angle over its power load, guess 12 (7 to 20).</param>
/// <param name="ShortLineM">Line out beyond the tip with the fish at the boat, m, guess 2.5 (2 to 3).</param>
/// <param name="BoatAngleRad">Butt above the level then, rad, guess 0.5 (0.2 to 0.9).</param>
/// <param name="SteadyTurnsS">Handle turns in a second that are kept up, guess 2 (1.5 to 2.5).</param>
/// <param name="BurstTurnsS">Handle turns in a second for a short burst, guess 3 (2 to 4).</param>
/// <param name="StartRad">Butt at the start of a sweep, from the square to the line, negative toward the fish, rad.</param>
/// <param name="StopRad">Butt at its end, rad.</param>
/// <param name="TravelM">Way of the hands in a sweep, m.</param>
/// <param name="PlantSpeedMS">Speed at which a fish is drawn through plants, m/s, guess 0.5 (0.2 to 1).</param>
/// <param name="Margin">Strength of the weakest part over what the drag may let through at the boat, guess 1.5 (1.2 to 2).</param>
public sealed record LandingTask(
    [property: Parameter("distance", "m", 1.0, 60.0)] double DistanceM = 15.0,
    [property: Parameter("tau_0", "N m", 1.0, 120.0, Spread = 1.5)] double TorqueNm = 40.0,
    [property: Parameter("F_0", "N", 1.0, 500.0, Spread = 1.7)] double PullN = 100.0,
    [property: Parameter("lift share", "", 0.1, 2.0, GuessLow = 0.7, GuessHigh = 1.3)] double LiftShare = 1.0,
    [property: Parameter("hold share", "", 0.01, 1.5, GuessLow = 0.2, GuessHigh = 0.7)] double HoldShare = 0.4,
    [property: Parameter("knot", "", 0.2, 1.0, GuessLow = 0.5, GuessHigh = 0.95)] double KnotShare = 0.75,
    [property: Parameter("rod factor", "", 1.0, 50.0, GuessLow = 7.0, GuessHigh = 20.0)] double RodFactor = 12.0,
    [property: Parameter("short line", "m", 0.5, 10.0, GuessLow = 2.0, GuessHigh = 3.0)] double ShortLineM = 2.5,
    [property: Parameter("boat angle", "rad", -0.5, 1.3, GuessLow = 0.2, GuessHigh = 0.9)] double BoatAngleRad = 0.5,
    [property: Parameter("steady turns", "1/s", 0.1, 10.0, GuessLow = 1.5, GuessHigh = 2.5)] double SteadyTurnsS = 2.0,
    [property: Parameter("burst turns", "1/s", 0.1, 10.0, GuessLow = 2.0, GuessHigh = 4.0)] double BurstTurnsS = 3.0,
    [property: Parameter("start angle", "rad", -1.6, 0.5)] double StartRad = -1.2,
    [property: Parameter("stop angle", "rad", -1.4, 1.6)] double StopRad = 0.5,
    [property: Parameter("travel", "m", 0.0, 1.5, Spread = 1.4)] double TravelM = 0.4,
    [property: Parameter("plant speed", "m/s", 0.0, 5.0, GuessLow = 0.2, GuessHigh = 1.0)] double PlantSpeedMS = 0.5,
    [property: Parameter("margin", "", 1.0, 10.0, GuessLow = 1.2, GuessHigh = 2.0)] double Margin = 1.5) : ISpec
{
    /// <summary>What hands and arms hold for a short lift.</summary>
    internal Grip Short => new(LiftShare * TorqueNm, LiftShare * PullN);

    /// <summary>What they hold for long.</summary>
    internal Grip Long => new(HoldShare * TorqueNm, HoldShare * PullN);

    /// <summary>Height of a bent rod's tip over the water while a fish is held, m: the hand's and half the free length.</summary>
    /// <param name="setup">Set-up.</param>
    public static double TipHeightM(Setup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return setup.Angler.HandHeightM + (0.5 * setup.Rod.FreeLengthM);
    }

    /// <summary>Line over the level at the fish, rad.</summary>
    /// <param name="setup">Set-up.</param>
    public double LineElevationRad(Setup setup) => Math.Atan2(TipHeightM(setup), DistanceM);
}
