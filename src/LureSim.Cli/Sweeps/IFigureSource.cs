using LureSim.Reports.Doubt;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;

namespace LureSim.Cli.Sweeps;

/// <summary>A command whose summary can stand in a row of a sweep.</summary>
public interface IFigureSource
{
    /// <summary>Name of the command.</summary>
    public string Name { get; }

    /// <summary>What it does with a scenario: faults of other tables do not matter to it.</summary>
    public Activities Asks { get; }

    /// <summary>Columns that hold words; the first sorts the runs.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>Columns that hold numbers, unit at the end of the name.</summary>
    public IReadOnlyList<string> Numbers { get; }

    /// <summary>Numbers that people ask for first.</summary>
    public IReadOnlyList<HeadlineFigure> Headlines { get; }

    /// <summary>Whether a guess can matter to this command: others are not drawn and not listed.</summary>
    /// <param name="key">Key of the guess.</param>
    /// <param name="scenario">Valid scenario.</param>
    public bool Reads(KeySpec key, ScenarioResult scenario);

    /// <summary>Runs one scenario on the calling thread. A pure function: same scenario, same bits.</summary>
    /// <param name="scenario">Valid scenario.</param>
    /// <param name="stop">Stops the run.</param>
    /// <exception cref="LureSim.Model.ModelException">The model cannot finish.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public FigureRow Run(ScenarioResult scenario, CancellationToken stop);
}

/// <summary>Summary of one run.</summary>
/// <param name="Failure">Why there is none, or null.</param>
/// <param name="Words">One per column of words.</param>
/// <param name="Numbers">One per column of numbers.</param>
public sealed record FigureRow(string? Failure, IReadOnlyList<string> Words, IReadOnlyList<double> Numbers)
{
    /// <summary>A run without summary.</summary>
    /// <param name="reason">Why.</param>
    public static FigureRow Failed(string reason) => new(reason, [], []);
}
