using LureSim.Model;
using LureSim.Model.Assembly;
using LureSim.Model.Lines;
using LureSim.Model.Strike;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Strike;

/// <summary>Strength of a place that is a guess.</summary>
/// <param name="Place">Place.</param>
/// <param name="LowN">Low end of its range, N.</param>
/// <param name="HighN">High end, N.</param>
public sealed record PlaceGuess(WeakPlace Place, double LowN, double HighN);

/// <summary>Pulls that rest on guesses, with their ranges; what the reader gave is no guess.</summary>
/// <param name="SettingN">Pull on the hook that sets all points, N; null where it was given.</param>
/// <param name="Strengths">Strengths of places.</param>
public sealed record StrikeGuesses(Ranged? SettingN, ValueList<PlaceGuess> Strengths)
{
    /// <summary>Everything given.</summary>
    public static StrikeGuesses None { get; } = new(null, []);

    /// <summary>Those of a scenario.</summary>
    /// <param name="setup">Set-up.</param>
    /// <param name="effective">Its values with their origin.</param>
    public static StrikeGuesses Of(Setup setup, EffectiveScenario effective)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(effective);
        int points = setup.Hook.Points;
        GuessedKey? set = effective.Guesses.FirstOrDefault(g => g.Key == StrikeKeys.SetForce);
        return new(
            set is null ? null : new(points * set.Value, points * set.Low, points * set.High),
            [.. effective.Guesses.SelectMany(g => Places(g.Key, setup).Select(p => new PlaceGuess(p.Place, p.PerUnitN * g.Low, p.PerUnitN * g.High)))]);
    }

    // Places whose strength is a key's value times a force.
    private static IEnumerable<(WeakPlace Place, double PerUnitN)> Places(KeySpec key, Setup setup) =>
        key == StrikeKeys.TearForce ? [(WeakPlace.HookHold, setup.Hook.Points)]
        : key == StrikeKeys.WireForce ? [(WeakPlace.HookWire, setup.Hook.Points)]
        : key == StrikeKeys.RodLimit ? [(WeakPlace.Rod, setup.Rod.ThirdLoadN)]
        : key == StrikeKeys.KnotStrength ? [(WeakPlace.Knot, setup.Line.BreakN), .. setup.Leader is LeaderSpec leader ? [(WeakPlace.Leader, leader.Line.BreakN)] : Array.Empty<(WeakPlace, double)>()]
        : [];
}
