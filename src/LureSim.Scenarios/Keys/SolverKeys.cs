using LureSim.Model;
using LureSim.Model.Retrieve;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[solver]</c>.</summary>
public static class SolverKeys
{
    /// <summary>Line segments.</summary>
    public static readonly KeySpec Nodes = new("solver.nodes", QuantityKind.WholeNumber, "", "Segments of the line model, none shorter than 0.25 m; 60 for shown runs, 40 with a step of 1 ms for studies, 20 for a first look.")
    {
        Parameter = Parameter.Of<RetrieveSolverSpec>(nameof(RetrieveSolverSpec.Nodes)),
        Lens = Lens.OfRetrieve(t => t.Solver.Nodes, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Largest step.</summary>
    public static readonly KeySpec Step = new("solver.step", QuantityKind.Time, "ms", "Largest time step.")
    {
        Parameter = Parameter.Of<RetrieveSolverSpec>(nameof(RetrieveSolverSpec.StepS)),
        Lens = Lens.OfRetrieve(t => t.Solver.StepS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Output spacing.</summary>
    public static readonly KeySpec OutputStep = new("solver.output_step", QuantityKind.Time, "ms", "Spacing of the recorded series.")
    {
        Parameter = Parameter.Of<RetrieveSolverSpec>(nameof(RetrieveSolverSpec.OutputStepS)),
        Lens = Lens.OfRetrieve(t => t.Solver.OutputStepS, Activities.Retrieve | Activities.Crawl),
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Nodes, Step, OutputStep];
}
