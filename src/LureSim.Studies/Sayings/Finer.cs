using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Sayings;

/// <summary>The keys of mesh and step of each command: what a study takes, and what is taken to see that a word does not hang on them.</summary>
internal static class Finer
{
    private static readonly (KeySpec Key, double Factor)[]
        OfMesh = [(SolverKeys.Nodes, 2.0), (CastKeys.NodeSpacing, 0.5)],
        OfStep = [(SolverKeys.Step, 0.5), (CastKeys.SwingStep, 0.5), (CastKeys.FlightStep, 0.5), (PoolKeys.Step, 0.5)];

    // As sweeps and searches over rhythm take them (docs/performance.md).
    private static readonly (KeySpec Key, string Text)[] Usual = [(SolverKeys.Nodes, "40"), (SolverKeys.Step, "1 ms")];

    /// <summary>Mesh and step of a study, for what the scenario itself does not give.</summary>
    /// <param name="figures">Command.</param>
    /// <param name="scenario">Valid scenario.</param>
    public static string[] OfStudy(IFigureSource figures, ScenarioResult scenario) =>
        [.. Usual.Where(s => figures.Reads(s.Key, scenario) && !scenario.Values.Has(s.Key)).Select(s => $"{s.Key.Path}={s.Text}")];

    /// <summary>Twice as many segments, or half their length; empty where the command has no such key.</summary>
    /// <param name="figures">Command.</param>
    /// <param name="scenario">Valid scenario as it is run.</param>
    public static string[] Mesh(IFigureSource figures, ScenarioResult scenario) => Scaled(OfMesh, figures, scenario);

    /// <summary>Half the step.</summary>
    /// <param name="figures">Command.</param>
    /// <param name="scenario">Valid scenario as it is run.</param>
    public static string[] Step(IFigureSource figures, ScenarioResult scenario) => Scaled(OfStep, figures, scenario);

    private static string[] Scaled((KeySpec Key, double Factor)[] keys, IFigureSource figures, ScenarioResult scenario) =>
    [
        .. keys.Where(k => figures.Reads(k.Key, scenario)).Select(k => (k.Key, Now: scenario.Values.Number(k.Key), k.Factor))
            .Select(k => (k.Key, k.Now, Then: Math.Clamp(k.Factor * k.Now, k.Key.Low, k.Key.High))).Where(k => k.Then != k.Now)
            .Select(k => $"{k.Key.Path}={Quantity.Format(k.Then, k.Key.Kind)}"),
    ];
}
