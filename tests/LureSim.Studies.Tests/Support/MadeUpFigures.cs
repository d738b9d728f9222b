using LureSim.Model.Assembly;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;

namespace LureSim.Studies.Tests.Support;

/// <summary>A command without physics: one figure out of what a scenario says.</summary>
internal sealed class MadeUpFigures(Func<Setup, double> of, params KeySpec[] reads) : IFigureSource
{
    public string Name => "made up";

    public Activities Asks => Activities.Cast;

    public IReadOnlyList<string> Words => ["word"];

    public IReadOnlyList<string> Numbers => ["y_m"];

    public bool IsStudy { get; init; }

    public IReadOnlyList<HeadlineFigure> Headlines => [new("y_m", "reach", "m", 1.0)];

    public bool Reads(KeySpec key, ScenarioResult scenario) => reads.Contains(key);

    public bool Draws(KeySpec key, ScenarioResult scenario) => Reads(key, scenario);

    public FigureRow Run(ScenarioResult scenario, CancellationToken stop) => new(null, ["done"], [of(scenario.Setup!)]);
}
