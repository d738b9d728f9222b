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

/// <summary>How the handle is turned.</summary>
/// <param name="Mode">Mode.</param>
/// <param name="SlackM">Mean slack the angler keeps: unstretched line out minus straight distance, m.</param>
/// <param name="SpeedMS">Line speed for <see cref="TakeUpMode.Steady"/> and for a steady pull, m/s.</param>
/// <param name="PerTwitchM">Line per twitch for <see cref="TakeUpMode.PerTwitch"/>, m.</param>
public sealed record TakeUpSpec(
    TakeUpMode Mode = TakeUpMode.Gather,
    [property: Parameter("slack", "m", 0.0, 2.0)] double SlackM = 0.14,
    [property: Parameter("V", "m/s", 0.0, 2.0)] double SpeedMS = 0.3,
    [property: Parameter("line per twitch", "m", 0.0, 1.0)] double PerTwitchM = 0.2);
