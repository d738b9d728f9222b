using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Reading;

/// <summary>
/// A lure that nobody fishes yet: where only the lure and its water are asked for, a file needs no rod and no line. A set-up has both, so stand-ins take
/// their place; nothing of them enters a lure at rest or in a pool.
/// </summary>
internal static class LureAlone
{
    private static readonly (KeySpec Key, string Text, KeySpec[] Others)[] StandIns =
    [
        (RodKeys.Length, "7 ft", []), (RodKeys.Power, "medium", [RodKeys.BendLoad]),
        (LineKeys.Set.Material, "braid", []), (LineKeys.Set.Label, "30 lb", [LineKeys.Set.Number, LineKeys.Set.Diameter]),
    ];

    /// <summary>Fills what is missing.</summary>
    /// <param name="entries">Values by index of their key.</param>
    /// <param name="asked">What is asked for.</param>
    /// <param name="name">Name of the file.</param>
    public static void Fill(Entry?[] entries, Activities asked, string name)
    {
        if ((asked & ~(Activities.Rest | Activities.Pool)) != 0)
        {
            return;
        }

        foreach ((KeySpec key, string text, KeySpec[] others) in StandIns)
        {
            if (entries[key.Index] is null && Array.TrueForAll(others, o => entries[o.Index] is null))
            {
                entries[key.Index] = new() { Key = key, Text = text, Place = new(new(name, 0), 1, 1), Layer = ScenarioSource.MadeLayer, Value = ValueReader.ReadText(key, text) };
            }
        }
    }
}
