using LureSim.Model.Trim;
using LureSim.Scenarios;
using LureSim.Scenarios.Starting;

namespace LureSim.Studies.Start;

/// <summary>A scenario that is ready to be written.</summary>
/// <param name="Plan">What it was made from.</param>
/// <param name="Toml">The file.</param>
/// <param name="Scenario">What the file reads as, valid.</param>
/// <param name="Trim">How its lure floats.</param>
/// <param name="PromisedRad">Trim at which lures of its kind float: that of the part it was scaled from, rad.</param>
/// <param name="Remarks">What the person should know.</param>
public sealed record StartResult(
    StartPlan Plan, string Toml, ScenarioResult Scenario, TrimResult Trim, double PromisedRad, IReadOnlyList<string> Remarks);
