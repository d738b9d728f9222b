using LureSim.Model;
using LureSim.Model.Cover;
using LureSim.Model.Strike;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;

namespace LureSim.Studies.Cover;

/// <summary>How far what nobody has published may be off, as shares of the value in use: low, 1, high. What the reader gave has no band.</summary>
/// <param name="Set">Force that sets a point.</param>
/// <param name="Hold">Force at which a point tears out.</param>
/// <param name="Wire">Force at which its wire opens.</param>
/// <param name="Knot">Strength of the knots.</param>
/// <param name="Rod">Load that the rod bears.</param>
/// <param name="Speed">Top speed of the fish.</param>
/// <param name="Grip">Grip of the scenario's own plants.</param>
/// <param name="Own">Kind of those plants; the grip of others is usual and a guess.</param>
public sealed record CoverBands(Ranged Set, Ranged Hold, Ranged Wire, Ranged Knot, Ranged Rod, Ranged Speed, Ranged Grip, CoverKind Own)
{
    private static readonly Ranged Sure = new(1.0, 1.0, 1.0), UsualGrip = Ranged.About(1.0, CoverSpec.Spread);

    /// <summary>Of a scenario.</summary>
    /// <param name="scenario">Valid scenario.</param>
    public static CoverBands Of(ScenarioResult scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        IReadOnlyList<GuessedKey> guesses = scenario.Effective().Guesses;
        Ranged Band(KeySpec key) => guesses.FirstOrDefault(g => g.Key == key) is { Value: > 0.0 } guess ? new(1.0, guess.Low / guess.Value, guess.High / guess.Value) : Sure;
        return new(
            Band(StrikeKeys.SetForce), Band(StrikeKeys.TearForce), Band(StrikeKeys.WireForce), Band(StrikeKeys.KnotStrength), Band(StrikeKeys.RodLimit), Band(FishKeys.Speed),
            Band(CoverKeys.Grip), scenario.Setup!.Cover.Kind);
    }

    /// <summary>Band of the grip of plants.</summary>
    /// <param name="kind">Which.</param>
    public Ranged GripOf(CoverKind kind) => kind == Own ? Grip : UsualGrip;

    /// <summary>What a place bears; the strength of the line itself is that of its label.</summary>
    /// <param name="margin">Place with the value in use.</param>
    public Ranged Strength(Margin margin)
    {
        ArgumentNullException.ThrowIfNull(margin);
        return Times(margin.StrengthN, margin.Place switch
        {
            WeakPlace.Knot or WeakPlace.Leader => Knot,
            WeakPlace.HookWire => Wire,
            WeakPlace.HookHold => Hold,
            WeakPlace.Rod => Rod,
            _ => Sure,
        });
    }

    /// <summary>A value with a band.</summary>
    /// <param name="value">Value in use.</param>
    /// <param name="band">Shares.</param>
    public static Ranged Times(double value, Ranged band) => new(value, value * band.Low, value * band.High);
}
