using System.Collections.Concurrent;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Across;

/// <summary>
/// A set-up of a comparison, whose guesses can be drawn: a scenario with overrides, or one whose rod gets another length and what goes with it
/// (<see cref="RodLadder"/>). A draw depends on the set-up, the design and the keys' names, on nothing else that is compared. Safe to use from several threads.
/// </summary>
public sealed class DrawnSetUp
{
    private readonly ScenarioSource _source;
    private readonly IReadOnlyList<string> _overrides;
    private readonly string? _length;
    private readonly ScenarioResult _rest;

    // Values without the length, from which it scales; only where there is one.
    private readonly EffectiveScenario? _own;
    private readonly ConcurrentDictionary<string, GuessedKey[]> _guesses = new(StringComparer.Ordinal);

    /// <summary>Reads the set-up.</summary>
    /// <param name="source">Scenario file.</param>
    /// <param name="overrides">Overrides.</param>
    /// <param name="length">Text of a rod length out of the ladder, or null for the rod as it is.</param>
    public DrawnSetUp(ScenarioSource source, IReadOnlyList<string> overrides, string? length = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(overrides);
        (_source, _overrides, _length) = (source, overrides, length);
        _rest = source.Resolve(overrides);
        _own = length is null || !_rest.IsValid ? null : _rest.Effective();
        Here = _own is null ? _rest : source.Resolve([.. overrides, .. RodLadder.Overrides(length!, _own)]);
    }

    /// <summary>With every guess as it stands; it may have errors, and then cannot be drawn.</summary>
    public ScenarioResult Here { get; }

    /// <summary>One draw of the guesses that a command reads; null where the draw makes no valid set-up.</summary>
    /// <param name="design">Draws.</param>
    /// <param name="figures">Command.</param>
    /// <param name="draw">Which draw.</param>
    /// <param name="held">Guesses that keep their value, or null for none. Where the load that bends the rod is one of them, what goes with the length of a
    /// rod of the ladder is held too.</param>
    public Scenario? Draw(GuessDesign design, IFigureSource figures, int draw, Func<KeySpec, bool>? held = null) => DrawWhole(design, figures, draw, held)?.Scenario;

    /// <summary>The same with all that was read: it has errors where the draw makes no valid set-up; null where there is nothing to draw from.</summary>
    /// <param name="design">Draws.</param>
    /// <param name="figures">Command.</param>
    /// <param name="draw">Which draw.</param>
    /// <param name="held">Guesses that keep their value, or null for none.</param>
    public ScenarioResult? DrawWhole(GuessDesign design, IFigureSource figures, int draw, Func<KeySpec, bool>? held = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(figures);
        if (!Here.IsValid)
        {
            return null;
        }

        GuessedKey[] guesses = _guesses.GetOrAdd(figures.Name, _ => GuessDesign.Of(_rest, figures));
        IEnumerable<GuessedKey> free = guesses.Where(g => held?.Invoke(g.Key) != true);
        string[] ladder = [];
        if (_length is not null)
        {
            // With rods of several lengths mass and load of the rod follow its length in every draw; they are written last.
            free = free.Where(g => !RodLadder.Scaled.Contains(g.Key));
            ladder = held?.Invoke(RodKeys.BendLoad) == true
                ? [.. RodLadder.Overrides(_length, _own!)]
                : [.. RodLadder.Overrides(_length, _own!, guesses, design, _rest.Setup!.Seed, draw)];
        }

        return GuessDraw.Make(_source, [.. _overrides, .. ladder], [.. free], g => design.Share(g, draw)).Scenario;
    }
}
