using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Keys;

/// <summary>Table <c>[solver]</c>.</summary>
public static class SolverKeys
{
    /// <summary>Line segments.</summary>
    public static readonly KeySpec Nodes = new("solver.nodes", QuantityKind.WholeNumber, "", "Segments of the line model, none shorter than 0.25 m; 60 for shown runs, 40 with a step of 1 ms for studies, 20 for a first look.")
    {
        Default = "60",
        Low = 1,
        High = 400,
        FromSpec = s => s.Solver.Nodes,
    };

    /// <summary>Largest step.</summary>
    public static readonly KeySpec Step = new("solver.step", QuantityKind.Time, "ms", "Largest time step.")
    {
        Default = "0.0005 s",
        Low = 1e-6,
        High = 1e-3,
        FromSpec = s => s.Solver.StepS,
    };

    /// <summary>Output spacing.</summary>
    public static readonly KeySpec OutputStep = new("solver.output_step", QuantityKind.Time, "ms", "Spacing of the recorded series.")
    {
        Default = "0.005 s",
        Low = 1e-4,
        High = 1,
        FromSpec = s => s.Solver.OutputStepS,
    };

    /// <summary>Rows of the table.</summary>
    public static readonly KeySpec[] All = [Nodes, Step, OutputStep];
}
