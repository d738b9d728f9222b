using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Strike;

namespace LureSim.Studies.Cover;

/// <summary>Which keys enter a comparison of covers: those of a strike, and those of landing and of the other covers.</summary>
public static class CoverKeysRead
{
    private static readonly StrikeSource Strike = new();

    private static readonly KeySpec[] Beside =
    [
        ReelKeys.Ratio, FishKeys.Mass, FishKeys.DragArea, FishKeys.Speed, CoverKeys.LineFriction, CoverKeys.Height, CoverKeys.LureFriction,
    ];

    /// <summary>Whether a key enters.</summary>
    /// <param name="key">Key.</param>
    /// <param name="scenario">Valid scenario.</param>
    public static bool Reads(KeySpec key, ScenarioResult scenario) => Beside.Contains(key) || Strike.Reads(key, scenario);
}
