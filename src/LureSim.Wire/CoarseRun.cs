using LureSim.Model.Retrieve;

namespace LureSim.Wire;

/// <summary>A run made cheaper for an answer at once.</summary>
public static class CoarseRun
{
    /// <summary>Most segments of the line.</summary>
    public const int Nodes = 20;

    /// <summary>Shortest step, s.</summary>
    public const double StepS = 1e-3;

    /// <summary>The run with fewer segments and longer steps; all else stays.</summary>
    /// <param name="run">Run.</param>
    public static RunInput Of(RunInput run)
    {
        ArgumentNullException.ThrowIfNull(run);
        RetrieveSolverSpec solver = run.Task.Solver;
        return run with
        {
            Task = run.Task with { Solver = solver with { Nodes = Math.Min(Nodes, solver.Nodes), StepS = Math.Max(StepS, solver.StepS) } },
        };
    }

    /// <summary>What is said about it.</summary>
    /// <param name="run">The run before.</param>
    public static IReadOnlyList<string> Remarks(RunInput run)
    {
        ArgumentNullException.ThrowIfNull(run);
        RetrieveSolverSpec solver = run.Task.Solver;
        return solver.Nodes <= Nodes && solver.StepS >= StepS
            ? []
            : [$"Quick answer: the line in {Math.Min(Nodes, solver.Nodes)} pieces and steps of 1 ms. The fine answer follows."];
    }
}
