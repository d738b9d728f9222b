namespace LureSim.Model.Reels;

/// <summary>How the reel is worked while a lure is brought home.</summary>
public enum TakeUpMode
{
    /// <summary>The angler keeps a wanted slack: slow feedback on the handle.</summary>
    Gather,

    /// <summary>Constant handle speed.</summary>
    Steady,

    /// <summary>A fixed length wound in during the return of each twitch.</summary>
    PerTwitch,
}

/// <summary>How the handle is turned. The last four are guesses about hands that gather: slower ones take longer to settle and end at the
/// same slack.</summary>
/// <param name="Mode">Mode.</param>
/// <param name="SlackM">Mean slack the angler keeps: unstretched line out minus straight distance, m.</param>
/// <param name="SpeedMS">Line speed for <see cref="TakeUpMode.Steady"/> and for a steady pull, m/s.</param>
/// <param name="PerTwitchM">Line per twitch for <see cref="TakeUpMode.PerTwitch"/>, m.</param>
/// <param name="LagS">Time over which the hand averages the slack, s, guess 0.6 (0.3 to 1.2).</param>
/// <param name="GainPerS">Speed per slack too much, 1/s, guess 0.6 (0.3 to 1.2).</param>
/// <param name="ResetPerS">Rate at which lasting slack becomes lasting speed, 1/s, guess 0.5 (0.25 to 1).</param>
/// <param name="FastestMS">Fastest gathering, m/s, guess 2 (1 to 3).</param>
public sealed record TakeUpSpec(
    TakeUpMode Mode = TakeUpMode.Gather,
    [property: Parameter("slack", "m", 0.0, 2.0)] double SlackM = 0.14,
    [property: Parameter("V", "m/s", 0.0, 2.0)] double SpeedMS = 0.3,
    [property: Parameter("line per twitch", "m", 0.0, 1.0)] double PerTwitchM = 0.2,
    [property: Parameter("lag", "s", 0.05, 5.0, GuessLow = 0.3, GuessHigh = 1.2)] double LagS = 0.6,
    [property: Parameter("gain", "1/s", 0.01, 10.0, GuessLow = 0.3, GuessHigh = 1.2)] double GainPerS = 0.6,
    [property: Parameter("reset", "1/s", 0.0, 10.0, GuessLow = 0.25, GuessHigh = 1.0)] double ResetPerS = 0.5,
    [property: Parameter("fastest", "m/s", 0.1, 5.0, GuessLow = 1.0, GuessHigh = 3.0)] double FastestMS = 2.0) : ISpec;
