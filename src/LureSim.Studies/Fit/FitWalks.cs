using LureSim.Scenarios;
using LureSim.Scenarios.Measured;
using LureSim.Studies.Cadence;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Fit;

/// <summary>A film of a walk as it was read.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="RhythmPerS">Twitches per second that it shows.</param>
/// <param name="Pairs">Pairs of twitches on it.</param>
public sealed record FitWalkFilm(string Place, double RhythmPerS, double Pairs);

/// <summary>What was seen of walks, and what stroke and slack rest on besides.</summary>
/// <param name="Films">Films.</param>
/// <param name="RestsOn">Guesses of rod, line and hand that stay at their value while stroke and slack are fitted, by key.</param>
public sealed record FitWalks(IReadOnlyList<FitWalkFilm> Films, IReadOnlyList<string> RestsOn)
{
    /// <summary>Those of a file.</summary>
    /// <param name="file">Measurements.</param>
    /// <param name="scenario">Its scenario.</param>
    /// <param name="values">Numbers that were fitted.</param>
    internal static FitWalks Of(FitFile file, ScenarioResult scenario, IReadOnlyList<FitEstimate> values) => new(
        [.. file.Blocks.Where(b => b.Kind == FitKind.Walk).SelectMany(WalkReader.Films).Where(f => f.Film is not null).Select(f => new FitWalkFilm(f.Place, f.Film!.RhythmPerS, f.Film.Pairs))],
        [.. GuessDesign.Of(scenario, new CadenceSource(new CadencePlan())).Select(g => g.Key.Path).Where(k => values.All(v => v.Unknown.Name != k))]);
}
