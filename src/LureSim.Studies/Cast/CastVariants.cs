using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Scenarios;
using LureSim.Scenarios.Effective;
using LureSim.Studies.Across;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Cast;

/// <summary>The set-ups of a comparison of casts, each with its guesses drawn, the same luck for all.</summary>
/// <param name="source">Scenario file.</param>
/// <param name="overrides">Overrides of every set-up.</param>
/// <param name="scenario">The scenario with them, valid.</param>
/// <param name="draws">Draws of the guesses.</param>
public sealed class CastVariants(ScenarioSource source, IReadOnlyList<string> overrides, ScenarioResult scenario, int draws)
{
    private readonly EffectiveScenario _own = scenario.Effective();
    private readonly ulong _seed = scenario.Setup!.Seed;
    private readonly GuessDesign _design = new(Math.Max(1, draws), scenario.Setup!.Seed);
    private readonly CastSource _cast = new();

    /// <summary>One per combination of the axes; fewer after faults.</summary>
    /// <param name="axes">What differs.</param>
    /// <param name="faults">Gets every fault of a set-up.</param>
    public IReadOnlyList<CastVariant> Make(IReadOnlyList<AcrossAxis> axes, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(axes);
        ArgumentNullException.ThrowIfNull(faults);
        int ladder = axes.ToList().FindIndex(a => a.IsLadder);
        var variants = new List<CastVariant>();
        foreach ((IReadOnlyList<AcrossValue> values, IReadOnlyList<string> all) in AcrossAxis.Combine(axes))
        {
            string label = string.Join(", ", values.Select(v => v.Label));
            ScenarioResult here = source.Resolve([.. overrides, .. all]);
            foreach (ScenarioFault fault in here.Errors)
            {
                faults.Add(fault with { Place = $"--across {label}: {fault.Place}" });
            }

            if (here.Scenario is { Cast: CastTask task } whole)
            {
                string? length = ladder < 0 ? null : values[ladder].Label;
                variants.Add(new(label, values.Count == 1 ? values[0].Number : double.NaN, whole.Setup, task, Drawn(here, all, length)));
            }
        }

        return variants;
    }

    // With rods of several lengths mass and load of the rod follow its length in every draw. The hands are drawn too: which set-up is
    // worth having depends on them, and the reader's are not known.
    private Func<int, (Setup Setup, CastTask Task)?> Drawn(ScenarioResult here, IReadOnlyList<string> set, string? length)
    {
        GuessedKey[] guesses = GuessDesign.Of(length is null ? here : scenario, _cast);
        GuessedKey[] free = length is null ? guesses : [.. guesses.Where(g => !RodLadder.Scaled.Contains(g.Key))];
        return draw =>
        {
            IReadOnlyList<string> rod = length is null ? [] : RodLadder.Overrides(length, _own, guesses, _design, _seed, draw);
            return GuessDraw.Make(source, [.. overrides, .. set, .. rod], free, g => _design.Share(g, draw)).Scenario.Scenario is { Cast: CastTask task } whole
                ? (whole.Setup, task)
                : null;
        };
    }
}
