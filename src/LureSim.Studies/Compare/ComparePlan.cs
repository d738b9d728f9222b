using LureSim.Scenarios.Keys;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Studies.Compare;

/// <summary>How finely set-ups are compared.</summary>
/// <param name="Seed">Seed of all set-ups.</param>
/// <param name="CastDraws">Draws of the guesses for casts and for what a hand feels, as of <c>cast --across</c>.</param>
/// <param name="WalkDraws">Draws at the set-up's own rhythm.</param>
/// <param name="WindowDraws">How many of these are searched for rhythms that walk.</param>
/// <param name="Threads">Most threads; 0 = all cores. No result depends on it.</param>
/// <param name="Rhythms">Search over rhythm; null for <see cref="Coarse"/>.</param>
public sealed record ComparePlan(ulong Seed = 1, int CastDraws = 40, int WalkDraws = 16, int WindowDraws = 8, int Threads = 0, CadencePlan? Rhythms = null)
{
    /// <summary>The search over rhythm, coarser than that of <c>cadence</c>: one start, steps of a third, edges to 0.15 a second, and shorter runs.</summary>
    public static CadencePlan Coarse { get; } = new(0.6, 3.4, 7, 1, 0.15, Run: new StationaryPlan(WarmUpS: 12.0, Twitches: 16));

    /// <summary>The search over rhythm.</summary>
    public CadencePlan Search => (Rhythms ?? Coarse) with { Threads = Threads };

    /// <summary>People of a number of draws.</summary>
    /// <param name="draws">Draws.</param>
    public People People(int draws) => new(draws, Seed);

    /// <summary>Guesses that a bend test of the rod settles: how stiff it is, where it bends, and how its mass lies.</summary>
    /// <param name="key">Key.</param>
    public static bool IsOfBendTest(KeySpec key) =>
        key == RodKeys.BendLoad || key == RodKeys.TipRadiusRatio || key == RodKeys.StiffnessExponent || key == RodKeys.Mass || key == RodKeys.FreeMassShare || key == RodKeys.MassExponent;
}
